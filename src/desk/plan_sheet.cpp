#include "plan_sheet.hpp"

#include "question_items.hpp"

#include <algorithm>

namespace cotter::desk {

using namespace rules;

namespace {

double real_or_0(Known<Millimetres> length) { return length ? real(*length) : 0; }

Json known_unit(const Book& book, const std::string& id)
{
    const auto fact = book.fact("unit", id);
    if (!fact)
        throw NotFound{"worksheet: \"" + id + "\" is not a unit of this book"};
    return fact->doc;
}

std::vector<std::string> path_of(const Book& book, const Json& sheet)
{
    std::vector<std::string> path;
    for (const char* field : {"machine", "hitch", "headplate"})
        if (const std::string unit = sheet.value(field, ""); !unit.empty())
            path.push_back(unit);
    for (const Json& each : sheet.value("hangs", Json::array()))
        path.push_back(each.get<std::string>());
    path.push_back(sheet.at("attachment").get<std::string>());
    for (const std::string& unit : path)
        (void)known_unit(book, unit);
    return path;
}

void read_chart(const Book& book, PlanSheet& plan)
{
    const std::string id = plan.sheet.at("chart").get<std::string>();
    const auto fact = book.fact("chart", id);
    if (!fact)
        throw NotFound{"worksheet.chart: \"" + id + "\" is not a chart of this book"};
    plan.gear.chart = records::read_chart(fact->doc);
    plan.slope_mdeg = fact->doc.value("slope_mdeg", std::int64_t{0});
    if (fact->doc.contains("travel_kg"))
        plan.travel_kg = fact->doc.at("travel_kg").get<std::int64_t>();
}

void read_set_up(const Book& book, PlanSheet& plan)
{
    const Json set_up = doc(book, "set_up", plan.machine);
    if (set_up.empty())
        return;
    plan.gear.set_up = records::read_set_up(set_up);
    plan.chart_chosen = set_up.value("chart", "");
}

void read_base(PlanSheet& plan)
{
    const Json& base = plan.sheet.at("base");
    plan.base = {number(base, "contact_mm"), number(base, "shoe_mm"), number(base, "gauge_mm"),
                 number(base, "slew_ahead_mm")};
    plan.footprint = {number(base, "overall_mm") / 2, (plan.base.gauge + plan.base.shoe_width) / 2,
                      plan.base.slew_ahead};
    const auto mass = plan.item(Role::machine).mass;
    if (!mass)
        throw NotFound{"worksheet.machine: its mass is not in this book; record unit with mass_kg gives it"};
    plan.standing = {real(*mass), number(base, "centre_ahead_mm"), 0, 0};
}

PlannedPipe run_of(const Book& book, const Json& run, std::size_t place)
{
    PlannedPipe planned;
    planned.id = run.at("pipe").get<std::string>();
    const auto fact = book.fact("pipe", planned.id);
    if (!fact)
        throw NotFound{"worksheet.runs: \"" + planned.id + "\" is not a pipe type of this book"};
    planned.pipe = records::read_pipe(fact->doc);
    planned.pipes = run.at("pipes").get<int>();
    for (const std::size_t each : run.value("after", std::vector<std::size_t>{}))
        planned.after.push_back(each - 1);
    if (!run.contains("after") && place > 0)
        planned.after.push_back(place - 1); // as drawn
    return planned;
}

Move hanging_of(const Json& hanging)
{
    Json move;
    for (const char* field : {"water_kg", "mud_kg", "shackles_kg"})
        move[field] = hanging.value(field, 0);
    move["bucket_kg"] = 0;
    return records::read_move(move);
}

} // namespace

double number(const Json& from, const char* field) { return static_cast<double>(from.value(field, std::int64_t{0})); }

double outside(const Pipe& pipe) { return std::max(real_or_0(pipe.barrel), real_or_0(pipe.socket)); }

const Item& PlanSheet::item(Role role) const
{
    return *std::find_if(gear.items.begin(), gear.items.end(), [&](const Item& each) { return each.role == role; });
}

PlanSheet read_plan_sheet(const Book& book, const Json& sheet, Instant now)
{
    PlanSheet plan;
    plan.sheet = sheet;
    plan.machine = sheet.at("machine").get<std::string>();
    plan.attachment = sheet.at("attachment").get<std::string>();
    plan.gear.purpose = Purpose::lift;
    plan.gear.now = now;
    plan.path = path_of(book, sheet);
    plan.gear.items = ItemsOfQuestion{book, plan.path, now}.items();
    for (const Role role : {Role::machine, Role::attachment})
        if (std::none_of(plan.gear.items.begin(), plan.gear.items.end(),
                         [&](const Item& each) { return each.role == role && each.model; }))
            throw NotFound{"worksheet: the machine and the attachment need a model that this book knows"};
    plan.gear.no_hitch = !sheet.contains("hitch");
    plan.gear.no_sling = sheet.value("hangs", Json::array()).empty();
    read_chart(book, plan);
    read_set_up(book, plan);
    plan.coupled_hitch = doc(book, "coupling", plan.machine).value("hitch", "");
    plan.fitted_headplate = doc(book, "headplate", plan.attachment).value("headplate", "");
    plan.gear.move = hanging_of(sheet.at("hanging"));
    for (const Json& run : sheet.at("runs"))
        plan.runs.push_back(run_of(book, run, plan.runs.size()));
    read_base(plan);
    const Json model = doc(book, "model", known_unit(book, plan.attachment).value("model", ""));
    if (model.contains("entry_tilt_mdeg"))
        plan.entry_tilt_mdeg = model.at("entry_tilt_mdeg").get<std::int64_t>();
    if (model.contains("envelope_width_mm"))
        plan.envelope_width_mm = model.at("envelope_width_mm").get<std::int64_t>();
    if (const Json machine = known_unit(book, plan.machine); machine.contains("tail_swing_mm"))
        plan.tail_swing = number(machine, "tail_swing_mm");
    return plan;
}

MoveAsked move_at(const PlanSheet& plan, const Json& stand, const Pipe& pipe)
{
    const Json &trench = plan.sheet.at("trench"), &hanging = plan.sheet.at("hanging");
    MoveAsked asked;
    asked.beside = stand.at("beside") == "in_line" ? Beside::in_line : Beside::alongside;
    asked.footprint = plan.footprint;
    asked.stand_off = number(stand, "stand_off_mm");
    asked.trench_width = number(trench, "width_mm");
    asked.bed = number(trench, "depth_mm");
    asked.lay_along = number(stand, "lay_along_mm");
    asked.pick_radius = number(stand, "pick_radius_mm");
    asked.pick_bearing = number(stand, "pick_bearing_mdeg") / 1000;
    asked.pick_level = number(stand, "pick_level_mm");
    asked.clear = number(stand, "clear_mm");
    asked.outside = outside(pipe);
    asked.pin_above_crown = number(hanging, "pin_above_crown_mm");
    asked.centre_below_pin = number(hanging, "centre_below_pin_mm");
    asked.rigid = hanging.value("rigid", false);
    const auto& limit = plan.item(Role::attachment).model->tilt_limit;
    asked.greatest_tilt = limit ? real(*limit) / 1000 : 90; // not known: the worst
    return asked;
}

Passage passage_of(const PlanSheet& plan, const Pipe& pipe)
{
    const Json& trench = plan.sheet.at("trench");
    const Model& model = *plan.item(Role::attachment).model;
    Passage passage;
    passage.length = std::max(real_or_0(pipe.overall), real_or_0(model.envelope_length));
    passage.depth = outside(pipe) + real_or_0(model.above_crown) + real_or_0(model.below_invert);
    passage.gap = number(trench, "gap_mm");
    passage.max_tilt = model.tilt_limit ? real(*model.tilt_limit) / 1000 : 0;
    passage.clearance = number(trench, "clearance_mm");
    passage.strut_depth = number(trench, "strut_depth_mm");
    passage.room = number(trench, "strut_level_mm");
    return passage;
}

} // namespace cotter::desk
