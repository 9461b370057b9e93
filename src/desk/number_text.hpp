#pragma once

// Decimal digits with optional sign and point, exactly: a table's number in the unit over it, and a record's whole
// number.

#include "column.hpp"

#include <cstdint>
#include <optional>
#include <string>

namespace cotter::desk {

// The number times ten to the power, as a whole number; nothing if it is no number, has over 15 digits, or leaves a
// fraction that is not to be rounded.
std::optional<std::int64_t> whole(const std::string& text, int power, Rounding rounding);

// The whole number divided by ten to the power: 2600 and 3 are "2.6".
std::string number_text(std::int64_t value, int power);

// "200 to 12000 mm, in whole mm".
std::string accepted_numbers(const Column& column, const Unit& unit);

} // namespace cotter::desk
