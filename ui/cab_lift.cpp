// The Cab: the lift asked for, what clears a finding, a touch, a knock or a stop, standing down.

#include "cab.hpp"

#include "decision_form.hpp"
#include "finding_words.hpp"

namespace cotter::ui {

using records::Json;

void Cab::explain(Sheet& sheet)
{
    const auto naming = [&](const std::string& id) { return desk::shown_name(outside_.book, id); };
    const words::Sentence sentence = words::says(*explained_, question_, naming);
    const Choice choice{sentence.headline,
                        sentence.detail + ". " + std::string{words::clears(explained_->code)} +
                            ". Rule: " + std::string{words::source(explained_->code)} + ".",
                        {},
                        false,
                        "Back"};
    if (ask(sheet, choice))
        go(Page::sheet);
}

void Cab::report(Sheet& sheet)
{
    const Choice choice{"What is there to report?",
                        "Anyone may call a stop.",
                        {{"Touch", "contact, no mark, nothing moved", figures::Sign::warning},
                         {"Knock", "a mark, bend, snag or drop", figures::Sign::warning},
                         {"Stop", "something is not right", figures::Sign::stop},
                         {"Different pipe", "another maker or size", std::nullopt},
                         {"Stand down", "the shift is over", std::nullopt}},
                        false,
                        "Back"};
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed < 3) {
        reported_ = *pressed == 0 ? "touch" : *pressed == 1 ? "knock" : "stop";
        return go(Page::report_unit);
    }
    if (*pressed == 3)
        return go(Page::pipe);
    if (*pressed == 4)
        return go(Page::stand_down);
    go(Page::sheet);
}

// The shift is the site's, not this machine's.
void Cab::confirm_stand_down(Sheet& sheet)
{
    const Choice choice{"Stand down? The shift ends for everybody on this site.",
                        "Every check of this shift ends with it.",
                        {{"Stand down", "the shift is over for all", std::nullopt}},
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
    const desk::Hand hand = outside_.hand(operator_);
    write(reported_ == "stop" ? call_a_stop(hand, units[*pressed], "called from the cab")
                              : something_happened(hand, reported_, units[*pressed], "reported from the cab"));
    go(Page::sheet);
}

void Cab::ask_for_lift()
{
    thought_of_.clear();
    think();
    records::Entry entry = ask_for_a_lift( // by ids: a name in a record could never be taken out again
        outside_.hand(operator_), question_,
        records::write_decision(decision_,
                                {[&](const rules::Finding& each) { return words::says(each, question_).joined(); },
                                 [](rules::Code code) { return std::string{words::source(code)}; },
                                 [](rules::Code code) { return std::string{words::clears(code)}; }}));
    lift_ = entry.about;
    write(std::move(entry));
    go(decision_.may_lift() ? Page::lift : Page::refused);
}

// Between the answer and the load's being up a finding may arrive.
void Cab::lift(Sheet& sheet)
{
    think();
    const CabSheet view = cab_sheet(outside_, asked(), question_, decision_);
    Choice choice{"", "", {}, true, "Not lifted", view.plate};
    for (const std::string& line : view.under)
        choice.hint += line + ". ";
    if (decision_.may_lift())
        choice.options = {{"Load is up", "no touch until it is down", figures::Sign::to_do},
                          {"Lift done", "the pipe is laid", figures::Sign::in_order}};
    else {
        choice.question = "If a load hangs, set it down safely, then stop.";
        choice.options = {{"It was up, it is down", "", figures::Sign::stop}};
    }
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == choice.options.size())
        return go(Page::sheet);
    const bool goes_up = decision_.may_lift() && *pressed == 0;
    const std::string done = decision_.may_lift() ? "lift_done" : "set_down";
    write(lift_step(outside_.hand(operator_), goes_up ? "picked_up" : done, lift_));
    go(goes_up ? Page::load_up : Page::sheet);
}

// A finding that arrives now never stops a load in the air. After a restart it is not known whether one hangs.
void Cab::load_up(Sheet& sheet)
{
    if (!machine_.empty())
        think();
    const bool known = !machine_.empty(), may_lift = known && decision_.may_lift();
    const std::string says = may_lift ? "On the signaller's signal, nobody inside the zone."
                             : known  ? "Set down safely, then stop."
                                      : "If a load hangs, set it down safely, then stop.";
    const Choice choice{says,
                        "",
                        {{"Set down, lift done", "the pipe is laid", figures::Sign::in_order},
                         {"Set down, not laid", "it goes on later", std::nullopt}},
                        true,
                        "",
                        Plate{may_lift, true, may_lift ? "No touch until it is down" : "By the record a load hangs"}};
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    write(lift_step(outside_.hand(operator_), "set_down", lift_));
    if (*pressed == 0)
        write(lift_step(outside_.hand(operator_), "lift_done", lift_));
    if (known)
        return go(Page::sheet);
    go(Page::who); // where somebody else's work goes on without a PIN given
    outside_.signing.in(operator_, [this, person = operator_] { take_the_levers(person); });
}

} // namespace cotter::ui
