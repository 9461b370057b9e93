#include "yard_calls.hpp"

#include "choice.hpp"
#include "people.hpp"
#include "title_block.hpp"

#include "amounts.hpp"
#include "local_time.hpp"
#include "written.hpp"

namespace cotter::ui {

namespace {

const std::vector<const char*> answers{"another leaves the yard today", "another leaves the yard tomorrow",
                                       "a fitter comes today",          "a fitter comes tomorrow",
                                       "a wagon collects it",           "none is free; hire one in"};

std::string what_it_wants(const std::string& kind)
{
    return kind == "swap"        ? say("wants a swap")
           : kind == "breakdown" ? say("has broken down")
                                 : say("is to be collected");
}

} // namespace

void YardCalls::look()
{
    const std::string of = looked_at(outside_);
    if (of == looked_of_)
        return;
    looked_of_ = of;
    const auto& book = outside_.book;
    calls_ = desk::calls(book);
    lines_.clear();
    for (const desk::Call& each : calls_) {
        const std::string zone = desk::zone_of(book, each.site);
        const std::string when = words::short_day(desk::local_day(each.at, zone)) + " " +
                                 words::clock_time(desk::local_minutes(each.at, zone));
        std::string more = say("{}, {}, {}", desk::shown_name(book, each.site), desk::shown_name(book, each.by), when);
        if (!each.why.empty())
            more = words::in_language(each.why) + ". " + more;
        if (each.answer)
            more += ". " + say("Answer: {}", words::in_language(*each.answer)) +
                    (each.answered_by.empty() ? "" : ", " + desk::shown_name(book, each.answered_by));
        lines_.push_back({false, each.answer ? std::nullopt : std::optional{figures::Sign::to_do},
                          desk::label_of(book, each.unit) + " " + what_it_wants(each.kind), more,
                          each.answer ? "" : "Answer"});
    }
    if (lines_.empty())
        lines_.push_back({false, std::nullopt, "No site has called", "A call made in Site or in the Cab stands here."});
}

void YardCalls::who(Sheet& sheet)
{
    const auto people = who_may_write(outside_.book, "call_answered");
    const Choice choice =
        choice_of_people(outside_.book, "Who answers?", people, "Nobody is admitted who may. People admits them.");
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "DESK", ""));
    if (!pressed)
        return;
    if (*pressed == people.size())
        return answered_.reset();
    outside_.signing.once(people[*pressed], [this, person = people[*pressed]] {
        person_ = person;
        what_.emplace(outside_, "What is done about it?", answers, true);
    });
}

void YardCalls::answer(Sheet& sheet)
{
    const auto left = what_->draw(sheet, person_);
    if (left == Phrases::Left::nothing)
        return;
    const auto call = std::exchange(answered_, std::nullopt);
    const std::string said = what_->said();
    what_.reset();
    if (left == Phrases::Left::said)
        desk::write(outside_.book, {answer_a_call(outside_.hand(person_), *call, said)});
}

bool YardCalls::draw(Sheet& sheet)
{
    if (what_) {
        answer(sheet);
        return true;
    }
    if (answered_) {
        who(sheet);
        return true;
    }
    look();
    const auto pressed = reading_.draw(sheet, "Calls from sites", lines_, {"Back"});
    ui::draw(sheet, title_block(outside_, "DESK", ""));
    if (pressed.line && *pressed.line < calls_.size())
        answered_ = calls_[*pressed.line];
    return pressed.button != "Back";
}

} // namespace cotter::ui
