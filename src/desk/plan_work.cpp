#include "plan_work.hpp"

#include "case.hpp"
#include "load.hpp"
#include "mass.hpp"
#include "plan_results.hpp"
#include "plan_sheet.hpp"
#include "setting.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

namespace cotter::desk {

using namespace rules;

namespace {

constexpr const char* geometry = "plane geometry";
constexpr const char* firm = "firm's own rule";

std::int64_t up(double value) { return static_cast<std::int64_t>(std::ceil(value - 1e-6)); }

// Null is "not known", as what is left out.
Json without_nulls(const Json& from)
{
    if (!from.is_structured())
        return from;
    Json kept = from.is_array() ? Json::array() : Json::object();
    for (const auto& [key, value] : from.items())
        if (value.is_null())
            continue;
        else if (from.is_array())
            kept.push_back(without_nulls(value));
        else
            kept[key] = without_nulls(value);
    return kept;
}

const char* name(Stage stage)
{
    constexpr std::array names{"pick-up", "slew", "over the edge", "lowering", "laid"};
    return names[static_cast<std::size_t>(stage)];
}

const char* name(Sector sector)
{
    constexpr std::array names{"front", "side", "both"};
    return names[static_cast<std::size_t>(sector)];
}

bool is_measured(const Pipe& p)
{
    return p.barrel && p.socket && p.overall && p.effective && p.bore && mass_of(p).used;
}

// The parts of a plan; each is named after what it works out.
class Work {
public:
    Work(const Book& book, const Json& given, Instant now)
        : body_(given), plan_{read_plan_sheet(book, given.at("worksheet"), now)}
    {
        for (const char* each : {"machines", "attachments", "models", "pipes", "places", "results"})
            body_[each] = Json::array();
    }

    PlanWork work()
    {
        body_["machines"].push_back(plan_.machine);
        body_["attachments"].push_back(plan_.attachment);
        lists();
        if (out_.refusals.empty())
            pipes();
        if (!out_.refusals.empty())
            return finish();
        order_of_work();
        for (const Json& stand : plan_.sheet.at("stands"))
            place(stand);
        trench();
        zone();
        around();
        return finish();
    }

private:
    void lists();
    void pipes();
    void pipe(const PlannedPipe& run);
    double load_of(const Pipe& pipe, bool hitch_too) const;
    void order_of_work();
    void place(const Json& stand);
    void reach(Json& place, const MoveAsked& asked, const std::vector<MovePoint>& points);
    void read_chart(const std::string& about, const MoveAsked& asked, const std::vector<MovePoint>& points);
    void mounting(const std::string& about, const MoveAsked& asked);
    std::optional<double> greatest_pressure(const std::vector<MovePoint>& points) const;
    void ground(const Json& stand, const std::vector<MovePoint>& points);
    void stands_along(const std::string& about, const MoveAsked& asked);
    void trench();
    void zone();
    void around();
    Json trench_of_place() const;
    Json thread_of_place() const;
    PlanWork finish();

