// Site: who does what today, who is admitted, and their PINs.

#include "site.hpp"

#include "entitled.hpp"
#include "people.hpp"
#include "pins.hpp"
#include "written.hpp"

#include <map>
#include <utility>

namespace cotter::ui {

using records::Json;

// Goes on with one who may admit people, once he has signed; it need not be today's supervisor, who may have gone or
// forgotten his PIN.
void Site::as_admitter(std::function<void(const std::string&)> then)
{
    const auto able = desk::who_may_admit(outside_.book);
    if (able.empty())
        return then("");
    by_whom_ = [this, then = std::move(then)](const std::string& by) {
        outside_.signing.in(by, [then, by] { then(by); });
    };
    if (able.size() == 1)
        return by_whom_(able.front());
    go(Page::by_whom);
}

void Site::by_whom(Sheet& sheet)
{
    const auto able = desk::who_may_admit(outside_.book);
    Choice choice{"Who does this?", "Supervisor, manager or appointed person.", {}, false, "Back"};
    for (const std::string& each : able)
        choice.options.push_back({desk::shown_name(outside_.book, each),
                                  desk::doc(outside_.book, "person", each).value("firm", ""), std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == able.size())
        return go(Page::people);
    const auto then = by_whom_;
    go(Page::people); // unless it goes on elsewhere
    then(able[*pressed]);
}

// Each signaller is one touch; so is admitting somebody.
void Site::people(Sheet& sheet)
{
    const Json roles = roles_today();
    const std::string signals = roles.value("signaller", ""), leads = roles.value("supervisor", "");
    const auto signallers = people_with(outside_.book, "roles", "signaller");
    const auto named = [&](const std::string& who) {
        return who.empty() ? std::string{"nobody named"} : desk::shown_name(outside_.book, who);
    };
    Choice choice{"Who does what today?", "", {{"Supervisor", named(leads), std::nullopt}}, false, "Back"};
    for (const std::string& each : signallers)
        choice.options.push_back({named(each), each == signals ? "is signaller today" : "make signaller today",
                                  each == signals ? std::optional{figures::Sign::in_order} : std::nullopt});
    choice.options.push_back({"Briefing", "on the plan in force; each signs", std::nullopt});
    choice.options.push_back({"Admit a person", "card seen, familiarised", std::nullopt});
    if (desk::are_pins_asked(outside_.book))
        choice.options.push_back({"Set a PIN", "new, or forgotten", std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == choice.options.size())
        return go(Page::due);
    if (*pressed == 0 || (*pressed <= signallers.size() && leads.empty())) // who names the others comes first
        return go(Page::name);
    if (*pressed <= signallers.size())
        return name_for("signaller", signallers[*pressed - 1]);
    if (*pressed == signallers.size() + 1) {
        briefing_.emplace(outside_);
        return go(Page::briefing);
    }
    if (*pressed == signallers.size() + 2)
        return begin_admitting();
    go(Page::whose_pin);
}

// Whoever takes over says so himself: the one who leaves is not asked.
void Site::name_for(const std::string& role, const std::string& person)
{
    const std::string writer = role == "supervisor" || supervisor().empty() ? person : supervisor();
    outside_.signing.in(writer, [this, role, person, writer] {
        auto roles = roles_today().get<std::map<std::string, std::string>>();
        roles[role] = person;
        desk::write(outside_.book,
                    {name_people(outside_.hand(writer), outside_.book, desk::current_site(outside_.book), roles)});
        go(Page::people);
    });
}

void Site::name(Sheet& sheet)
{
    const auto able = people_with(outside_.book, "roles", "supervisor");
    Choice choice{"Who is supervisor today?", "", {}, false, "Back"};
    for (const std::string& each : able)
        choice.options.push_back({desk::shown_name(outside_.book, each),
                                  desk::doc(outside_.book, "person", each).value("firm", ""), std::nullopt});
    if (able.empty())
        choice.hint = "Nobody is admitted for this role yet.";
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == able.size())
        return go(Page::people);
    name_for("supervisor", able[*pressed]);
}

void Site::begin_admitting()
{
    as_admitter([this](const std::string& by) {
        admitting_.emplace(outside_, by);
        go(Page::admit);
    });
}

// Whoever may admit people hands the screen over; the person chooses.
void Site::whose_pin(Sheet& sheet)
{
    const auto people = outside_.book.facts("person");
    Choice choice{"Whose PIN is set?", "The person chooses it, here. The old one ends.", {}, false, "Back"};
    for (const auto& each : people)
        choice.options.push_back({desk::shown_name(outside_.book, each.key.key),
                                  desk::has_pin(outside_.book, each.key.key) ? "has a PIN" : "has none yet",
                                  std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == people.size())
        return go(Page::people);
    const std::string of = people[*pressed].key.key;
    as_admitter([this, of](const std::string& by) { outside_.signing.choose(by, of, [this] { go(Page::people); }); });
}

} // namespace cotter::ui
