#pragma once

// A lift plan worked out from its worksheet: every figure with its limit, its formula and its source.

#include "register.hpp"

#include <string>
#include <vector>

namespace cotter::desk {

struct PlanWork {
    Json body;                         // of a lift_plan: what was given, and what was worked out
    std::vector<std::string> refusals; // a line each: what passes its limit, so that the plan cannot be issued
};

// `given` is a lift_plan's body with a worksheet; its machines, places, pipes, greatest load and radius, zone and
// results are worked out. NotFound names what the book does not know.
PlanWork work_out_plan(const Book& book, const Json& given, rules::Instant now);

} // namespace cotter::desk
