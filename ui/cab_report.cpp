// The Cab: what clears a finding, a refusal, a touch, a knock or a stop, standing down.

#include "cab.hpp"

#include "calls.hpp"
#include "card_facts.hpp"
#include "finding_words.hpp"
#include "outlook.hpp"

#include <array>

namespace cotter::ui {

using records::Json;

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
    if (words::button(explained_->code) == "Swap" || words::button(explained_->code) == "Tell")
        choice.options.push_back({"Call the yard", "swap or breakdown", std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == choice.options.size())
        return go(Page::sheet);
    call_.emplace(outside_, false);
    go(Page::call);
}

void Cab::report(Sheet& sheet)
{
    const Choice choice{"What is there to report?",
                        "Anyone may call a stop.",
                        {{"Touch", "contact, no mark, nothing moved", figures::Sign::warning},
                         {"Knock", "a mark, bend, snag or drop", figures::Sign::warning},
                         {"Defect", "worn or loose; in doubt call a stop", figures::Sign::warning},
                         {"Stop", "something is not right", figures::Sign::stop},
                         {"Another mark", "the machine has moved", std::nullopt},
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
    if (reported_ == "stop" || reported_ == "touch") // a stop never waits, a touch leaves no mark
        return write_report({});
    photo_.emplace(outside_, "A photo of it, if there is one");
    go(Page::report_photo);
}

// The report is not lost where the photo is.
void Cab::report_photo(Sheet& sheet)
{
    const auto left = photo_->draw(sheet, operator_);
    if (left == PhotoPage::Left::kept)
        write_report({photo_->name()});
    if (left == PhotoPage::Left::without)
        write_report({});
}

void Cab::write_report(const std::vector<std::string>& photos)
{
    const desk::Hand hand = outside_.hand(operator_);
    const std::string what = "reported from the cab";
    write(reported_ == "stop"     ? call_a_stop(hand, reported_unit_, "called from the cab")
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
