// The Cab: the lift asked for, its card, the load up and down.

#include "cab.hpp"

#include "card_facts.hpp"
#include "decision_form.hpp"
#include "finding_words.hpp"

namespace cotter::ui {

void Cab::ask_for_lift()
{
    thought_of_.clear();
    think();
    records::Entry entry = ask_for_a_lift( // by ids: a name in a record could never be taken out again
        outside_.hand(operator_), question_,
        records::write_decision(decision_, {[&](const rules::Finding& each) {
                                                const words::InEnglish on_record;
                                                return words::says(each, question_).joined();
                                            },
                                            [](rules::Code code) { return std::string{words::source(code)}; },
                                            [](rules::Code code) { return std::string{words::clears(code)}; }}));
    lift_ = entry.about;
    write(std::move(entry));
    begin_card();
    go(decision_.may_lift() ? Page::card : Page::refused);
}

void Cab::begin_card()
{
    facts_ = desk::card_facts(outside_.book, asked(), question_);
    laid_ = {desk::laid_this_shift(outside_.book), desk::laid_this_shift(outside_.book, pipe_)};
    point_ = 0;
}

std::string Cab::count_in_words() const { return say("Laid this shift: {}, of this pipe {}", laid_.all, laid_.of_it); }

// Before the load is up, point by point; the whole card for the first lift of a type.
void Cab::card(Sheet& sheet)
{
    think();
    if (!decision_.may_lift())
        return go(Page::lift); // which says what to do if a load hangs
    const auto points = words::lift_card(facts_);
    const bool asks = points[point_].by_touch;
    CardView view;
    view.plate = {true, false, say("Hold point {} of {}", point_ + 1, points.size())};
    view.note = asks ? "Before you pick up" : "Spoken with the signaller when the load is up: read it now";
    view.points = {points[point_]};
    view.options.push_back(
        {asks ? "All so" : "Read", "", asks ? std::optional{figures::Sign::in_order} : std::nullopt});
    if (asks)
        view.options.push_back({"Not so", "", figures::Sign::stop});
    else
        view.back = "Leave";
    const auto pressed = ui::draw(sheet, view);
    ui::draw(sheet, title_block(outside_, "OPERATOR", operator_));
    if (!pressed || !is_settled())
        return;
    if (*pressed == 1)
        return go(asks ? Page::card_no : Page::sheet);
    ++point_;
    go(facts_.first_of_type && point_ < points.size() ? Page::card : Page::lift);
}

void Cab::card_no(Sheet& sheet)
{
    Choice choice{"What is not so?", "", {}, false, "Back"};
    const auto lines = words::lift_card(facts_)[point_].lines;
    for (const auto& line : lines)
        choice.options.push_back({line.ask, "", std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == choice.options.size())
        return go(Page::card);
    not_so_ = *pressed;
    go(Page::card_ends);
}

void Cab::card_ends(Sheet& sheet)
{
    if (ask(sheet, {words::lift_card(facts_)[point_].lines[not_so_].if_not,
                    "This answer has ended. Ask again when it is so.",
                    {{"Understood", "", std::nullopt}},
                    false,
                    ""}))
        go(Page::sheet);
}

// Between the answer and the load's being up a finding may arrive.
void Cab::lift(Sheet& sheet)
{
    think();
    const CabSheet sheet_view = cab_sheet(outside_, asked(), question_, decision_);
    Choice choice{"", "", {}, true, "Not lifted", sheet_view.plate};
    for (const std::string& line : sheet_view.under)
        choice.hint += words::in_language(line) + ". ";
    choice.hint += count_in_words() + ".";
    if (decision_.may_lift()) {
        choice.options.push_back({"Load is up", "no touch until it is down", figures::Sign::to_do});
        choice.options.push_back({"Lift done", "the pipe is laid", figures::Sign::in_order});
    } else {
        choice.question = "If a load hangs, set it down safely, then stop.";
        choice.options.push_back({"It was up, it is down", "", figures::Sign::stop});
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

std::string Cab::first_finding() const
{
    const auto naming = [&](const std::string& id) { return desk::shown_name(outside_.book, id); };
    return decision_.findings.empty() ? "" : words::says(decision_.findings.front(), question_, naming).headline + ".";
}

// A finding that arrives now never stops a load in the air. After a restart it is not known whether one hangs, nor
// which card it was.
void Cab::load_up(Sheet& sheet)
{
    if (!machine_.empty())
        think();
    const bool known = !machine_.empty(), may_lift = known && decision_.may_lift();
    CardView view{{may_lift, true, may_lift ? "Do not touch the glass until it is down" : "By the record a load hangs"},
                  may_lift ? say("On the signaller's signal, nobody inside the zone. {}", count_in_words())
                  : known  ? say("Set down safely, then stop. {}", first_finding())
                           : "If a load hangs, set it down safely, then stop.",
                  {},
                  {{"Set down, laid", "", figures::Sign::in_order}, {"Set down, not laid", "", std::nullopt}},
                  ""};
    for (const words::CardPoint& point : known ? words::lift_card(facts_) : std::vector<words::CardPoint>{})
        if (!point.by_touch)
            view.points.push_back(point);
    const auto pressed = ui::draw(sheet, view);
    ui::draw(sheet, title_block(outside_, "OPERATOR", operator_));
    if (!pressed || !is_settled())
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
