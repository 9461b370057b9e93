#pragma once

// A lift plan worked out from its worksheet: every figure with its limit, its formula and its source.

#include "reason.hpp"
#include "register.hpp"

#include "decide.hpp"

#include <string>
#include <vector>

namespace cotter::desk {

// A stop that a lift by this plan would be answered with, and the question it was asked with.
struct PlanStop {
    std::string place;
    rules::Question question;
    rules::Finding finding;
};

struct PlanWork {
    Json body;                    // of a lift_plan: what was given, and what was worked out
    std::vector<Reason> refusals; // what passes its limit, so that the plan cannot be issued
    std::vector<PlanStop> stops;  // asked where nothing is refused

    bool fits() const { return refusals.empty() && stops.empty(); }
};

// `given` is the body of the lift_plan `id`, with a worksheet; its machines, places, pipes, greatest load and radius,
// zone and results are worked out. NotFound names what the book does not know; std::invalid_argument an order of work
// that cannot be.
PlanWork work_out_plan(const Book& book, const std::string& id, const Json& given, rules::Instant now);

// FormError where a plan says results that its worksheet does not give, or is issued though it does not fit.
void check_worked_out(const Book& book, const std::string& id, const Json& body, rules::Instant now);

} // namespace cotter::desk
