#pragma once

#include <cstdint>
#include <string>

namespace cotter::desk {

// The unit in which a person reads a record's number, by the end of its field's name.
struct FieldUnit {
    std::string text; // "mm"
    int power = 0;    // the record holds so many powers of ten of it: 3 for thousandths
};
FieldUnit unit_of(const std::string& field);

std::string with_unit(const std::string& field, std::int64_t value); // "3000 mm", "-45.5\u00b0"

} // namespace cotter::desk
