// Site: what is stopped now and why: units, the clock, and lifts that were made without an answer.

#include "site.hpp"

#include "foot.hpp"

#include "amounts.hpp"
#include "arrival.hpp"
#include "clock.hpp"
#include "finding_words.hpp"
#include "local_time.hpp"
#include "site_day.hpp"
#include "written.hpp"

#include <algorithm>
#include <set>

namespace cotter::ui {

using records::Json;

namespace {

// The way from a finding to what clears it, where Site has it.
const char* button_for(rules::Code code)
{
    switch (code) {
    case rules::Code::unit_elsewhere: return "Receive";
    case rules::Code::check_stopped: return "Defects";
    case rules::Code::unit_quarantined: return "Lift the stop";
    case rules::Code::evidence_missing: return "Photograph";
    default: return "";
    }
}

// Of a unit that is elsewhere, or on its way here, this site says nothing but that it may be received.
bool may_be_here(const records::Book& book, const desk::BoardRow& row, const std::string& site)
{
    return row.place.empty() || row.place == site || desk::was_sent_here(book, row.unit, site);
}

// On a machine that is not at another site, and the machine: it works here, whatever the papers of its parts say.
std::set<std::string> hanging_here(const records::Book& book, const std::string& site)
{
    std::set<std::string> all;
    for (const auto& fact : book.facts("coupling")) {
        const std::string at = desk::doc(book, "whereabouts", fact.key.key).value("at_site", ""),
                          unit = fact.doc.value("attachment", "");
        if (unit.empty() || (at != site && book.fact("site", at)))
            continue;
        all.insert({fact.key.key, unit, fact.doc.value("hitch", ""),
                    desk::doc(book, "headplate", unit).value("headplate", "")});
        const auto hangs = desk::doc(book, "rigging", fact.key.key).value("hangs", std::vector<std::string>{});
        all.insert(hangs.begin(), hangs.end());
    }
    return all;
}

} // namespace

// Each with what clears it, and the way there where it is in Site.
void Site::add_units()
{
    const auto naming = [&](const std::string& id) { return desk::shown_name(outside_.book, id); };
    const std::string site = desk::current_site(outside_.book);
    const std::set<std::string> hanging = hanging_here(outside_.book, site);
    for (const auto& row : fleet_.known_rows())
        for (const auto& finding : row.findings)
            if (weight(finding.code) == rules::Weight::stop && !row.scrapped() &&
                (hanging.contains(row.unit) || may_be_here(outside_.book, row, site))) {
                const words::Sentence sentence = words::says(finding, {}, naming);
                rows_[stopped_.size()] = row.unit;
                stopped_.push_back(
                    {false, figures::Sign::stop, sentence.headline,
                     sentence.detail + ". " + words::in_language(std::string{words::clears(finding.code)}),
                     button_for(finding.code)});
            }
}

void Site::add_device()
{
    const auto& book = outside_.book;
    for (const auto& fact : book.facts("clock"))
        if (!book.state().sample && !desk::is_confirmed(book, fact, outside_.now())) {
            notices_[stopped_.size()] = fact.key.key;
            stopped_.push_back({false, figures::Sign::stop,
                                fact.doc.value("kind", "") == "jump" ? "The clock jumped" : "The clock went back",
                                "No lift until a supervisor has confirmed day and time", "Confirm"});
        }
    if (const Notice notice = outside_.notice ? outside_.notice() : Notice{}; !notice.what.empty())
        stopped_.push_back({false, figures::Sign::warning, notice.what, notice.mend});
    const std::string zone = desk::zone_of(book, desk::current_site(book));
    for (const auto& fact : book.facts("without_answer"))
        stopped_.push_back({false, figures::Sign::stop,
                            say("Lifted without an answer: {}", desk::label_of(book, fact.doc.value("machine", ""))),
                            fact.doc.value("why", "") + ", " + desk::shown_name(book, fact.doc.value("by", "")) + ", " +
                                words::long_day(desk::local_day(rules::Instant{fact.at}, zone))});
}

// What stops every lift here, whatever the unit: plan, people, trench, shift.
void Site::add_site()
{
    const auto& book = outside_.book;
    const auto add = [&](const std::string& what, const std::string& clears) {
        stopped_.push_back({false, figures::Sign::stop, what, clears});
    };
    if (book.state().damaged)
        add("The book is damaged", "No lift until it is restored from a copy");
    const std::string site = desk::current_site(book);
    const desk::SiteDay day = desk::site_day(book, site, outside_.now());
    if (std::none_of(day.plans.begin(), day.plans.end(), [](const desk::DayPlan& each) { return each.in_force; }))
        add("No lift plan is in force here", "The appointed person issues one: Plans");
    for (const char* role : {"supervisor", "signaller"})
        if (std::none_of(day.people.begin(), day.people.end(), [&](const auto& each) { return each.role == role; }))
            add(role == std::string{"supervisor"} ? "No supervisor is named for today"
                                                  : "No signaller is named for today",
                "Name one: People");
    for (const desk::DayTrench& each : day.trenches)
        if (each.needed && !each.holds)
            add(say("{}: the trench is not inspected and safe this shift", each.place),
                "A competent person inspects it: Record, The day's work");
}

void Site::look_at_stopped()
{
    const std::string of = looked_at(outside_) + std::to_string(fleet_.steps().done());
    if (of == stopped_of_)
        return;
    stopped_of_ = of;
    stopped_.clear();
    notices_.clear();
    rows_.clear();
    add_device();
    add_site();
    add_units();
    if (fleet_.steps().is_stopped())
        stopped_.push_back({false, figures::Sign::warning, said_of(fleet_.steps()), "The rest is not known here"});
    if (stopped_.empty())
        stopped_.push_back({false, std::nullopt, "Nothing is stopped now", ""});
}

void Site::stopped(Sheet& sheet)
{
    if (fleet_.all_are_read())
        look_at_stopped();
    else
        stopped_ = {{false, figures::Sign::to_do, said_of(fleet_.steps()), ""}};
    const std::string since = fleet_.since();
    const auto opened = reading_.list(
        sheet, stopped_,
        begin_page(sheet, since.empty() ? say("Stopped now, and why") : say("Stopped, and why, as of {}", since),
                   with_button(all_buttons, reading_.scroll().button())));
    if (opened && notices_.contains(*opened)) {
        notice_ = notices_.at(*opened);
        go(Page::clock);
    } else if (opened && stopped_[*opened].opens == "Receive") {
        receive_.emplace(outside_, true, rows_.at(*opened));
        go(Page::receive);
    } else if (opened && stopped_[*opened].opens == "Lift the stop") {
        lift_stop_.emplace(outside_, rows_.at(*opened), true);
        go(Page::lift_stop);
    } else if (opened && stopped_[*opened].opens == "Photograph") {
        copy_.emplace(outside_, rows_.at(*opened));
        go(Page::copy);
    } else if (opened) {
        ahead_.emplace(outside_);
        go(Page::ahead);
    } else
        buttons(sheet, Page::stopped, &reading_.scroll());
    ui::draw(sheet, title_block(outside_, "SUPERVISOR", supervisor()));
}

// The supervisor reads a clock that is right, a phone's, and compares.
void Site::clock(Sheet& sheet)
{
    const std::string zone = desk::zone_of(outside_.book, desk::current_site(outside_.book));
    const rules::Instant now = outside_.now();
    Choice choice{say("Is it {}, {}?", words::long_day(desk::local_day(now, zone)),
                      words::clock_time(desk::local_minutes(now, zone))),
                  "Compare with another clock. If it is not, set this device's clock first.",
                  {},
                  false,
                  "Back"};
    if (supervisor().empty())
        choice.hint = "No supervisor is named for today. Name one under People; then confirm.";
    else
        choice.options = {{"Yes, it is", desk::shown_name(outside_.book, supervisor()), figures::Sign::in_order}};
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == choice.options.size())
        return go(Page::stopped);
    outside_.signing.in(supervisor(), [this] {
        desk::write(outside_.book, {confirm_clock(outside_.hand(supervisor()), outside_.book, notice_)});
        go(Page::stopped);
    });
}

} // namespace cotter::ui
