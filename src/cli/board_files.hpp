#pragma once

#include "board.hpp"

#include <ostream>

namespace cotter::cli {

// RFC 4180; a cell that a spreadsheet would take for a formula is made text with an apostrophe.
void write_csv(const std::vector<desk::BoardRow>& rows, std::ostream& out);

// RFC 5545: an all-day event on each latest date, with a name that stays the same.
void write_calendar(const std::vector<desk::BoardRow>& rows, rules::Instant made, std::ostream& out);

} // namespace cotter::cli
