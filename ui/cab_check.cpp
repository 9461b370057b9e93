// The Cab: the check, item by item, and the look at the lock.

#include "cab.hpp"

#include <algorithm>

namespace cotter::ui {

// The unit that was pressed comes first. Where a sheet has no items there is nothing to answer; what clears it is said.
void Cab::begin_check(const std::string& first)
{
    to_check_ = to_check(outside_, asked(), question_);
    std::stable_partition(to_check_.begin(), to_check_.end(),
                          [&](const ToCheck& each) { return desk::tag_of(outside_.book, each.unit) == first; });
    line_ = 0;
    answers_.clear();
    if (!to_check_.empty())
        go(Page::check);
    else
        go(explained_ ? Page::clears : Page::checked);
}

void Cab::nothing_to_check(Sheet& sheet)
{
    if (ask(sheet, {"Every item of this shift is answered",
                    "What was answered with a report or a stop stands until somebody entitled has cleared it.",
                    {{"Understood", "", figures::Sign::in_order}},
                    false,
                    ""}))
        go(Page::sheet);
}

void Cab::check(Sheet& sheet)
{
    const ToCheck& unit = to_check_.front();
    const desk::SheetLine& line = unit.lines[line_];
    Choice choice{line.text,
                  say("{} \u00b7 serial {} \u00b7 {} of {}", desk::label_of(outside_.book, unit.unit),
                      desk::doc(outside_.book, "unit", unit.unit).value("serial", "?"), line_ + 1, unit.lines.size()),
                  {{"Right", "", figures::Sign::in_order}},
                  true,
                  "Leave it"};
    choice.options.push_back({line.stop_only ? "" : "Report", "", figures::Sign::warning}); // each keeps its place
    choice.options.push_back({"Stop", "", figures::Sign::stop});
    if (!answers_.empty()) // right answers that are not signed yet
        choice.beside_back = "The one before";
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed > choice.options.size()) {
        answers_.pop_back();
        --line_;
        return go(Page::check);
    }
    if (*pressed == choice.options.size()) {
        sign_answers();
        return go(Page::sheet);
    }
    answer(*pressed == 0 ? "right" : *pressed + 1 == choice.options.size() ? "stop" : "report");
}

void Cab::answer(const std::string& said)
{
    answered_ = said;
    if (said == "right") {
        answers_.push_back({to_check_.front().lines[line_].id, said, ""});
        return finish_line();
    }
    if (said == "stop")
        return note_answer("");
    reported_as_.emplace(outside_, "What is it?", what_is_wrong(), false);
    go(Page::answer_words);
}

void Cab::answer_words(Sheet& sheet)
{
    const auto left = reported_as_->draw(sheet, operator_);
    if (left == Phrases::Left::back) // nothing is answered yet
        go(Page::check);
    if (left == Phrases::Left::said)
        note_answer(reported_as_->said());
}

void Cab::note_answer(const std::string& note)
{
    answers_.push_back({to_check_.front().lines[line_].id, answered_, note});
    sign_answers(); // at once
    go(Page::failed);
}

void Cab::say_what_now(Sheet& sheet)
{
    const bool stops = answered_ == "stop";
    const Choice choice{stops ? to_check_.front().lines[line_].if_not
                              : "Reported. Tell the supervisor. In doubt, call a stop.",
                        say("Not right: {}", words::in_language(to_check_.front().lines[line_].text)),
                        {{"Understood", "", std::nullopt}},
                        false,
                        ""};
    if (ask(sheet, choice))
        finish_line();
}

void Cab::sign_answers()
{
    if (!answers_.empty())
        write(check_a_unit(outside_.hand(operator_), outside_.book, to_check_.front().unit, machine_, answers_));
    answers_.clear();
}

// A unit's answers are signed together after its last line, or when the check is left; then comes the next unit.
void Cab::finish_line()
{
    go(Page::check);
    if (++line_ < to_check_.front().lines.size())
        return;
    sign_answers();
    line_ = 0;
    to_check_.erase(to_check_.begin());
    if (to_check_.empty())
        go(Page::sheet);
}

void Cab::look_at_lock(Sheet& sheet)
{
    const Choice choice{"Get down and look at the hitch. Is it locked?",
                        "Seen with own eyes, from where the lock can be seen.",
                        {{"Locked", "", figures::Sign::in_order}, {"Not locked", "", figures::Sign::stop}},
                        true,
                        "Back"};
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed < 2)
        write(see_the_lock(outside_.hand(operator_), hitch(), *pressed == 0));
    go(Page::sheet);
}

} // namespace cotter::ui
