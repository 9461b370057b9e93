// The Cab: what clears a finding, a refusal, a touch, a knock or a stop, standing down.

#include "cab.hpp"

#include "finding_words.hpp"

namespace cotter::ui {

using records::Json;

void Cab::explain(Sheet& sheet)
{
    const auto naming = [&](const std::string& id) { return desk::shown_name(outside_.book, id); };
    const words::Sentence sentence = words::says(*explained_, question_, naming);
    const Choice choice{sentence.headline,
                        say("{}. {}. Rule: {}.", sentence.detail,
                            words::in_language(std::string{words::clears(explained_->code)}),
                            words::in_language(std::string{words::source(explained_->code)})),
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
                         {"Another mark", "the machine has moved", std::nullopt},
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
        return go(marks().empty() ? Page::pipe : Page::standing);
    if (*pressed == 5)
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

} // namespace cotter::ui
