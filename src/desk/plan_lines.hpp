#pragma once

// A lift plan as lines to read.

#include "register.hpp"

namespace cotter::desk {

// "plan-1, issue 2 (title), 2026-11-01 to 2026-12-20".
std::string head_of_plan(const Json& plan);

// What people are briefed on, then the plan's results; of one that was made outside and entered by hand, what was
// entered, in the same form: what, says, formula, source.
Json lines_of_plan(const Book& book, const Json& plan);

} // namespace cotter::desk
