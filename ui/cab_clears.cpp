// The Cab: each finding's button leads to where it is cleared; what others clear elsewhere is explained.

#include "cab.hpp"

#include "briefing_page.hpp"
#include "looks.hpp"
#include "people.hpp"

#include "calls.hpp"
#include "finding_words.hpp"
#include "outlook.hpp"
#include "setting.hpp"

#include <set>

namespace cotter::ui {

using records::Json;
using rules::Code;

bool Cab::is_at_a_mark() const { return !standing_.empty() && standing_ != "no mark"; }

// The newest touch of a unit at which fewer than two have looked.
std::string Cab::touch_of(const std::string& unit) const
{
    const auto events = outside_.book.facts_about("event", unit);
    const records::Fact* newest = nullptr;
    for (const auto& each : events) {
        const auto looked = each.doc.value("looked_by", std::set<std::string>{});
        if (each.doc.value("kind", "") == "touch" && looked.size() < 2 && (!newest || newest->at < each.at))
            newest = &each;
    }
    return newest ? newest->key.key : "";
}

// Whoever may looks, and signs here: the trench, valves and warning, a touch, the standing place.
bool Cab::open_form_that_clears(const rules::Finding& finding)
{
    if (finding.code == Code::place_unconfirmed && is_at_a_mark() && !supervisor().empty()) {
        outside_.signing.once(supervisor(), [this] {
            confirms_.emplace(outside_, standing_, supervisor());
            go(Page::confirm_place);
        });
        return true;
    }
    const auto open = [&](const char* kind, const std::string& about) {
        if (about.empty())
            return false;
        record_.emplace(outside_, kind, Json::object(), about);
        go(Page::record);
        return true;
    };
    switch (finding.code) {
    case Code::trench_unchecked: return open("trench_inspection", is_at_a_mark() ? standing_ : "");
    case Code::machine_device: return open("devices_proved", machine_);
    case Code::event_touch: return open("event_looked", touch_of(unit_of(finding.about)));
    default: return false;
    }
}

std::string Cab::supervisor() const
{
    const std::string site = desk::current_site(outside_.book);
    const rules::Day day = desk::working_day(outside_.book, site, outside_.now());
    return desk::doc(outside_.book, "people_today", site + " " + rules::to_string(day))
        .value("roles", Json::object())
        .value("supervisor", "");
}

void Cab::record(Sheet& sheet)
{
    const InGloves in_the_cab{true};
    if (!record_->draw(sheet))
        go(Page::sheet);
}

// A defect is cleared, a stop lifted, a report photographed by whom it concerns, on this screen.
bool Cab::open_what_clears(const rules::Finding& finding)
{
    if (open_form_that_clears(finding))
        return true;
    const std::string unit = unit_of(finding.about);
    if (unit.empty())
        return false;
    if (finding.code == Code::check_stopped || finding.code == Code::check_report)
        for (const desk::OpenDefect& each : desk::open_defects(outside_.book, outside_.hand("").day))
            if (each.unit == unit) {
                clears_.emplace(outside_, each, false);
                go(Page::clear_defect);
                return true;
            }
    if (finding.code == Code::unit_quarantined && !open_stops(outside_.book, unit).empty()) {
        lifts_stop_.emplace(outside_, unit, false);
        go(Page::lift_stop);
        return true;
    }
    if (finding.code == Code::unit_elsewhere) {
        receive_.emplace(outside_, false, unit);
        go(Page::receive);
        return true;
    }
    if (finding.code == Code::evidence_missing || finding.code == Code::evidence_own_sites) {
        copy_.emplace(outside_, unit);
        go(Page::copy);
        return true;
    }
    return false;
}

// Each finding's button leads to where it is cleared; what others clear is explained.
void Cab::act_on(const rules::Finding& finding)
{
    explained_ = finding;
    if (open_what_clears(finding))
        return;
    switch (row(finding.code)) {
    case rules::Row::check:
        return finding.code == Code::check_none || finding.code == Code::check_stale ? begin_check(finding.about)
                                                                                     : go(Page::clears);
    case rules::Row::setting:
        return go(finding.code == Code::setting_wrong || !was_ever_set(question_) ? Page::move
                  : finding.code == Code::setting_unseen                          ? Page::second
                  : finding.code == Code::setting_none                            ? Page::clears
                                                                                  : Page::look);
    case rules::Row::hitch:
        return go(finding.code == Code::hitch_unseen && !hitch().empty() ? Page::lock : Page::clears);
    default: return go(finding.code == Code::briefing_none ? Page::briefing : Page::clears);
    }
}

// By name who may write what clears it.
std::string Cab::who_may(rules::Code code) const
{
    using rules::Code;
    const char* kind = code == Code::place_unconfirmed                             ? "place_confirmed"
                       : code == Code::trench_unchecked                            ? "trench_inspection"
                       : code == Code::check_stopped || code == Code::check_report ? "defect_cleared"
                       : code == Code::unit_quarantined                            ? "stop_lifted"
                       : code == Code::person_not_authorised                       ? "admission"
                       : code == Code::plan_none || code == Code::plan_out_of_date || code == Code::plan_outside
                           ? "lift_plan"
                       : code == Code::machine_device ? "devices_proved"
                                                      : nullptr;
    std::string names;
    for (const std::string& each : kind ? who_may_write(outside_.book, kind) : std::vector<std::string>{})
        names += (names.empty() ? "" : ", ") + desk::shown_name(outside_.book, each);
    return names;
}

void Cab::explain(Sheet& sheet)
{
    const auto naming = [&](const std::string& id) { return desk::shown_name(outside_.book, id); };
    const words::Sentence sentence = words::says(*explained_, question_, naming);
    Choice choice{sentence.headline,
                  say("{}. {}. Rule: {}.", sentence.detail,
                      words::in_language(std::string{words::clears(explained_->code)}),
                      words::in_language(std::string{words::source(explained_->code)})),
                  {},
                  false,
                  "Back"};
    if (const std::string able = who_may(explained_->code); !able.empty())
        choice.hint += " " + say("Who may: {}.", able);
    if (words::button(explained_->code) == "Swap" || words::button(explained_->code) == "Tell")
        choice.options.push_back({"Call the yard", "swap or breakdown", std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == choice.options.size())
        return go(Page::sheet);
    call_.emplace(outside_, false, unit_of(explained_->about), operator_);
    go(Page::call);
}

// Whoever the finding names signs himself; what is read out stands in the plan.
void Cab::briefing(Sheet& sheet)
{
    const std::string person = explained_->about;
    const auto plan = plan_to_sign(outside_, person);
    if (!plan)
        return go(Page::clears);
    const auto pressed =
        ask(sheet, {say("{}: were you briefed on {}, issue {}?", desk::shown_name(outside_.book, person),
                        plan->value("id", ""), plan->value("issue", 0)),
                    "Read out by the supervisor, and understood. Each signs for himself.",
                    {{"I was briefed", "signed by this person alone", figures::Sign::to_do}},
                    false,
                    "Back"});
    if (!pressed)
        return;
    go(Page::sheet);
    if (*pressed == 0)
        sign_briefing(outside_, *plan, person);
}

} // namespace cotter::ui
