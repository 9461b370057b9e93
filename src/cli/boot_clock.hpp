#pragma once

#include "clock.hpp"

namespace cotter::cli {

// The wall clock, when the program was built, and this boot's id and seconds. Linux only; elsewhere the boot stays
// empty.
desk::ClockFacts clock_facts();

} // namespace cotter::cli