    Json body_;
    PlanSheet plan_;
    Results out_;
    double load_ = 0, all_ = 0; // greatest on the machine: as the chart has it, and with the hitch
    double radius_ = 0;         // greatest
    const Pipe *widest_ = nullptr, *narrowest_ = nullptr; // over all, for the move's heights
};

void Work::lists()
{
    if (plan_.runs.empty())
        out_.refuse("", "runs is empty; at least one stretch of pipes is needed");
    if (plan_.sheet.at("stands").empty())
        out_.refuse("", "stands is empty; at least one standing place is needed");
    std::set<std::string> ids;
    for (const Json& stand : plan_.sheet.at("stands"))
        if (!ids.insert(stand.at("id")).second)
            out_.refuse(stand.at("id"), "stands twice in the list; each standing place has a mark of its own");
}

double Work::load_of(const Pipe& pipe, bool hitch_too) const
{
    const Case asked{plan_.gear, {}};
    return load_on_machine(asked, hitch_too, hanging_kg(asked, pipe)).value_or(-1);
}

void Work::pipe(const PlannedPipe& run)
{
    if (!is_measured(run.pipe))
        return out_.refuse(run.id, "a dimension of this pipe type is not known; record pipe gives it");
    const double load = load_of(run.pipe, false), all = load_of(run.pipe, true);
    if (load < 0 || all < 0)
        return out_.refuse(run.id, "a mass in the load path is not known; record unit gives it");
    out_.add({"mass of a pipe", run.id, up(*mass_of(run.pipe).used), "kg",
              "hollow cylinder and socket ring, or the maker's mass if greater", "geometry; firm's own rule"});
    out_.add({"load on the machine", run.id, up(load), "kg",
              plan_.gear.chart->includes_hitch.value_or(false)
                  ? "pipe, water, mud, attachment, headplate, shackles; the hitch is in the chart"
                  : "pipe, water, mud, attachment, headplate, shackles, hitch",
              firm});
    load_ = std::max(load_, load);
    all_ = std::max(all_, all);
    const auto over_all = [](const Pipe& pipe) { return std::max(*pipe.barrel, *pipe.socket); };
    if (!widest_ || over_all(run.pipe) > over_all(*widest_))
        widest_ = &run.pipe;
    if (!narrowest_ || over_all(run.pipe) < over_all(*narrowest_))
        narrowest_ = &run.pipe;
}

void Work::pipes()
{
    std::set<std::string> ids;
    for (const PlannedPipe& run : plan_.runs) {
        if (ids.insert(run.id).second)
            pipe(run);
    }
    body_["pipes"] = ids;
    int all = 0;
    for (const PlannedPipe& run : plan_.runs)
        all += run.pipes;
    out_.add({"lifts", "", all, "", "one a pipe", "the drawings"});
}

void Work::order_of_work()
{
    const Model& model = *plan_.item(Role::attachment).model;
    std::vector<Stretch> stretches;
    for (const PlannedPipe& run : plan_.runs) {
        Stretch stretch{run.id, run.pipes, {}, run.after};
        for (std::size_t i = 0; model.adjusts.value_or(true) && i < model.states.size(); ++i)
            if (serves(model.states[i], *run.pipe.barrel))
                stretch.states.push_back(i);
        if (model.adjusts.value_or(true) && stretch.states.empty())
            out_.refuse(run.id, "no setting of this attachment serves its barrel of " +
                                    std::to_string(run.pipe.barrel->count()) + " mm");
        stretches.push_back(std::move(stretch));
    }
    const WorkOrder order = rules::order_of_work(stretches, std::nullopt);
    std::string says;
    for (const Step& step : order.steps)
        says += (says.empty() ? "" : ", ") + std::to_string(stretches[step.stretch].pipes) + " x " +
                stretches[step.stretch].pipe + (step.state ? " in " + model.states[*step.state].name.value_or("") : "");
    out_.say("order of work", "", says, "fewest changes of the setting", "all orders compared");
    out_.add({"changes of the setting", "", order.moves, "", "the first one included", "all orders compared"});
}

void Work::reach(Json& place, const MoveAsked& asked, const std::vector<MovePoint>& points)
{
    const std::string about = place.at("id");
    const Sector sector = sector_of(asked, points);
    double nose = 0, centre = 0;
    for (const MovePoint& each : points) {
        nose = std::max(nose, each.radius);
        centre = std::max(centre, each.centre_radius);
        out_.add({std::string{"height at "} + name(each.stage), about, std::llround(each.height), "mm",
                  "level of the pipe's underside + outside of the pipe + pin above crown", geometry});
    }
    place.update({{"nose_radius_mm", up(nose)},
                  {"centre_radius_mm", up(centre)},
                  {"pick_height_mm", std::llround(points[0].height)},
                  {"slew_height_mm", std::llround(points[1].height)},
                  {"lay_height_mm", std::llround(points[4].height)},
                  {"sector", name(sector)}});
    radius_ = std::max(radius_, std::max(nose, centre));
    out_.add({"greatest radius", about, up(std::max(nose, centre)), "mm",
              "slew axis to arm-nose pin, or to the centre of gravity at greatest tilt", geometry});
}

// The widest pipe hangs from the highest pin, the narrowest from the lowest.
void Work::read_chart(const std::string& about, const MoveAsked& asked, const std::vector<MovePoint>& points)
{
    const Sector sector = sector_of(asked, points);
    const Reading worst = governing(readings(points, *plan_.gear.chart, sector));
    if (!worst.rated)
        return out_.refuse(about, std::string{name(worst.stage)} + " is off the chart: radius " +
                                      std::to_string(worst.radius.count()) + " mm, height " +
                                      std::to_string(worst.height.count()) + " mm, over " + name(sector));
    out_.at_most({std::string{"load where the chart gives least, "} + name(worst.stage), about, up(load_), "kg",
                  "lowest corner of the chart's cell", "smaller value at the next larger radius, a crane manual"},
                 worst.rated->count());
}

void Work::mounting(const std::string& about, const MoveAsked& asked)
{
    const Json& hanging = plan_.sheet.at("hanging");
    if (!asked.rigid)
        return;
    if (!hanging.contains("mount_kg") || !hanging.contains("mount_nm"))
        return out_.refuse(about, "a rigid mounting needs the maker's allowable mass and moment");
    out_.at_most({"mass on the mounting", about, up(all_), "kg", "as on the machine, the hitch counted", firm},
                 hanging.at("mount_kg").get<std::int64_t>());
    out_.at_most({"moment on the mounting", about, up(mounting_moment_nm(asked, all_)), "N m",
                  "load x 9.81 x distance of the centre of gravity at greatest tilt", "statics"},
                 hanging.at("mount_nm").get<std::int64_t>());
}

// Empty, and with the load near and far: a load may balance the counterweight. The whole circle: it slews back too.
std::optional<double> Work::greatest_pressure(const std::vector<MovePoint>& points) const
{
    const auto [near, far] =
        std::minmax_element(points.begin(), points.end(),
                            [](const MovePoint& a, const MovePoint& b) { return a.centre_radius < b.centre_radius; });
    double greatest = 0;
    for (const auto& [load, radius] :
         {std::pair{0.0, 0.0}, std::pair{all_, near->radius}, std::pair{all_, far->centre_radius}}) {
        Weights standing = plan_.standing;
        standing.load_kg = load;
        standing.load_radius = radius;
        const auto here = greatest_pressure_kpa(plan_.base, standing, -180, 180);
        if (!here)
            return std::nullopt;
        greatest = std::max(greatest, *here);
    }
    return greatest;
}

void Work::ground(const Json& stand, const std::vector<MovePoint>& points)
{
    const std::string about = stand.at("id");
    const Json& limits = plan_.sheet.at("ground");
    const auto depth = plan_.sheet.at("trench").at("depth_mm").get<std::int64_t>();
    const auto stand_off = stand.at("stand_off_mm").get<std::int64_t>();
    out_.at_least({"stand-off from the edge", about, stand_off, "mm", "as planned", firm},
                  limits.at("least_stand_off_mm").get<std::int64_t>());
    out_.add({"stand-off by the line at 45 degrees from the bottom", about,
              up(stand_off_by_45_degrees(static_cast<double>(depth))), "mm", "depth of the trench",
              "common practice, no source"});
    const auto pressure = greatest_pressure(points);
    if (!pressure)
        return out_.refuse(about, "the line of all that stands leaves the tracks: the machine would tip");
    out_.at_most(
        {"pressure under a track", about, up(*pressure), "kPa",
         "share of the track / (width x (length - 2 x eccentricity)), greatest of a whole turn, empty and loaded",
         "EN 1997-1:2004 annex D, effective area"},
        limits.at("allowable_kpa").get<std::int64_t>());
}

void Work::stands_along(const std::string& about, const MoveAsked& asked)
{
    if (asked.beside == Beside::in_line)
        return;
    double longest = 0;
    int pipes = 0;
    for (const PlannedPipe& run : plan_.runs) {
        longest = std::max(longest, real(*run.pipe.effective));
        pipes += run.pipes;
    }
    MoveAsked square = asked;
    square.lay_along = 0;
    const auto stands =
        machine_stands(pipes, longest, move_points(square).back().radius, move_points(asked).back().radius);
    out_.add({"positions of the machine along the trench", about, static_cast<std::int64_t>(stands.size()), "",
              "pipes whose middle is no further along than the furthest laid, from one position to the next",
              geometry});
}

void Work::place(const Json& stand)
{
    const MoveAsked asked = move_at(plan_, stand, *widest_);
    const auto points = move_points(asked);
    const std::string id = stand.at("id");
    Json place{{"id", id}, {"trench", trench_of_place()}, {"thread", thread_of_place()}};
    if (asked.rigid)
        place["pin_to_centre_mm"] = up(points.back().centre_radius - points.back().radius);
    const auto lowest = move_points(move_at(plan_, stand, *narrowest_));
    reach(place, asked, points);
    read_chart(id, asked, points);
    read_chart(id, asked, lowest);
    place["lay_height_mm"] = std::llround(lowest.back().height);
    mounting(id, asked);
    ground(stand, points);
    stands_along(id, asked);
    body_["places"].push_back(std::move(place));
}

Json Work::trench_of_place() const
{
    Json trench{{"none", false}};
    if (plan_.sheet.at("trench").contains("someone_enters"))
        trench["someone_enters"] = plan_.sheet.at("trench").at("someone_enters");
    return trench;
}

Json Work::thread_of_place() const
{
    const Json& trench = plan_.sheet.at("trench");
    Json thread = Json::object();
    for (const char* field : {"strutted", "gap_mm", "clearance_mm", "strut_depth_mm"})
        if (trench.contains(field))
            thread[field] = trench.at(field);
    if (trench.contains("strut_level_mm"))
        thread["room_mm"] = trench.at("strut_level_mm");
    return thread;
}

void Work::trench()
{
    const Json& trench = plan_.sheet.at("trench");
    if (trench.contains("strutted") && trench.at("strutted") == false)
        return;
    for (const char* field : {"strutted", "gap_mm", "clearance_mm", "strut_depth_mm", "strut_level_mm"})
        if (!trench.contains(field))
            return out_.refuse("trench", std::string{field} + " is not given; a trench without struts says so");
    const Model& model = *plan_.item(Role::attachment).model;
    if (!model.envelope_length || !model.above_crown || !model.below_invert || !model.tilt_limit)
        return out_.refuse("trench", "the attachment's model does not say its envelope and tilt limit");
    std::set<std::string> asked;
    for (const PlannedPipe& run : plan_.runs) {
        if (!asked.insert(run.id).second)
            continue;
        const Threading found = thread(passage_of(plan_, run.pipe));
        if (found.way == Way::none)
            out_.refuse(run.id,
                        "does not go down between the struts with its attachment" +
                            (found.gap_needed ? "; a gap of " + std::to_string(up(*found.gap_needed)) + " mm would do"
                                              : std::string{}));
        out_.say("way between the struts", run.id, std::string{rules::name(found.way)},
                 "rectangle of pipe and attachment", geometry);
    }
}

void Work::zone()
{
    const Json& zone = plan_.sheet.at("zone");
    ZoneFacts facts;
    facts.greatest_radius = radius_;
    facts.margin = zone.value("margin_mm", 0.0);
    facts.toppling = zone.value("toppling_mm", 0.0);
    facts.roll = zone.value("roll_mm", 0.0);
    for (const PlannedPipe& run : plan_.runs) {
        facts.load_length = std::max(facts.load_length, real(*run.pipe.overall));
        facts.load_width = std::max(facts.load_width, real(std::max(*run.pipe.barrel, *run.pipe.socket)));
    }
    if (!plan_.tail_swing)
        return out_.refuse("zone",
                           "the machine's tail swing is not in this book; record unit with tail_swing_mm gives it");
    facts.tail_swing = *plan_.tail_swing;
    body_["zone_mm"] = up(least_zone_radius(facts));
    out_.add({"exclusion zone", "", up(least_zone_radius(facts)), "mm",
              "greatest radius + what the load reaches hanging, toppling or rolling + margin, or tail swing + margin",
              firm});
}

void Work::around()
{
    for (const Json& each : plan_.sheet.value("around", Json::array()))
        out_.at_least({"distance", each.at("what"), each.at("distance_mm").get<std::int64_t>(), "mm", "as measured",
                       "the plan's"},
                      each.at("least_mm").get<std::int64_t>());
}

PlanWork Work::finish()
{
    body_["greatest_kg"] = up(load_);
    body_["greatest_radius_mm"] = up(radius_);
    body_["results"] = out_.take();
    return {std::move(body_), std::move(out_.refusals)};
}

} // namespace

PlanWork work_out_plan(const Book& book, const Json& given, Instant now)
{
    return Work{book, without_nulls(given), now}.work();
}

} // namespace cotter::desk
