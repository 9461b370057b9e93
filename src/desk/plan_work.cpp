#include "plan_work.hpp"

#include "plan_in_force.hpp"
#include "plan_parts.hpp"

#include <cmath>
#include <set>

namespace cotter::desk {

using records::FormError;

std::int64_t up(double value) { return static_cast<std::int64_t>(std::ceil(value - 1e-6)); }

namespace {

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

void refuse_empty_lists(const PlanSheet& plan, Results& out)
{
    if (plan.runs.empty())
        out.refuse("", "runs is empty; at least one stretch of pipes is needed");
    if (plan.sheet.at("stands").empty())
        out.refuse("", "stands is empty; at least one standing place is needed");
    std::set<std::string> ids;
    for (const Json& stand : plan.sheet.at("stands"))
        if (!ids.insert(stand.at("id")).second)
            out.refuse(stand.at("id"), "stands twice in the list; each standing place has a mark of its own");
}

// What a plan says even where it says that there is none.
void refuse_unsaid(const PlanSheet& plan, const Json& body, Results& out)
{
    for (const char* field : {"first_day", "last_day", "category", "sequence", "roles"})
        if (!body.contains(field))
            out.refuse("", std::string{field} + " is not given");
    for (const auto& [field, hint] : {std::pair{"wind_limit_mm_s", "wind at which lifting stops"},
                                      {"light", "say daylight if none else is needed"},
                                      {"route", "from stack to trench"},
                                      {"around", "overhead lines and buried services; an empty list says none"}})
        if (!plan.sheet.contains(field))
            out.refuse("", std::string{field} + " is not given: " + hint);
    if (body.value("last_day", "9") < body.value("first_day", ""))
        out.refuse("", "last_day is before first_day");
    for (const char* field : {"sequence", "roles"})
        if (body.contains(field) && body.at(field).empty())
            out.refuse("", std::string{field} + " is empty");
    for (const Json& stand : plan.sheet.at("stands"))
        if (stand.at("id") == "")
            out.refuse("", "a standing place has no mark");
}

Json gear_of(const Book& book, const PlanSheet& plan)
{
    Json gear = Json::array();
    for (const std::string& each : plan.path)
        gear.push_back(planned_gear(book, each));
    return gear;
}

Json sizes_of(const Book& book, const Json& pipes)
{
    Json sizes = Json::array();
    for (const std::string id : pipes)
        sizes.push_back(planned_sizes(book, id));
    return sizes;
}

// The set-up on record is what lifts are asked with.
void refuse_other_set_up(const PlanSheet& plan, Results& out)
{
    if (!plan.gear.set_up)
        return out.refuse(plan.machine, "how it is set up is not in this book; record machine_set_up gives it");
    if (plan.chart_chosen != plan.sheet.at("chart").get<std::string>())
        out.refuse(plan.machine, "is set up for chart " + plan.chart_chosen + "; that chart is accepted");
    if (plan.coupled_hitch != plan.sheet.value("hitch", ""))
        out.refuse(plan.machine, plan.coupled_hitch.empty()
                                     ? "has no hitch coupled by the record; the worksheet names one"
                                     : "has " + plan.coupled_hitch +
                                           " coupled by the record; the worksheet's hitch is another or left out");
    if (plan.fitted_headplate != plan.sheet.value("headplate", ""))
        out.refuse(plan.attachment,
                   plan.fitted_headplate.empty()
                       ? "has no headplate fitted by the record; the worksheet names one"
                       : "has " + plan.fitted_headplate +
                             " fitted by the record; the worksheet's headplate is another or left out");
    const bool rigid = plan.gear.set_up->mounting == rules::Mounting::rigid;
    if (plan.sheet.at("hanging").at("rigid") != rigid)
        out.refuse(plan.machine,
                   std::string{"its attachment is mounted "} + (rigid ? "rigidly" : "free") + " by its set-up");
}

// Figures that cannot stand beside each other.
void refuse_impossible(const PlanSheet& plan, Results& out)
{
    const Json &base = plan.sheet.at("base"), &hanging = plan.sheet.at("hanging");
    if (base.at("shoe_mm") >= base.at("gauge_mm"))
        out.refuse(plan.machine, "shoe_mm, a track's width, is not less than gauge_mm between the tracks' middles");
    if (base.at("overall_mm") < base.at("contact_mm"))
        out.refuse(plan.machine, "overall_mm, the track over all, is less than contact_mm, what of it bears");
    const auto& above_crown = plan.item(rules::Role::attachment).model->above_crown;
    if (above_crown && number(hanging, "pin_above_crown_mm") < rules::real(*above_crown))
        out.refuse(plan.attachment, "pin_above_crown_mm is less than the attachment alone stands over the crown, " +
                                        std::to_string(above_crown->count()) + " mm by its model");
    if (hanging.value("rigid", false) && number(hanging, "centre_below_pin_mm") < 1)
        out.refuse(plan.attachment, "centre_below_pin_mm is 0; the combined centre of gravity is below the pin");
}

// Who confirms the places, who gives the signals.
void refuse_without_roles(const Json& body, Results& out)
{
    const Json roles = body.value("roles", Json::object());
    for (const char* role : {"supervisor", "signaller"})
        if (roles.contains(role) && roles.at(role) == false)
            out.refuse("", std::string{"roles say that no "} + role +
                               " is needed; marks are confirmed and hold points spoken with one");
}

std::set<std::string> pipe_ids(const PlanSheet& plan)
{
    std::set<std::string> ids;
    for (const PlannedPipe& run : plan.runs)
        ids.insert(run.id);
    return ids;
}

Json places(const PlanSheet& plan, const PlannedLoads& loads, double& radius, Results& out)
{
    Json list = Json::array();
    for (const Json& stand : plan.sheet.at("stands"))
        list.push_back(plan_place(plan, loads, stand, radius, out));
    return list;
}

void work_out(const PlanSheet& plan, Json& body, Results& out)
{
    refuse_empty_lists(plan, out);
    refuse_unsaid(plan, body, out);
    refuse_without_roles(body, out);
    refuse_impossible(plan, out);
    body["pipes"] = pipe_ids(plan);
    const PlannedLoads loads = plan.runs.empty() ? PlannedLoads{} : plan_pipes(plan, out);
    if (!loads.widest || !loads.all_measured)
        return;
    double radius = 0;
    plan_order_of_work(plan, out);
    body["places"] = places(plan, loads, radius, out);
    plan_trench(plan, out);
    if (const auto zone = plan_zone(plan, radius, out))
        body["zone_mm"] = *zone;
    plan_around(plan, out);
    refuse_other_set_up(plan, out);
    body["greatest_kg"] = up(loads.load);
    body["greatest_radius_mm"] = up(radius);
}

constexpr std::array worked_out{"pipe_sizes", "gear_planned", "machines",           "attachments", "models", "pipes",
                                "places",     "greatest_kg",  "greatest_radius_mm", "zone_mm",     "results"};

} // namespace

PlanWork work_out_plan(const Book& book, const std::string& id, const Json& given, rules::Instant now)
{
    Json body = without_nulls(given);
    const PlanSheet plan = read_plan_sheet(book, body.at("worksheet"), now);
    for (const char* each : worked_out)
        body.erase(each);
    body["machines"] = Json::array({plan.machine});
    body["attachments"] = Json::array({plan.attachment});
    Results out;
    work_out(plan, body, out);
    body["pipe_sizes"] = sizes_of(book, body.at("pipes"));
    body["gear_planned"] = gear_of(book, plan);
    for (const TakenMark& each : taken_marks(book, id, body))
        out.refuse(each.mark, "is a mark of " + each.plan + " in those days; another mark is accepted");
    body["results"] = out.take();
    std::vector<PlanStop> stops;
    if (out.refusals.empty())
        stops = judge_plan(plan, body);
    return {std::move(body), std::move(out.refusals), std::move(stops)};
}

void check_worked_out(const Book& book, const std::string& id, const Json& body, rules::Instant now)
try {
    if (!body.contains("worksheet")) {
        if (body.contains("results"))
            throw FormError{"results: are worked out from a worksheet; `cotter plan --from` does it"};
        return;
    }
    const PlanWork work = work_out_plan(book, id, body, now);
    for (const char* each : worked_out)
        if (body.value(each, Json{}) != work.body.value(each, Json{}))
            throw FormError{std::string{each} + ": is not what the worksheet gives; `cotter plan --from` works it out"};
    if (body.value("issued", false) && !work.fits())
        throw FormError{"issued: the plan does not fit; `cotter plan --from` says why"};
} catch (const NotFound& e) {
    throw FormError{e.what()};
} catch (const std::invalid_argument& e) {
    throw FormError{std::string{"worksheet.runs: "} + e.what()};
}

} // namespace cotter::desk
