// Of a plan: what its lifts would be answered. The same decision as at the machine, so that no plan is issued whose
// lifts are stopped by what the plan says.

#include "plan_parts.hpp"

#include <set>

namespace cotter::desk {

using namespace rules;

namespace {

// Of the rows that a plan decides; the others are the day's.
bool is_of_the_plan(const Finding& finding)
{
    const Row asked = row(finding.code);
    if (finding.code == Code::hitch_headplate)
        return true;
    return weight(finding.code) == Weight::stop && finding.code != Code::machine_device &&
           finding.code != Code::briefing_none && finding.code != Code::plan_out_of_date &&
           (asked == Row::pipe || asked == Row::load || asked == Row::reach || asked == Row::thread ||
            asked == Row::plan);
}

Plan plan_as_issued(const Json& body)
{
    Json issued = body;
    issued["id"] = "";
    issued["issued"] = issued["signed"] = true;
    issued["places"] = Json::array();
    for (const Json& each : body.at("places"))
        issued["places"].push_back(each.at("id"));
    return records::read_plan(issued);
}

Question question(const PlanSheet& plan, const Json& body, const Json& place, const Pipe& pipe)
{
    Question asked = plan.gear;
    asked.pipe = pipe;
    Json move = place;
    for (const char* field : {"water_kg", "mud_kg", "shackles_kg"})
        move[field] = plan.sheet.at("hanging").at(field);
    move["bucket_kg"] = 0;
    asked.move = records::read_move(move);
    asked.place = records::read_place({{"id", place.at("id")}});
    asked.trench = records::read_trench(place.at("trench"));
    asked.thread = records::read_strutting(place.at("thread"));
    asked.plan = plan_as_issued(body);
    asked.plan->machines = {plan.item(Role::machine).tag};
    asked.plan->attachments = {plan.item(Role::attachment).tag};
    asked.site = Site{};
    asked.site->id = asked.plan->site;
    return asked;
}

} // namespace

std::vector<PlanStop> judge_plan(const PlanSheet& plan, const Json& body)
{
    std::vector<PlanStop> stops;
    std::set<std::string> seen;
    for (const PlannedPipe& run : plan.runs)
        for (const Json& place : seen.insert(run.id).second ? body.at("places") : Json::array()) {
            const Question asked = question(plan, body, place, run.pipe);
            for (const Finding& each : decide(asked).findings)
                if (is_of_the_plan(each))
                    stops.push_back({place.at("id"), asked, each});
        }
    return stops;
}

} // namespace cotter::desk
