// The Cab: who is on the levers, which shift, machine, mark and pipe.

#include "cab.hpp"

#include "amounts.hpp"
#include "local_time.hpp"
#include "people.hpp"
#include "plan_in_force.hpp"
#include "setting.hpp"

#include <array>
#include <utility>

namespace cotter::ui {

using records::Json;

void Cab::choose_person(Sheet& sheet)
{
    const auto people = people_with(outside_.book, "roles", "operator");
    Choice choice{"Who is on the levers?",
                  people.empty() ? "Nobody is admitted as operator. The supervisor admits people in Site." : "",
                  {},
                  false,
                  "Back"};
    for (const std::string& each : people)
        choice.options.push_back({desk::shown_name(outside_.book, each), "", std::nullopt});
    choice.options.push_back({"A unit has come", "for the gateman", std::nullopt});
    choice.options.push_back({"Find a unit", "by the digits of its tag", std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == choice.options.size())
        return go(Page::gone);
    if (*pressed == people.size() + 1)
        return outside_.find ? outside_.find() : void();
    if (*pressed == people.size()) {
        operator_.clear();
        receive_.emplace(outside_, false);
        return go(Page::receive);
    }
    if (!lift_still_up().empty())
        return take_the_levers(people[*pressed]); // setting down asks for no PIN
    outside_.signing.in(people[*pressed], [this, person = people[*pressed]] { take_the_levers(person); });
}

// A shift that runs is taken over without its last operator.
void Cab::take_the_levers(const std::string& person)
{
    operator_ = person;
    machine_.clear();
    unit_.clear();
    standing_.clear();
    pipe_.clear();
    lift_ = lift_still_up();
    go(!lift_.empty() ? Page::load_up : is_in_shift() ? Page::machine : Page::shift);
}

bool Cab::is_in_shift() const
{
    const Json shift = desk::open_shift(outside_.book, desk::current_site(outside_.book));
    return !shift.empty() && outside_.now().count() <= shift.value("end", std::int64_t{0});
}

std::string Cab::lift_still_up() const
{
    for (const auto& fact : outside_.book.facts("lift"))
        if (fact.open)
            return fact.key.key;
    return "";
}

void Cab::start_shift(Sheet& sheet)
{
    constexpr std::array<std::int64_t, 4> hours{8, 10, 12, 14};
    const std::string site = desk::current_site(outside_.book), zone = desk::zone_of(outside_.book, site);
    Choice choice{
        "No shift is open. How long is this one?", "It may cross midnight; 14 hours at most.", {}, false, "Back"};
    for (const std::int64_t each : hours) {
        const rules::Instant end = outside_.now() + rules::Instant{each * 3600};
        choice.options.push_back(
            {say("{} hours", each), say("to {}", words::clock_time(desk::local_minutes(end, zone))), std::nullopt});
    }
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == hours.size())
        return go(Page::who);
    write(open_a_shift(outside_.hand(operator_), site, hours[*pressed] * 3600, zone));
    go(Page::machine);
}

void Cab::choose_machine(Sheet& sheet)
{
    std::vector<std::pair<std::string, std::string>> rigs;
    Choice choice{"Which machine, with which attachment?", "", {}, false, "Back"};
    for (const auto& fact : outside_.book.facts("coupling")) {
        const std::string attachment = fact.doc.value("attachment", "");
        const std::string at = desk::doc(outside_.book, "whereabouts", fact.key.key).value("at_site", "");
        const bool elsewhere = !at.empty() && at != desk::current_site(outside_.book) && outside_.book.fact("site", at);
        if (attachment.empty() || elsewhere) // at another site; what is on its way may stand here already
            continue;
        rigs.emplace_back(fact.key.key, attachment);
        choice.options.push_back({desk::label_of(outside_.book, fact.key.key),
                                  say("with {}", desk::label_of(outside_.book, attachment)), std::nullopt});
    }
    if (rigs.empty())
        choice.hint =
            "Nothing that is here is coupled by the record. Couple an attachment and record it: Site, Record, "
            "The day's work.";
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == rigs.size())
        return go(Page::who);
    std::tie(machine_, unit_) = rigs[*pressed];
    standing_.clear();
    go(marks().empty() ? Page::pipe : Page::standing); // the sheet says that there is no plan
}

std::vector<Json> Cab::marks() const
{
    return desk::places_in_force(outside_.book, desk::current_site(outside_.book), outside_.hand("").day);
}

// Radius and heights come from the plan's place: the operator only says where the machine stands.
void Cab::choose_standing(Sheet& sheet)
{
    const auto places = marks();
    Choice choice{places.size() == 1 ? say("Standing at mark {}?", places[0].value("id", ""))
                                     : std::string{"At which mark do you stand?"},
                  "Look at the mark on the ground.",
                  {},
                  false,
                  "Back"};
    for (const Json& each : places)
        choice.options.push_back({say("Mark {}", each.value("id", "")), "", std::nullopt});
    choice.options.push_back({"At none of them", "the lift is not planned from there", std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed > places.size())
        return go(Page::machine);
    standing_ = *pressed == places.size() ? "no mark" : places[*pressed].value("id", "");
    go(Page::pipe);
}

void Cab::choose_pipe(Sheet& sheet)
{
    const auto pipes = outside_.book.facts("pipe");
    Choice choice{"Read maker and size on the pipe. Which one is it?", "", {}, false, "Back"};
    for (const auto& fact : pipes)
        choice.options.push_back({fact.doc.value("name", fact.key.key), fact.doc.value("maker", ""), std::nullopt});
    choice.options.push_back({"None of these", "the check can be done; no lift", std::nullopt});
    if (!marks().empty())
        choice.options.push_back({"Another mark", "the machine has moved", std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == pipes.size() + 1 && !marks().empty())
        return go(Page::standing);
    if (*pressed > pipes.size())
        return go(marks().empty() ? Page::machine : Page::standing);
    pipe_ = *pressed < pipes.size() ? pipes[*pressed].key.key : "";
    think();
    const bool adjusts = model().value("adjusts", true) && !model().value("states", Json::array()).empty();
    go(adjusts && !has_looked(question_) ? Page::look : Page::sheet);
}

} // namespace cotter::ui
