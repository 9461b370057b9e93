// Of a plan: a standing place, the move from it, the machine's chart, the mounting, edge and ground.

#include "plan_parts.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace cotter::desk {

using namespace rules;

namespace {

using Points = std::vector<MovePoint>;

using Words = std::array<const char*, 5>;

const char* at(Stage stage, const Words& words) { return words[static_cast<std::size_t>(stage)]; }

constexpr Words height_at{"height at pick-up", "height at slew", "height at the edge", "height at lowering",
                          "height where laid"};
constexpr Words load_at{"load where the chart gives least: pick-up", "load where the chart gives least: slew",
                        "load where the chart gives least: over the edge", "load where the chart gives least: lowering",
                        "load where the chart gives least: laid"};
constexpr Words off_chart_at{"pick-up is off the chart", "slew is off the chart", "over the edge it is off the chart",
                             "lowering is off the chart", "laid is off the chart"};

const char* name(Sector sector)
{
    constexpr std::array names{key("front"), key("side"), key("both")};
    return names[static_cast<std::size_t>(sector)];
}

// Of every position along the trench: the furthest pipe lies ahead of the slew axis or as far behind it.
Sector sector_along(const MoveAsked& asked)
{
    Points all;
    MoveAsked each = asked;
    for (const double along : {asked.lay_along, 0.0, -asked.lay_along}) {
        each.lay_along = asked.beside == Beside::alongside ? along : asked.lay_along;
        for (const MovePoint& point : move_points(each))
            all.push_back(point);
    }
    return sector_of(asked, all);
}

void reach(Json& place, const Points& points, Sector sector, double& greatest, Results& out)
{
    const std::string about = place.at("id");
    double nose = 0, centre = 0;
    for (const MovePoint& each : points) {
        nose = std::max(nose, each.radius);
        centre = std::max(centre, each.centre_radius);
        out.add({at(each.stage, height_at), about, std::llround(each.height), "mm",
                 "level of the pipe's underside + outside of the pipe + pin above crown", geometry});
    }
    place.update({{"nose_radius_mm", up(nose)},
                  {"centre_radius_mm", up(centre)},
                  {"pick_height_mm", std::llround(points[0].height)},
                  {"slew_height_mm", std::llround(points[1].height)},
                  {"lay_height_mm", std::llround(points[4].height)},
                  {"sector", name(sector)}});
    greatest = std::max({greatest, nose, centre});
    out.add({"greatest radius", about, up(std::max(nose, centre)), "mm",
             "slew axis to arm-nose pin, or to the centre of gravity at greatest tilt", geometry});
    out.say("sector", about, name(sector), "the arm's line over the short or the long side of the tracks", firm);
}

// With the widest and the narrowest pipe, to the furthest laid and to the one square to the machine: what is nearer may
// be off the chart too.
std::vector<Points> all_ways(const PlanSheet& plan, const PlannedLoads& loads, const Json& stand)
{
    std::vector<Points> ways;
    for (const Pipe* pipe : {loads.widest, loads.narrowest})
        for (const double share : {1.0, 0.5, 0.0}) {
            MoveAsked asked = move_at(plan, stand, *pipe);
            if (asked.beside == Beside::alongside)
                asked.lay_along *= share;
            ways.push_back(move_points(asked));
        }
    return ways;
}

void read_chart(const PlanSheet& plan, const PlannedLoads& loads, const std::string& about,
                const std::vector<Points>& ways, Sector sector, Results& out)
{
    std::vector<Reading> all;
    for (const Points& points : ways)
        for (const auto& read :
             {readings(points, *plan.gear.chart, sector), readings_along(points, *plan.gear.chart, sector)})
            all.insert(all.end(), read.begin(), read.end());
    const Reading worst = governing(all);
    if (!worst.rated)
        return out.refuse(about, "{}: radius {} mm, height {} mm, over {}", at(worst.stage, off_chart_at),
                          worst.radius.count(), worst.height.count(), name(sector));
    out.at_most({at(worst.stage, load_at), about, up(loads.load), "kg", "lowest corner of the chart's cell",
                 "smaller value at the next larger radius, a crane manual"},
                worst.rated->count());
}

void mounting(const PlanSheet& plan, const PlannedLoads& loads, const std::string& about, const MoveAsked& asked,
              Results& out)
{
    const Json& hanging = plan.sheet.at("hanging");
    if (!asked.rigid)
        return;
    if (!hanging.contains("mount_kg") || !hanging.contains("mount_nm"))
        return out.refuse(about, "a rigid mounting needs the maker's allowable mass and moment");
    out.at_most({"mass on the mounting", about, up(loads.all), "kg", "as on the machine, the hitch counted", firm},
                hanging.at("mount_kg").get<std::int64_t>());
    out.at_most({"moment on the mounting", about, up(mounting_moment_nm(asked, loads.all)), "N m",
                 "load x 9.81 x distance of the centre of gravity at greatest tilt", key("statics")},
                hanging.at("mount_nm").get<std::int64_t>());
}

void stands_along(const PlanSheet& plan, const std::string& about, const MoveAsked& asked, Results& out)
{
    if (asked.beside == Beside::in_line)
        return;
    double longest = 0;
    int pipes = 0;
    for (const PlannedPipe& run : plan.runs) {
        longest = std::max(longest, real(*run.pipe.effective));
        pipes += run.pipes;
    }
    MoveAsked square = asked;
    square.lay_along = 0;
    const auto stands =
        machine_stands(pipes, longest, move_points(square).back().radius, move_points(asked).back().radius);
    out.add({"positions of the machine along the trench", about, static_cast<std::int64_t>(stands.size()), "",
             "pipes whose middle is no further along than the furthest laid, from one position to the next", geometry});
}

Json part(const Json& from, std::initializer_list<std::pair<const char*, const char*>> fields)
{
    Json kept = Json::object();
    for (const auto& [is, was] : fields)
        if (from.contains(was))
            kept[is] = from.at(was);
    return kept;
}

} // namespace

