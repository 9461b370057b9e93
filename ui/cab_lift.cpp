// The Cab: the lift asked for, what clears a finding, a touch, a knock or a stop, standing down.

#include "cab.hpp"

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
    if (*pressed == 4) {
        const Json shift = desk::open_shift(outside_.book, desk::current_site(outside_.book));
        if (!shift.empty())
            write(stand_down(outside_.hand(operator_), shift.value("id", "")));
        return go(Page::gone);
    }
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
    records::Entry entry = ask_for_a_lift(outside_.hand(operator_), question_, decision_);
    lift_ = entry.about;
    write(std::move(entry));
    go(decision_.may_lift() ? Page::lift : Page::sheet);
}

void Cab::lift(Sheet& sheet)
{
    think();
    const CabSheet view = cab_sheet(outside_, asked(), question_, decision_);
    std::string hint;
    for (const std::string& line : view.under)
        hint += line + ". ";
    const Choice choice{std::string{words::verdict(decision_.may_lift())},
                        hint,
                        {{"Load is up", "no touch until it is down", figures::Sign::to_do},
                         {"Lift done", "the pipe is laid", figures::Sign::in_order}},
                        true,
                        "Not lifted"};
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == 0) {
        write(lift_step(outside_.hand(operator_), "picked_up", lift_));
        return go(Page::load_up);
    }
    if (*pressed == 1)
        write(lift_step(outside_.hand(operator_), "lift_done", lift_));
    go(Page::sheet);
}

// A finding that arrives now never stops a load in the air.
void Cab::load_up(Sheet& sheet)
{
    think();
    const Choice choice{"LOAD UP",
                        decision_.may_lift() ? "On the signaller's signal, nobody inside the zone."
                                             : "Set down safely, then stop.",
                        {{"Set down, lift done", "the pipe is laid", figures::Sign::in_order}},
                        false,
                        ""};
    if (!ask(sheet, choice))
        return;
    write(lift_step(outside_.hand(operator_), "set_down", lift_));
    write(lift_step(outside_.hand(operator_), "lift_done", lift_));
    go(Page::sheet);
}

} // namespace cotter::ui
