// Of a plan: the way of each pipe with its attachment between the struts and walings, past the pipe already laid.

#include "physics.hpp"
#include "plan_parts.hpp"

#include <algorithm>
#include <cmath>
#include <set>

namespace cotter::desk {

using namespace rules;

namespace {

// The pipe by its socket all along, and the attachment in its middle.
Body body_of(const Model& model, const Pipe& pipe)
{
    const double half = outside(pipe) / 2, length = real(*pipe.overall) / 2, grip = real(*model.envelope_length) / 2;
    return {{-length, -half, length, half},
            {-grip, -half - real(*model.below_invert), grip, half + real(*model.above_crown)}};
}

// Undersides over the bed, the lowest first given.
std::vector<double> strut_levels(const Json& trench)
{
    std::vector<double> levels{number(trench, "strut_level_mm")};
    for (const Json& each : trench.value("higher_struts_mm", Json::array()))
        levels.push_back(each.get<double>());
    return levels;
}

// Struts at either end of the gap and one gap further, at each level; a strut is as wide along the trench as deep.
void add_struts(std::vector<Obstacle>& obstacles, const Json& trench)
{
    const double gap = number(trench, "gap_mm"), depth = number(trench, "strut_depth_mm"),
                 clearance = number(trench, "clearance_mm");
    for (const double level : strut_levels(trench))
        for (const double left : {-gap - 2 * depth, -depth, gap, 2 * gap + depth})
            obstacles.push_back({{left, level, left + depth, level + depth}, clearance});
}

void path_figures(const std::string& about, const std::vector<Pose>& path, Results& out)
{
    double tilt = 0, along = 0;
    for (const Pose& each : path) {
        tilt = std::max(tilt, std::abs(each.tilt));
        along = std::max(along, std::abs(each.x - path.back().x));
    }
    constexpr const char* found = "best-first search over place and tilt, every step checked";
    constexpr const char* by = "plane geometry; the arm above the attachment is not in it";
    out.add({"steps of the path past the struts", about, static_cast<std::int64_t>(path.size()), "", found, by});
    out.add({"greatest tilt on that path", about, std::llround(std::ceil(tilt)), key("degrees"), found, by});
    out.add({"way along the trench on that path", about, std::llround(along), "mm", found, by});
}

const char* in_words(Way way)
{
    switch (way) {
    case Way::none: return key("none");
    case Way::level: return key("level");
    case Way::tilted: return key("tilted");
    case Way::threaded: return key("threaded");
    }
    return "none";
}

// A constant tilt is what each lift is judged by; the path is how the signaller takes it down.
void way(const PlanSheet& plan, const PlannedPipe& run, Results& out)
{
    const Threading found = thread(passage_of(plan, run.pipe));
    if (found.way == Way::none)
        found.gap_needed ? out.refuse(run.id,
                                      "does not go down between the struts with its attachment; at least {} mm between "
                                      "them is needed",
                                      up(*found.gap_needed))
                         : out.refuse(run.id, "does not go down between the struts with its attachment");
    out.say("way between the struts", run.id, in_words(found.way), "rectangle of pipe and attachment", geometry);
    const auto asked = path_in_trench(plan, run.pipe);
    const auto path = find_path(*asked);
    if (path.empty()) {
        const auto share = share_of_clearance(*asked);
        return share ? out.refuse(run.id,
                                  "no path past struts and the pipe already laid was found; with {} % of the clearance "
                                  "there is one",
                                  std::llround(*share * 100))
                     : out.refuse(run.id, "no path past struts and the pipe already laid was found; not even touching "
                                          "is there one");
    }
    path_figures(run.id, path, out);
}

// Walings narrow the trench.
void width(const PlanSheet& plan, const PlannedPipe& run, Results& out)
{
    const Json& trench = plan.sheet.at("trench");
    const std::int64_t across = std::max(up(outside(run.pipe)), plan.envelope_width_mm.value_or(0));
    out.at_least(
        {"width between the walings", run.id,
         trench.at("width_mm").get<std::int64_t>() - 2 * trench.value("waling_mm", std::int64_t{0}), "mm",
         plan.envelope_width_mm
             ? "width of the trench - 2 x waling; the least is the wider of pipe and attachment + 2 x clearance"
             : "width of the trench - 2 x waling; the least is the pipe over all + 2 x clearance",
         geometry},
        across + 2 * trench.value("clearance_mm", std::int64_t{0}));
}

bool is_open(const Json& trench) { return trench.contains("strutted") && trench.at("strutted") == false; }

bool is_told(const PlanSheet& plan, Results& out)
{
    for (const auto& [field, what] : {std::pair{"strutted", "whether there are struts"},
                                      {"gap_mm", "the gap between the struts"},
                                      {"clearance_mm", "the clearance to be kept"},
                                      {"strut_depth_mm", "how deep a strut is"},
                                      {"strut_level_mm", "the level of the lowest strut"},
                                      {"waling_mm", "how far a waling stands into the trench"}})
        if (!plan.sheet.at("trench").contains(field)) {
            out.refuse("trench", "{} is not given; a trench without struts says so", what);
            return false;
        }
    const Model& model = *plan.item(Role::attachment).model;
    if (model.envelope_length && model.above_crown && model.below_invert && model.tilt_limit)
        return true;
    out.refuse("trench", "the attachment's model does not say its envelope and tilt limit");
    return false;
}

// Its bay and the one behind are known.
void laid_end(const PlanSheet& plan, Results& out)
{
    const Json& trench = plan.sheet.at("trench");
    const auto end = trench.value("laid_end_mm", std::int64_t{0}), gap = trench.at("gap_mm").get<std::int64_t>();
    if (std::abs(end) > gap)
        out.refuse("trench",
                   "the end of the pipe already laid is at {} mm; within a gap of the strut behind, {} to {}, "
                   "is accepted",
                   end, -gap, gap);
}

// Struts hold the sides, so they are in the trench.
void struts_in_trench(const PlanSheet& plan, Results& out)
{
    const Json& trench = plan.sheet.at("trench");
    const auto depth = trench.at("depth_mm").get<std::int64_t>();
    for (const Json& each : trench.value("higher_struts_mm", Json::array()))
        if (each <= trench.at("strut_level_mm"))
            out.refuse("trench", "a higher strut at {} mm is not above the lowest one, at {} mm",
                       each.get<std::int64_t>(), trench.at("strut_level_mm").get<std::int64_t>());
    for (const double each : strut_levels(trench))
        if (each >= static_cast<double>(depth))
            out.refuse("trench", "a strut {} mm over the bed is above the ground; under {} is accepted",
                       std::llround(each), depth);
    out.say("between the struts, not worked out", "", "the arm and the hitch above the attachment",
            "look at the drawing and keep them clear", "the planner's");
}

// A tilt that the model asks for makes the plan length longer at first.
void entry_tilt(const PlanSheet& plan, const PlannedPipe& run, Results& out)
{
    if (!plan.entry_tilt_mdeg)
        return;
    const Passage passage = passage_of(plan, run.pipe);
    const double tilt = radians(static_cast<double>(*plan.entry_tilt_mdeg) / 1000);
    out.at_most({"length between the struts at the model's entry tilt", run.id,
                 up(passage.length * std::cos(tilt) + passage.depth * std::sin(tilt) + 2 * passage.clearance), "mm",
                 "length x cos + depth x sin + 2 x clearance", geometry},
                std::llround(passage.gap));
}

bool is_measured_for_a_path(const PlanSheet& plan, const Pipe& pipe)
{
    const Model& model = *plan.item(Role::attachment).model;
    return pipe.overall && pipe.barrel && pipe.socket && model.envelope_length && model.above_crown &&
           model.below_invert && model.tilt_limit && plan.sheet.at("trench").contains("gap_mm");
}

} // namespace

std::optional<PathAsked> path_in_trench(const PlanSheet& plan, const Pipe& pipe)
{
    const Json& trench = plan.sheet.at("trench");
    if (is_open(trench) || !is_measured_for_a_path(plan, pipe))
        return std::nullopt;
    const Model& model = *plan.item(Role::attachment).model;
    const double length = real(*pipe.overall), gap = number(trench, "gap_mm"),
                 clearance = number(trench, "clearance_mm");
    PathAsked asked;
    asked.body = body_of(model, pipe);
    asked.tilt_limit = real(*model.tilt_limit) / 1000;
    add_struts(asked.obstacles, trench);
    asked.laid = {0, gap};
    if (!trench.contains("laid_end_mm"))
        return asked;
    const double end = number(trench, "laid_end_mm"), first = end + clearance + length / 2;
    asked.obstacles.push_back({{end - length, 0, end, outside(pipe)}, clearance});
    asked.laid = {first, first + length / 2}; // then it is drawn home
    return asked;
}

void plan_trench(const PlanSheet& plan, Results& out)
{
    const Json& trench = plan.sheet.at("trench");
    if (!trench.contains("someone_enters"))
        out.refuse("trench", "it is not said whether somebody goes in");
    if (trench.value("someone_enters", true) && trench.value("support", "").empty())
        out.refuse("trench", "somebody goes in, and it is not said how the sides are held");
    if (trench.value("someone_enters", true) && trench.value("waits_at", "").empty())
        out.refuse("trench", "somebody goes in, and it is not said where they stand until the pipe bears");
    std::set<std::string> seen;
    const bool told = !is_open(trench) && is_told(plan, out);
    if (!plan.envelope_width_mm)
        out.say("beside the pipe, not worked out", "", "the attachment across the pipe",
                "its model does not say how wide it is: measure it and keep it clear", "the planner's");
    if (told && !trench.contains("laid_end_mm"))
        out.say("pipe already laid", "", "none counted", "its end is not given", "the plan's");
    if (told) {
        laid_end(plan, out);
        struts_in_trench(plan, out);
    }
    for (const PlannedPipe& run : plan.runs) {
        if (!seen.insert(run.id).second)
            continue;
        width(plan, run, out);
        out.at_least({"depth of the trench", run.id, trench.at("depth_mm").get<std::int64_t>(), "mm",
                      "the least is the pipe over all", geometry},
                     up(outside(run.pipe)));
        if (!told)
            continue;
        way(plan, run, out);
        entry_tilt(plan, run, out);
    }
}

} // namespace cotter::desk
