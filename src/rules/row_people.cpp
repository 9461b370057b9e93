// Row people: is everybody named whom the plan needs, and may each do the job?
// Source: PUWER 1998 reg. 9 (training); BS 7121-1 for the roles (both from memory).

#include "case.hpp"

#include <array>

namespace cotter::rules {

namespace {

bool is_operator_also_signaller(const Question& question)
{
    const Person* on_the_levers = find_person(question, "operator");
    const Person* signaller = find_person(question, "signaller");
    return on_the_levers && signaller && on_the_levers->id == signaller->id;
}

void ask_named(const Question& question, Findings& out)
{
    for (const char* role : {"operator", "supervisor", "signaller"})
        if (needs_role(question, role) && !find_person(question, role))
            out.add(Code::person_none, role);
    if (is_in_force_here(question))
        for (const auto& [role, needed] : question.plan->roles)
            if (yes(needed) && !find_person(question, role))
                out.add(Code::person_none, role);
    if (is_operator_also_signaller(question))
        out.add(Code::person_none, "signaller");
}

bool is_familiar(const Person& person, const Item* item)
{
    return item && item->model && item->model->id && contains(person.authorised, *item->model->id);
}

bool works_without(const Question& question, Role role)
{
    return role == Role::hitch && !find_item(question, role) && yes(question.no_hitch);
}

bool is_authorised(const Question& question, const Id& role, const Person& person)
{
    if (role != "operator")
        return contains(person.authorised, role);
    for (const Role each : {Role::machine, Role::hitch, Role::attachment})
        if (!works_without(question, each) && !is_familiar(person, find_item(question, each)))
            return false;
    return true;
}

void ask_card(const Case& asked, const Person& person, Findings& out)
{
    const auto& site = asked.question.site;
    const auto add = [&](Code code) {
        out.add(code, *person.id, figure(asked.today), figure(person.card_last_day), Unit::day);
    };
    if (!person.card_last_day || *person.card_last_day < asked.today)
        add(site && no(site->expired_card_stops) ? Code::card_expired_allowed : Code::card_expired);
    else if (days_between(asked.today, *person.card_last_day) <= warning_days(asked.question))
        add(Code::card_due);
}

} // namespace

void people_row(const Case& asked, Findings& out)
{
    ask_named(asked.question, out);
    for (const auto& [role, person] : asked.question.people) {
        if (!person || !person->id)
            continue;
        if (!is_authorised(asked.question, role, *person))
            out.add(Code::person_not_authorised, *person->id);
        ask_card(asked, *person, out);
    }
}

} // namespace cotter::rules
