// Of a plan: masses, loads, how many lifts, the order of work.

#include "case.hpp"
#include "form.hpp"
#include "load.hpp"
#include "mass.hpp"
#include "plan_parts.hpp"
#include "setting.hpp"

#include <algorithm>
#include <set>

namespace cotter::desk {

using namespace rules;

namespace {

bool is_measured(const Pipe& p)
{
    return p.barrel && p.socket && p.overall && p.effective && p.bore && mass_of(p).used;
}

double load_of(const PlanSheet& plan, const Pipe& pipe, bool hitch_too)
{
    const Case asked{plan.gear, {}};
    return load_on_machine(asked, hitch_too, hanging_kg(asked, pipe)).value_or(-1);
}

const char* mass_of_a(Role role)
{
    switch (role) {
    case Role::attachment: return "mass of the attachment";
    case Role::headplate: return "mass of the headplate";
    case Role::hitch: return "mass of the hitch";
    case Role::hook: return "mass of the hook";
    case Role::sling: return "mass of the sling";
    default: return "mass of the machine";
    }
}

// Each mass of the load path by itself, so that nobody counts one twice or forgets it.
void deductions(const PlanSheet& plan, Results& out)
{
    for (const Item& each : plan.gear.items)
        if (each.role && each.role != Role::machine && each.mass)
            out.add({mass_of_a(*each.role), each.tag, each.mass->count(), "kg",
                     each.role == Role::hitch && plan.gear.chart->includes_hitch.value_or(false)
                         ? "as on record; the chart has taken it off already"
                         : "as on record",
                     "plate or record of the unit"});
    const Move& move = *plan.gear.move;
    for (const auto& [what, mass] :
         {std::pair{"water in the pipe", move.water}, {"mud on the pipe", move.mud}, {"shackles", move.shackles}})
        if (mass && mass->count() > 0)
            out.add({what, "", mass->count(), "kg", "as planned", "the plan's"});
}

void pipe(const PlanSheet& plan, const PlannedPipe& run, PlannedLoads& loads, Results& out)
{
    loads.all_measured = loads.all_measured && is_measured(run.pipe);
    if (!is_measured(run.pipe))
        return out.refuse(run.id, "a dimension of this pipe type is not known: write it down with the pipe");
    const double load = load_of(plan, run.pipe, false), all = load_of(plan, run.pipe, true);
    if (load < 0 || all < 0)
        return out.refuse(run.id, "a mass in the load path is not known: write it down with the unit");
    out.add({"mass of a pipe", run.id, up(*mass_of(run.pipe).used), "kg",
             "hollow cylinder and socket ring, or the maker's mass if greater", "geometry; firm's own rule"});
    out.add({"load on the machine", run.id, up(load), "kg",
             plan.gear.chart->includes_hitch.value_or(false)
                 ? "pipe, water, mud and all that hangs; the hitch is in the chart"
                 : "pipe, water, mud and all that hangs, hitch",
             firm});
    loads.load = std::max(loads.load, load);
    loads.all = std::max(loads.all, all);
    const auto over_all = [](const Pipe& each) { return std::max(*each.barrel, *each.socket); };
    if (!loads.widest || over_all(run.pipe) > over_all(*loads.widest))
        loads.widest = &run.pipe;
    if (!loads.narrowest || over_all(run.pipe) < over_all(*loads.narrowest))
        loads.narrowest = &run.pipe;
}

// Moving with the load on only by a rating for it.
void travel(const PlanSheet& plan, const PlannedLoads& loads, Results& out)
{
    if (!plan.sheet.value("moves_loaded", false))
        return;
    if (!plan.travel_kg)
        return out.refuse(plan.machine, "moves with the load on, and its chart has no rating for that");
    out.at_most({"load while the machine moves", plan.machine, up(loads.load), "kg", "as on the machine",
                 "the chart's rating for moving with the load on"},
                *plan.travel_kg);
}

// The states of the adjustment that serve the pipe.
std::vector<std::size_t> serving(const Model& model, const Pipe& pipe)
{
    std::vector<std::size_t> states;
    for (std::size_t i = 0; model.adjusts.value_or(true) && i < model.states.size(); ++i)
        if (serves(model.states[i], *pipe.barrel))
            states.push_back(i);
    return states;
}

} // namespace

PlannedLoads plan_pipes(const PlanSheet& plan, Results& out)
{
    PlannedLoads loads;
    std::set<std::string> ids;
    int all = 0;
    deductions(plan, out);
    for (const PlannedPipe& run : plan.runs) {
        all += run.pipes;
        if (ids.insert(run.id).second)
            pipe(plan, run, loads, out);
    }
    out.add({key("lifts"), "", all, "", "one lift a pipe", "the drawings"});
    if (out.refusals.empty())
        travel(plan, loads, out);
    return loads;
}

void plan_order_of_work(const PlanSheet& plan, Results& out)
{
    const Model& model = *plan.item(Role::attachment).model;
    std::vector<Stretch> stretches;
    for (const PlannedPipe& run : plan.runs) {
        stretches.push_back({run.id, run.pipes, serving(model, run.pipe), run.after});
        if (model.adjusts.value_or(true) && stretches.back().states.empty())
            out.refuse(run.id, "no setting of this attachment serves its barrel of {} mm", run.pipe.barrel->count());
    }
    const WorkOrder order = order_of_work(stretches, std::nullopt);
    std::string says;
    for (const Step& step : order.steps)
        says += (says.empty() ? "" : ", ") + std::to_string(stretches[step.stretch].pipes) + " \u00d7 " +
                stretches[step.stretch].pipe + (step.state ? ": " + model.states[*step.state].name.value_or("") : "");
    out.say("order of work", "", says, "fewest changes of the setting", "all orders compared");
    out.add({"changes of the setting", "", order.moves, "", "the first one included", "all orders compared"});
}

} // namespace cotter::desk
