#pragma once

#include "command.hpp"
#include "known_gaps.hpp"

namespace cotter::cli {

// device, first, last (null: to an end that nobody knows), after, before.
Json lost_json(const db::Lost& lost);

} // namespace cotter::cli
