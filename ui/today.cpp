#include "today.hpp"

#include "board_sign.hpp"
#include "form_words.hpp"

#include "amounts.hpp"
#include "day_words.hpp"
#include "finding_words.hpp"
#include "local_time.hpp"

namespace cotter::ui {

using figures::Sign;

namespace {

std::string with(const std::string& text, const std::string& more)
{
    return text.empty() ? more : more.empty() ? text : text + "; " + more;
}

std::string capitalised(std::string text)
{
    if (!text.empty() && 'a' <= text[0] && text[0] <= 'z')
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

std::string evidence_of(const desk::DayUnit& unit)
{
    const std::string report =
        unit.newest_report.empty() ? say("no report on record") : say("report {}", unit.newest_report);
    return report + ", " + (unit.row.latest ? say("to {}", words::long_day(*unit.row.latest)) : say("no date")) + ", " +
           say(unit.row.evidence_here ? "copy here" : "no copy here");
}

} // namespace

std::string Today::name(const std::string& id) const { return desk::shown_name(outside_.book, id); }

std::string Today::clock(rules::Instant at) const
{
    const std::string zone = desk::zone_of(outside_.book, site_);
    return words::short_day(desk::local_day(at, zone)) + " " + words::clock_time(desk::local_minutes(at, zone));
}

void Today::add_plan_and_people(const desk::SiteDay& it)
{
    heading("Lift plan and people");
    if (it.plans.empty())
        lines_.push_back({false, Sign::stop, "No lift plan is in the book", ""});
    for (const auto& each : it.plans)
        lines_.push_back({false, each.in_force ? std::nullopt : std::optional{Sign::stop},
                          say("Plan {}, issue {}", each.doc.value("id", ""), each.doc.value("issue", 0)),
                          with(each.doc.value("title", ""), say(each.in_force ? "in force" : "not in force today") +
                                                                ", " + days_in_words(each.doc))});
    for (const auto& plan : it.plans)
        for (const desk::Reason& each : plan.changes)
            lines_.push_back(
                {false, Sign::stop, say("Outside of plan {} now", plan.doc.value("id", "")), words::said(each)});
    if (it.people.empty())
        lines_.push_back({false, Sign::to_do, "Nobody is named for today", ""});
    for (const auto& each : it.people)
        lines_.push_back({false, each.briefed ? std::nullopt : std::optional{Sign::to_do},
                          capitalised(words::in_language(each.role)) + ": " + name(each.person),
                          each.briefed ? "Briefed on this issue" : "Not briefed on this issue, by the record"});
}

void Today::add_stops(const desk::SiteDay& it)
{
    heading("Stops called, and lifted by nobody");
    if (it.stops.empty())
        lines_.push_back({false, std::nullopt, "None", ""});
    const auto stopped =
        std::count_if(it.units.begin(), it.units.end(), [](const desk::DayUnit& each) { return each.row.stopped(); });
    if (stopped > 0)
        lines_.push_back({false, Sign::stop, say("Units here that may not lift: {}", stopped),
                          "Why stands with each, under Units in use."});
    for (const auto& each : it.stops)
        lines_.push_back({false, Sign::stop,
                          desk::label_of(outside_.book, each.unit) + ": " + words::in_language(each.why),
                          say("Called by {}, {}", name(each.by), clock(each.at))});
}

void Today::add_units(const desk::SiteDay& it)
{
    heading("Units in use");
    if (it.units.empty())
        lines_.push_back({false, std::nullopt, "None is here by the record", ""});
    for (const auto& each : it.units) {
        const bool stands = each.check == desk::CheckState::stands;
        std::string check{
            each.row.kind == "headplate"
                ? say("checked with its attachment")
                : words::in_language(std::string{words::says_of_check(each.is_asked(), each.is_whole(), stands)})};
        if (each.checked_at)
            check += ", " + name(each.checked_by) + ", " + clock(*each.checked_at);
        std::string more = with(evidence_of(each), check);
        for (const auto& finding : each.row.findings)
            if (weight(finding.code) == rules::Weight::stop)
                more = with(more, words::says(finding, {}, [&](const std::string& id) { return name(id); }).headline);
        const auto sign = sign_of(each.row);
        lines_.push_back({false, sign || !each.is_asked() || stands ? sign : std::optional{Sign::to_do},
                          each.row.label + (each.row.model.empty() ? "" : " \u00b7 " + each.row.model) +
                              (each.row.setting.empty() ? "" : " \u00b7 " + say("set to {}", each.row.setting)),
                          capitalised(more)});
    }
}

void Today::add_trenches(const desk::SiteDay& it)
{
    heading("Trenches");
    if (it.trenches.empty())
        lines_.push_back({false, std::nullopt, "No standing place is in the plan", ""});
    for (const auto& each : it.trenches)
        lines_.push_back({false, each.needed && !each.holds ? std::optional{Sign::stop} : std::nullopt,
                          say("Mark {}", each.place) + ": " +
                              words::in_language(std::string{words::says_of_trench(each.needed, each.holds)}),
                          each.inspected_at ? say("Newest inspection: {}, {}, {}", name(each.inspected_by),
                                                  clock(*each.inspected_at), each.safe ? say("safe") : say("not safe"))
                                            : "No inspection on record"});
}

// Anew each minute, and when something was written.
void Today::look()
{
    const rules::Instant now = outside_.now();
    const std::string of = looked_at(outside_);
    if (of == lines_of_)
        return;
    lines_of_ = of;
    lines_.clear();
    site_ = desk::current_site(outside_.book);
    const desk::SiteDay it = desk::site_day(outside_.book, site_, now);
    add_stops(it);
    add_plan_and_people(it);
    add_units(it);
    add_trenches(it);
}

bool Today::written(Sheet& sheet)
{
    const Choice choice{"It is written",
                        say("{} is written whole. If that is on a stick, it can be pulled now.", written_),
                        {},
                        false,
                        "Back"};
    if (ui::draw(sheet, choice, turned_))
        written_.clear();
    ui::draw(sheet, title_block(outside_, "READ ONLY", ""));
    return true;
}

bool Today::draw(Sheet& sheet)
{
    if (!written_.empty())
        return written(sheet);
    look();
    std::vector<std::string> buttons{"Back"};
    if (outside_.print_day)
        buttons.emplace_back("Write it as a page");
    const auto pressed = reading_.draw(sheet, "This site, this day", lines_, buttons);
    if (pressed.button == "Write it as a page")
        written_ = outside_.print_day();
    ui::draw(sheet, title_block(outside_, "READ ONLY", ""));
    return pressed.button != "Back";
}

} // namespace cotter::ui
