#pragma once

// A delivery's own small plan: the unit as delivered on a sling from its lifting points, lifted by a machine.

#include "plan_work.hpp"

namespace cotter::desk {

// `given` is an unloading_plan's body about `unit`; its results are worked out, and what stops its machine, its sling
// or what hangs between is said. NotFound names what the book does not know.
PlanWork work_out_unloading(const Book& book, const std::string& unit, const Json& given, rules::Instant now);

// FormError where it says results that are not what is worked out, or is issued though it does not fit.
void check_unloading(const Book& book, const std::string& unit, const Json& body, rules::Instant now);

} // namespace cotter::desk
