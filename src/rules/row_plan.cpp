// Row plan: is this lift inside a lift plan that is in force, and have all been briefed on it?
// Source: LOLER 1998 reg. 8 (planned by a competent person, supervised, carried out safely).

#include "case.hpp"

#include <algorithm>

namespace cotter::rules {

namespace {

bool names_attachment(const Plan& plan, const Item& attachment)
{
    const bool by_model = attachment.model && attachment.model->id && contains(plan.models, *attachment.model->id);
    return by_model || contains(plan.attachments, attachment.tag);
}

bool names_gear(const Plan& plan, const Question& question)
{
    const Item* machine = find_item(question, Role::machine);
    const Item* attachment = find_item(question, Role::attachment);
    return machine && contains(plan.machines, machine->tag) && attachment && names_attachment(plan, *attachment);
}

bool names_pipe_and_place(const Plan& plan, const Question& question)
{
    return question.pipe && question.pipe->id && contains(plan.pipes, *question.pipe->id) && question.place &&
           question.place->id && contains(plan.places, *question.place->id);
}

// A limit that the plan does not state is outside; a load or radius unknown on our side is another row's matter.
bool is_load_inside(const Plan& plan, std::optional<double> load)
{
    return plan.greatest && (!load || *load <= static_cast<double>(plan.greatest->count()));
}

bool is_radius_inside(const Plan& plan, Known<Millimetres> radius)
{
    return plan.greatest_radius && (!radius || *radius <= *plan.greatest_radius);
}

void ask_limits(const Case& asked, const Plan& plan, Findings& out)
{
    const auto load = load_on_machine(asked, false);
    const auto radius = greatest_radius(asked.question);
    if (!names_gear(plan, asked.question) || !names_pipe_and_place(plan, asked.question))
        out.add(Code::plan_outside, about(plan.id));
    else if (!is_load_inside(plan, load))
        out.add(Code::plan_outside, about(plan.id), figure(load), figure(plan.greatest), Unit::kilogram);
    else if (!is_radius_inside(plan, radius))
        out.add(Code::plan_outside, about(plan.id), figure(radius), figure(plan.greatest_radius), Unit::millimetre);
}

bool has_signed(const Plan& plan, const Id& person)
{
    return plan.issue && std::any_of(plan.briefed.begin(), plan.briefed.end(), [&](const Signature& each) {
               return each.person == person && each.issue == plan.issue;
           });
}

void ask_briefing(const Question& question, const Plan& plan, Findings& out)
{
    for (const auto& [role, person] : question.people)
        if (person && person->id && !has_signed(plan, *person->id))
            out.add(Code::briefing_none, *person->id);
}

} // namespace

void plan_row(const Case& asked, Findings& out)
{
    if (!is_in_force_here(asked.question)) {
        out.add(Code::plan_none);
        return;
    }
    const Plan& plan = *asked.question.plan;
    if (!plan.first_day || !plan.last_day || asked.today < *plan.first_day || asked.today > *plan.last_day)
        out.add(Code::plan_out_of_date, about(plan.id), figure(asked.today), figure(plan.last_day), Unit::day);
    ask_limits(asked, plan, out);
    ask_briefing(asked.question, plan, out);
}

} // namespace cotter::rules
