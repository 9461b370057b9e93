// Of a plan: the exclusion zone, and what is near.

#include "plan_parts.hpp"

#include <algorithm>

namespace cotter::desk {

using namespace rules;

std::optional<std::int64_t> plan_zone(const PlanSheet& plan, double radius, Results& out)
{
    const Json& zone = plan.sheet.at("zone");
    ZoneFacts facts;
    facts.greatest_radius = radius;
    facts.margin = zone.value("margin_mm", 0.0);
    facts.toppling = zone.value("toppling_mm", 0.0);
    facts.roll = zone.value("roll_mm", 0.0);
    for (const PlannedPipe& run : plan.runs) {
        facts.load_length = std::max(facts.load_length, real(*run.pipe.overall));
        if (const auto& envelope = plan.item(Role::attachment).model->envelope_length)
            facts.load_length = std::max(facts.load_length, real(*envelope));
        facts.load_width = std::max(facts.load_width, real(std::max(*run.pipe.barrel, *run.pipe.socket)));
    }
    if (!plan.tail_swing) {
        out.refuse("zone", "the machine's tail swing is not in this book: write it down with the unit");
        return std::nullopt;
    }
    facts.tail_swing = *plan.tail_swing;
    const std::int64_t least = up(least_zone_radius(facts));
    out.add({"exclusion zone", "", least, "mm",
             "greatest radius + what the load reaches hanging, toppling or rolling + margin, or tail swing + margin",
             firm});
    return least;
}

void plan_around(const PlanSheet& plan, Results& out)
{
    const Json around = plan.sheet.value("around", Json::array());
    for (const Json& each : around) {
        if (each.at("whose_rule") == "")
            out.refuse(each.at("what"), "it is not said whose rule it is how near one may come");
        out.at_least({key("distance"), each.at("what"), each.at("distance_mm").get<std::int64_t>(), "mm", "as measured",
                      "the plan's"},
                     each.at("least_mm").get<std::int64_t>());
    }
}

} // namespace cotter::desk
