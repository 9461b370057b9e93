#pragma once

// Numbers and days as they are read on a screen: decimal point, SI units, no separator under five digits.

#include "day.hpp"
#include "finding.hpp"

#include <string>

namespace cotter::words {

std::string whole(double value); // rounded up for a load, so that it never looks lighter
std::string amount(const rules::Figure& value, rules::Unit unit); // "1630 kg", "Fri 4 Dec 2026", "not known"
std::string short_day(rules::Day day);                            // "Fri 4 Dec"
std::string long_day(rules::Day day);                             // "Fri 4 Dec 2026"
std::string metres(std::int64_t millimetres);                     // "6.2 m"
std::string clock_time(int minutes_of_day);                       // "07:42"

} // namespace cotter::words
