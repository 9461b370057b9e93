// The Cab: what clears a finding, a refusal, a touch, a knock or a stop, standing down.

#include "cab.hpp"

#include "briefing_page.hpp"
#include "people.hpp"

#include "calls.hpp"
#include "card_facts.hpp"
#include "finding_words.hpp"
#include "outlook.hpp"

#include <array>

namespace cotter::ui {

using records::Json;

namespace {

const std::vector<const char*> of_a_knock{"struck the ground or the trench", "struck a pipe or the stack",
                                          "struck a strut or the machine", "dropped or fell over", "shock load"};
const std::vector<const char*> of_a_defect{
    "bent, cracked or broken", "worn or loose",         "pin, keeper or lock",   "hydraulics leak or do not move",
    "paper or plate is wrong", "it slipped or dropped", "something is not right"};

} // namespace

const std::vector<const char*>& Cab::what_is_wrong() { return of_a_defect; }

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

void Cab::report(Sheet& sheet)
{
    const Choice choice{"What is there to report?",
                        "Anyone may call a stop.",
                        {{"Touch", "contact, no mark, nothing moved", figures::Sign::warning},
                         {"Knock", "a mark, bend, snag or drop", figures::Sign::warning},
                         {"Defect", "worn or loose; in doubt call a stop", figures::Sign::warning},
                         {"Stop", "something is not right", figures::Sign::stop},
                         {"Call the yard", "swap or breakdown", std::nullopt},
                         {"Stand down", "the shift is over", std::nullopt}},
                        false,
                        "Back"};
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    constexpr std::array<const char*, 4> reports{"touch", "knock", "defect", "stop"};
    if (*pressed < reports.size()) {
        reported_ = reports[*pressed];
        return go(Page::report_unit);
    }
    if (*pressed == 4) {
        call_.emplace(outside_, false, unit_, operator_);
        return go(Page::call);
    }
    if (*pressed == 5)
        return go(Page::stand_down);
    go(Page::sheet);
}

// The shift is the site's, not this machine's.
void Cab::confirm_stand_down(Sheet& sheet)
{
    const Choice choice{"Stand down? The shift ends for everybody on this site.",
                        say("Every check of this shift ends with it.") + " " + shift_summary(),
                        {{"Hold to stand down", "", std::nullopt, false, true}},
                        false,
                        "Back"};
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == 1)
        return go(Page::sheet);
    const Json shift = desk::open_shift(outside_.book, desk::current_site(outside_.book));
    if (!shift.empty())
        write(stand_down(outside_.hand(operator_), shift.value("id", "")));
    receipt_ = outside_.receipt();
    go(Page::receipt);
}

// The asking is on record too.
void Cab::refused(Sheet& sheet)
{
    think();
    if (decision_.may_lift()) // meanwhile
        return go(Page::sheet);
    const CabSheet view = cab_sheet(outside_, asked(), question_, decision_);
    const std::string first = view.rows.empty() ? "" : view.rows.front().headline;
    const Choice choice{first,  "You asked, and the answer is on record. Each reason stands on the sheet.",
                        {},     false,
                        "Back", view.plate};
    if (ask(sheet, choice))
        go(Page::sheet);
}

void Cab::report_unit(Sheet& sheet)
{
    const auto units = desk::load_path(outside_.book, asked());
    Choice choice{"Which one?", "", {}, false, "Back"};
    for (const std::string& each : units)
        choice.options.push_back({desk::label_of(outside_.book, each),
                                  desk::doc(outside_.book, "unit", each).value("role", ""), std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == units.size())
        return go(Page::report);
    reported_unit_ = units[*pressed];
    if (reported_ == "touch") // leaves no mark
        return write_report("contact, no mark, nothing moved", {});
    reported_as_.emplace(outside_, "What is it?", reported_ == "knock" ? of_a_knock : of_a_defect, false);
    go(Page::report_words);
}

// A stop is in force with the phrase; the others may have a photo.
void Cab::report_words(Sheet& sheet)
{
    const auto left = reported_as_->draw(sheet, operator_);
    if (left == Phrases::Left::back)
        go(Page::report_unit);
    if (left != Phrases::Left::said)
        return;
    if (reported_ == "stop")
        return write_report(reported_as_->said(), {});
    photo_.emplace(outside_, "A photo of it, if there is one");
    go(Page::report_photo);
}

// The report is not lost where the photo is.
void Cab::report_photo(Sheet& sheet)
{
    const auto left = photo_->draw(sheet, operator_);
    if (left == PhotoPage::Left::kept)
        write_report(reported_as_->said(), {photo_->name()});
    if (left == PhotoPage::Left::back)
        go(Page::report_words);
    if (left == PhotoPage::Left::without)
        write_report(reported_as_->said(), {});
}

void Cab::write_report(const std::string& what, const std::vector<std::string>& photos)
{
    const desk::Hand hand = outside_.hand(operator_);
    write(reported_ == "stop"     ? call_a_stop(hand, reported_unit_, what)
          : reported_ == "defect" ? find_a_defect(hand, reported_unit_, "report", what, photos)
                                  : something_happened(hand, reported_, reported_unit_, what, photos));
    go(Page::sheet);
}

// What the shift comes to.
std::string Cab::shift_summary() const
{
    const auto counts = desk::lifts_per_day(outside_.book, outside_.hand("").day, 1);
    const auto open = desk::open_defects(outside_.book, outside_.hand("").day);
    return say("Today: {} lifts done, {} stopped; {} pipes laid this shift; {} defects open.", counts.back().lifts,
               counts.back().stops, desk::laid_this_shift(outside_.book), open.size());
}

} // namespace cotter::ui
