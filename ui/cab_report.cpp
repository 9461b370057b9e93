// The Cab: a refusal, a touch, a knock or a stop, what was laid, standing down.

#include "cab.hpp"

#include "looks.hpp"

#include "calls.hpp"
#include "card_facts.hpp"
#include "outlook.hpp"

#include <algorithm>
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

void Cab::report(Sheet& sheet)
{
    const Choice choice{"What is there to report?",
                        "Anyone may call a stop.",
                        {{"Touch", "contact, no mark, nothing moved", figures::Sign::warning},
                         {"Knock", "a mark, bend, snag or drop", figures::Sign::warning},
                         {"Defect", "worn or loose; in doubt call a stop", figures::Sign::warning},
                         {"Stop", "something is not right", figures::Sign::stop},
                         {"Call the yard", "swap or breakdown", std::nullopt},
                         {"Stand down", "the shift is over", std::nullopt},
                         {"Laid pipes", "the log, and what lies in it", std::nullopt}},
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
    if (*pressed == 6) {
        laid_log_.emplace(outside_);
        return go(Page::laid);
    }
    go(*pressed == 5 ? Page::stand_down : Page::sheet);
}

// The shift is the site's, not this machine's.
void Cab::confirm_stand_down(Sheet& sheet)
{
    const Choice choice{"Stand down? The shift ends for everybody on this site.",
                        say("The next shift asks for the checks again, but for those of the hour before it begins.") +
                            " " + shift_summary(),
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
    auto units = desk::load_path(outside_.book, asked());
    std::stable_partition(units.begin(), units.end(), [&](const std::string& each) { return each == unit_; });
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

void Cab::laid(Sheet& sheet)
{
    const InGloves in_the_cab{true};
    if (!laid_log_->draw(sheet))
        go(Page::report);
}

// What the shift comes to.
std::string Cab::shift_summary() const
{
    const auto count = desk::lifts_this_shift(outside_.book);
    const auto open = desk::open_defects(outside_.book, outside_.hand("").day);
    return say("Lifts done this shift: {}. Stopped: {}. Defects open: {}.", count.lifts, count.stops, open.size());
}

} // namespace cotter::ui
