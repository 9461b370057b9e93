#pragma once

// Numbers and days as they are read on a screen: decimal point, SI units, no separator under five digits.

#include "day.hpp"
#include "finding.hpp"

#include <string>

namespace cotter::words {

// Up for what is measured, so that a load never looks lighter; down for a limit.
enum class Rounding { up, down };
std::string whole(double value, Rounding to = Rounding::up);
std::string amount(const rules::Figure& value, rules::Unit unit,
                   Rounding to = Rounding::up); // "1630 kg", "Fri 4 Dec 2026", "not known"
std::string short_day(rules::Day day);          // "Fri 4 Dec"
std::string long_day(rules::Day day);           // "Fri 4 Dec 2026"
std::string metres(std::int64_t millimetres);   // "6.2 m"
std::string from_planned(std::int64_t above);   // mm: "5 mm below planned", "as planned"
std::string clock_time(int minutes_of_day);     // "07:42"

} // namespace cotter::words
