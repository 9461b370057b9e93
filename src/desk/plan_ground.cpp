// Of a plan: stand-off from the edge, slope of the stand, pressure under a track.

#include "physics.hpp"
#include "plan_parts.hpp"

#include <algorithm>
#include <cmath>

namespace cotter::desk {

using namespace rules;

namespace {

// Empty, and with the load near and far: a load may balance the counterweight. The whole circle: it slews back too.
std::optional<double> greatest_pressure(const PlanSheet& plan, double load, const std::vector<MovePoint>& points)
{
    const auto [near, far] =
        std::minmax_element(points.begin(), points.end(),
                            [](const MovePoint& a, const MovePoint& b) { return a.centre_radius < b.centre_radius; });
    double greatest = 0;
    for (const auto& [hung, radius] :
         {std::pair{0.0, 0.0}, std::pair{load, near->radius}, std::pair{load, far->centre_radius}}) {
        Weights standing = plan.standing;
        standing.load_kg = hung;
        standing.load_radius = radius;
        const auto here = greatest_pressure_kpa(plan.base, standing, -180, 180);
        if (!here)
            return std::nullopt;
        greatest = std::max(greatest, *here);
    }
    return greatest;
}

// Inside the line, the ground is held by the support alone.
void edge(const PlanSheet& plan, const Json& stand, Results& out)
{
    const std::string about = stand.at("id");
    const Json& limits = plan.sheet.at("ground");
    const auto stand_off = stand.at("stand_off_mm").get<std::int64_t>();
    out.at_least({"stand-off from the edge", about, stand_off, "mm", "as planned", firm},
                 limits.at("least_stand_off_mm").get<std::int64_t>());
    const Result line{"stand-off by the line at 45 degrees from the bottom",
                      about,
                      up(stand_off_by_45_degrees(plan.sheet.at("trench").at("depth_mm").get<double>())),
                      "mm",
                      "depth of the trench",
                      "common practice, no source"};
    out.add(line);
    const std::string carried_by = limits.value("edge_carried_by", "");
    if (stand_off < line.value && carried_by.empty())
        out.refuse(about,
                   "stands inside the line at 45 degrees from the trench's bottom, {} mm from the edge; "
                   "who says that the support carries it is needed, or more stand-off",
                   line.value);
    if (stand_off < line.value && !carried_by.empty())
        out.say("carried inside the line at 45 degrees by", about, carried_by, "as stated", "the plan's");
}

// How far the stacked pipe's side is from the trench's edge; negative: over the trench.
double stack_off(const PlanSheet& plan, const MoveAsked& move)
{
    const double x = move.pick_radius * std::cos(radians(move.pick_bearing)),
                 y = move.pick_radius * std::sin(radians(move.pick_bearing));
    const double half = number(plan.sheet.at("trench"), "width_mm") / 2;
    const Footprint& f = move.footprint;
    if (move.beside == Beside::in_line)
        return std::max(f.half_length - f.slew_ahead + move.stand_off - x, std::abs(y) - half) - move.outside / 2;
    return std::abs(y - f.half_width - move.stand_off - half) - half - move.outside / 2;
}

void stack(const PlanSheet& plan, const Json& stand, const MoveAsked& move, Results& out)
{
    out.at_least({"stack from the edge", stand.at("id"), static_cast<std::int64_t>(std::floor(stack_off(plan, move))),
                  "mm", "side of the stacked pipe to the trench's edge; the least is that of the tracks", geometry},
                 plan.sheet.at("ground").at("least_stand_off_mm").get<std::int64_t>());
}

} // namespace

void plan_ground(const PlanSheet& plan, const PlannedLoads& loads, const Json& stand,
                 const std::vector<MovePoint>& points, Results& out)
{
    const std::string about = stand.at("id");
    edge(plan, stand, out);
    stack(plan, stand, move_at(plan, stand, *loads.widest), out);
    out.at_most({"slope of the stand", about, stand.at("slope_mdeg").get<std::int64_t>(), "thousandths of a degree",
                 "as planned", "the chart's; level unless it says otherwise"},
                plan.slope_mdeg);
    const auto pressure = greatest_pressure(plan, loads.all, points);
    if (!pressure)
        return out.refuse(about, "the line of all that stands leaves the tracks: the machine would tip");
    out.at_most({"pressure under a track", about, up(*pressure), "kPa",
                 key("share of the track / (width x (length - 2 x eccentricity)), greatest of a whole turn, empty and "
                     "loaded"),
                 "EN 1997-1:2004 annex D, effective area"},
                plan.sheet.at("ground").at("allowable_kpa").get<std::int64_t>());
}

} // namespace cotter::desk