Sector as_charted(const Chart& chart, Sector over, bool blade_ahead)
{
    return over == Sector::front && chart.blade.value_or("none") != "none" && !blade_ahead ? Sector::both : over;
}

// The widest pipe hangs from the highest pin, the narrowest from the lowest.
Json plan_place(const PlanSheet& plan, const PlannedLoads& loads, const Json& stand, double& radius, Results& out)
{
    const MoveAsked asked = move_at(plan, stand, *loads.widest);
    const Points points = move_points(asked), lowest = move_points(move_at(plan, stand, *loads.narrowest));
    const Sector sector = as_charted(*plan.gear.chart, sector_along(asked), stand.value("blade_ahead", false));
    const std::string id = stand.at("id");
    const Json& trench = plan.sheet.at("trench");
    Json place{{"id", id},
               {"trench", part(trench, {{"someone_enters", "someone_enters"}})},
               {"thread", part(trench, {{"strutted", "strutted"},
                                        {"gap_mm", "gap_mm"},
                                        {"clearance_mm", "clearance_mm"},
                                        {"strut_depth_mm", "strut_depth_mm"},
                                        {"room_mm", "strut_level_mm"}})}};
    place["trench"]["none"] = false;
    if (asked.rigid)
        place["pin_to_centre_mm"] = up(points.back().centre_radius - points.back().radius);
    reach(place, points, sector, radius, out);
    read_chart(plan, loads, id, all_ways(plan, loads, stand), sector, out);
    place["lay_height_mm"] = std::llround(lowest.back().height);
    if (loads.narrowest != loads.widest)
        out.add({"height when the narrowest pipe is laid", id, std::llround(lowest.back().height), "mm",
                 "level of the bed + outside of the pipe + pin above crown", geometry});
    mounting(plan, loads, id, asked, out);
    plan_ground(plan, loads, stand, points, out);
    stands_along(plan, id, asked, out);
    return place;
}

} // namespace cotter::desk
