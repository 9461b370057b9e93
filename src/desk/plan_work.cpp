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
        out.refuse("", "no stretch of pipes is given; at least one is needed");
    if (plan.sheet.at("stands").empty())
        out.refuse("", "no standing place is given; at least one is needed");
    std::set<std::string> ids;
    for (const Json& stand : plan.sheet.at("stands"))
        if (!ids.insert(stand.at("id")).second)
            out.refuse(stand.at("id"), "stands twice in the list; each standing place has a mark of its own");
}

// What a plan says even where it says that there is none.
void refuse_unsaid(const PlanSheet& plan, const Json& body, Results& out)
{
    for (const auto& [field, missing] : {std::pair{"first_day", "its first day is not given"},
                                         {"last_day", "its last day is not given"},
                                         {"category", "the category of lift is not given"},
                                         {"sequence", "the sequence of steps is not given"},
                                         {"roles", "who is needed is not given"}})
        if (!body.contains(field))
            out.refuse("", missing);
    for (const auto& [field, missing] :
         {std::pair{"wind_limit_mm_s", "the wind at which lifting stops is not given"},
          {"light", "the light is not given: say daylight if none else is needed"},
          {"route", "the way from the stack to the trench is not given"},
          {"around", "what is near is not given: overhead lines and buried services; an empty list says none"}})
        if (!plan.sheet.contains(field))
            out.refuse("", missing);
    if (body.value("last_day", "9") < body.value("first_day", ""))
        out.refuse("", "its last day is before its first");
    for (const auto& [field, missing] :
         {std::pair{"sequence", "the sequence has no step"}, {"roles", "nobody is said to be needed"}})
        if (body.contains(field) && body.at(field).empty())
            out.refuse("", missing);
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
        return out.refuse(plan.machine, "how it is set up is not in this book: write its set-up down first");
    if (plan.chart_chosen != plan.sheet.at("chart").get<std::string>())
        out.refuse(plan.machine, "is set up for chart {}; that chart is accepted", plan.chart_chosen);
    if (plan.coupled_hitch != plan.sheet.value("hitch", ""))
        out.refuse(plan.machine,
                   plan.coupled_hitch.empty()
                       ? "has no hitch coupled by the record; the worksheet names one"
                       : "has {} coupled by the record; the worksheet's hitch is another or left out",
                   plan.coupled_hitch);
    if (plan.fitted_headplate != plan.sheet.value("headplate", ""))
        out.refuse(plan.attachment,
                   plan.fitted_headplate.empty()
                       ? "has no headplate fitted by the record; the worksheet names one"
                       : "has {} fitted by the record; the worksheet's headplate is another or left out",
                   plan.fitted_headplate);
    const bool rigid = plan.gear.set_up->mounting == rules::Mounting::rigid;
    if (plan.sheet.at("hanging").at("rigid") != rigid)
        out.refuse(plan.machine, rigid ? "its attachment is mounted rigidly by its set-up"
                                       : "its attachment is mounted free by its set-up");
}

// Figures that cannot stand beside each other.
void refuse_impossible(const PlanSheet& plan, Results& out)
{
    const Json &base = plan.sheet.at("base"), &hanging = plan.sheet.at("hanging");
    if (base.at("shoe_mm") >= base.at("gauge_mm"))
        out.refuse(plan.machine, "a track's width is not less than the gauge between the tracks' middles");
    if (base.at("overall_mm") < base.at("contact_mm"))
        out.refuse(plan.machine, "the track over all is less than what of it bears");
    const auto& above_crown = plan.item(rules::Role::attachment).model->above_crown;
    if (above_crown && number(hanging, "pin_above_crown_mm") < rules::real(*above_crown))
        out.refuse(plan.attachment,
                   "the pin above the crown is less than the attachment alone stands over it, {} mm "
                   "by its model",
                   above_crown->count());
    if (hanging.value("rigid", false) && number(hanging, "centre_below_pin_mm") < 1)
        out.refuse(plan.attachment, "the combined centre of gravity is given at the pin; it is below it");
}

// Who confirms the places, who gives the signals.
void refuse_without_roles(const Json& body, Results& out)
{
    const Json roles = body.value("roles", Json::object());
    for (const auto& [role, why] :
         {std::pair{"supervisor", "it says that no supervisor is needed; marks are confirmed by one"},
          {"signaller", "it says that no signaller is needed; hold points are spoken with one"}})
        if (roles.contains(role) && roles.at(role) == false)
            out.refuse("", why);
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
        out.refuse(each.mark, "is a mark of {} in those days; another mark is accepted", each.plan);
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
