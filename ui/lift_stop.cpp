#include "lift_stop.hpp"

#include "people.hpp"
#include "title_block.hpp"

#include "amounts.hpp"
#include "local_time.hpp"
#include "written.hpp"

#include <utility>

namespace cotter::ui {

namespace {

const std::vector<const char*> found{"looked at; no defect is there", "part renewed, like for like",
                                     "adjusted or tightened by the maker's steps", "paper or plate put right",
                                     "called by mistake"};

} // namespace

std::vector<records::Fact> open_stops(const records::Book& book, const std::string& unit)
{
    auto stops = book.facts_about("stop", unit);
    std::erase_if(stops,
                  [](const records::Fact& each) { return !each.doc.value("lifted", records::Json::array()).empty(); });
    return stops;
}

LiftStop::LiftStop(const Outside& outside, std::string unit, bool may_type)
    : outside_{outside}, unit_{std::move(unit)}, page_{Page::which}, why_{outside, "What was found?", found, may_type}
{
    if (const auto stops = open_stops(outside.book, unit_); stops.size() == 1) {
        stop_ = stops.front().key.key;
        page_ = Page::who;
    }
}

void LiftStop::go(Page page)
{
    page_ = page;
    turned_ = 0;
}

std::optional<std::size_t> LiftStop::ask(Sheet& sheet, const Choice& choice)
{
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "CLEARS", person_));
    return pressed;
}

std::string LiftStop::name_of(const records::Fact& stop) const
{
    const std::string zone = desk::zone_of(outside_.book, desk::current_site(outside_.book));
    return words::in_language(stop.doc.value("why", "")) + ", " +
           desk::shown_name(outside_.book, stop.doc.value("by", "")) + ", " +
           words::short_day(desk::local_day(rules::Instant{stop.doc.value("at", stop.at)}, zone));
}

void LiftStop::which(Sheet& sheet)
{
    const auto stops = open_stops(outside_.book, unit_);
    Choice choice{say("{}: which stop is lifted?", desk::label_of(outside_.book, unit_)),
                  stops.empty() ? "No stop is open on it." : "",
                  {},
                  false,
                  "Back"};
    for (const records::Fact& each : stops)
        choice.options.push_back({name_of(each), "", figures::Sign::stop});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == stops.size())
        return go(Page::gone);
    stop_ = stops[*pressed].key.key;
    go(Page::who);
}

void LiftStop::who(Sheet& sheet)
{
    const auto people = who_may_write(outside_.book, "stop_lifted");
    Choice choice = choice_of_people(outside_.book, "Who looked into it and lifts the stop?", people,
                                     "Nobody is admitted who may. The supervisor admits people in Site.");
    if (const auto stop = outside_.book.fact("stop", stop_); stop && !people.empty())
        choice.hint = desk::label_of(outside_.book, unit_) + ": " + name_of(*stop);
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == people.size())
        return go(Page::gone);
    outside_.signing.once(people[*pressed], [this, person = people[*pressed]] {
        person_ = person;
        go(Page::why);
    });
}

void LiftStop::why(Sheet& sheet)
{
    const auto left = why_.draw(sheet, person_);
    if (left == Phrases::Left::back)
        go(Page::who);
    if (left == Phrases::Left::said)
        go(Page::hold);
}

void LiftStop::hold(Sheet& sheet)
{
    const auto stop = outside_.book.fact("stop", stop_);
    const auto pressed = ask(sheet, {say("Is {} fit to be used again?", desk::label_of(outside_.book, unit_)),
                                     (stop ? name_of(*stop) + ". " : "") + words::in_language(why_.said()) + ".",
                                     {{"Hold to lift the stop", "", std::nullopt, false, true}},
                                     false,
                                     "Back"});
    if (!pressed)
        return;
    *pressed == 0 ? write() : go(Page::why);
}

void LiftStop::write()
{
    go(Page::who); // where it is refused: the reason is said
    desk::write(outside_.book,
                {desk::entry(outside_.hand(person_), "stop_lifted", unit_, {{"stop", stop_}, {"why", why_.said()}})});
    go(Page::done);
}

bool LiftStop::draw(Sheet& sheet)
{
    switch (page_) {
    case Page::which: which(sheet); break;
    case Page::who: who(sheet); break;
    case Page::why: why(sheet); break;
    case Page::hold: hold(sheet); break;
    case Page::done:
        if (ask(sheet, {say("The stop on {} is lifted", desk::label_of(outside_.book, unit_)),
                        "",
                        {{"Understood", "", figures::Sign::in_order}},
                        false,
                        ""}))
            go(Page::gone);
        break;
    case Page::gone: break;
    }
    return page_ != Page::gone;
}

} // namespace cotter::ui
