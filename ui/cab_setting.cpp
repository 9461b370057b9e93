// The Cab: how the setting stands, changed by two people with the model's steps.

#include "cab.hpp"

#include "attachment_picture.hpp"
#include "people.hpp"

#include <algorithm>

namespace cotter::ui {

using records::Json;

const char* const being_changed = "being changed";

namespace {

constexpr std::size_t before_the_models_steps = 3; // parked, isolated, nobody beneath

// The setting that this pipe wants, ringed in the picture.
std::string wanted_in(const figures::AttachmentPicture& picture)
{
    std::string names;
    for (const figures::StatePlace& each : picture.states)
        if (each.wanted)
            names += (names.empty() ? "" : " / ") + each.name;
    return names.empty() ? "" : ". " + say("This pipe wants {}", names);
}

// At the right of what is asked; on narrow glass under it.
void draw_beside(Sheet& sheet, const figures::AttachmentPicture& picture)
{
    const double foot = title_height(sheet) + glove.target + 2 * glove.gap;
    const Box box = sheet.is_narrow() ? Box{6, 102, sheet.width() - 12, sheet.height() - foot - 104}
                                      : Box{sheet.width() - 90, 6, 84, sheet.height() - title_height(sheet) - 12};
    constexpr double labels = 9;
    sheet.fill(box, colours().sheet);
    sheet.frame(box, thin_mm);
    sheet.figure(figures::attachment(picture, box.w - 4 - labels, box.h - 8), box.x + 2, box.y + 4);
}

} // namespace

Choice Cab::states_choice(const std::string& question) const
{
    const Json it = model();
    Choice choice{question,
                  say("Look at it itself, not at the screen: {}",
                      words::in_language(it.value("adjustment", std::string{"setting"}))),
                  {},
                  false,
                  "Back"};
    for (const Json& state : it.value("states", Json::array()))
        choice.options.push_back({state.value("name", ""), "", std::nullopt});
    return choice;
}

void Cab::look(Sheet& sheet)
{
    const Choice choice = states_choice("How does it stand? Say what you see.");
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == choice.options.size())
        return go(Page::sheet);
    write(see_the_setting(outside_.hand(operator_), unit_, choice.options[*pressed].words));
    go(Page::sheet);
}

// The model's steps one by one, with what must hold before the first.
void Cab::step_of_move(Sheet& sheet)
{
    const Json it = model();
    std::vector<std::string> steps{
        say("Park and support it: {}", words::in_language(it.value("parked_as", std::string{"as the maker says"}))),
        "Isolate the machine: engine off, key out, safety lever up", "Nobody beneath, nobody at the controls"};
    for (const Json& each : it.value("setting_steps", Json::array()))
        steps.push_back(each.get<std::string>());
    think();
    const auto picture = picture_of(it, *find_item(question_, rules::Role::attachment)->model, question_);
    Choice choice{steps[std::min(step_, steps.size() - 1)],
                  say("Step {} of {}", step_ + 1, steps.size()) + wanted_in(picture),
                  {{"Done", "", figures::Sign::to_do}},
                  false,
                  "Leave it"};
    choice.kept_right = sheet.is_narrow() ? 0 : 92;
    const auto pressed = ask(sheet, choice);
    draw_beside(sheet, picture);
    if (!pressed)
        return;
    if (*pressed == 1)
        return go(Page::sheet);
    if (++step_ == before_the_models_steps) // from now on it stands nowhere, until somebody says how
        write(see_the_setting(outside_.hand(operator_), unit_, being_changed));
    opened_ = outside_.ticks();
    if (step_ >= steps.size())
        go(Page::set_to);
}

void Cab::choose_state(Sheet& sheet)
{
    const Choice choice = states_choice("How is it set now? Keeper in, seen by eye.");
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == choice.options.size())
        return go(Page::sheet);
    write(change_the_setting(outside_.hand(operator_), unit_, choice.options[*pressed].words));
    go(Page::second);
}

void Cab::choose_second(Sheet& sheet)
{
    auto people =
        people_with(outside_.book, "setting_models", desk::doc(outside_.book, "unit", unit_).value("model", ""));
    std::erase(people, operator_);
    Choice choice{"A second trained person looks at it, at the unit. Who is it?", "", {}, false, "Later"};
    for (const std::string& each : people)
        choice.options.push_back({desk::shown_name(outside_.book, each), "", std::nullopt});
    if (people.empty())
        choice.hint = "Nobody else is admitted for this model. The supervisor admits somebody in Site.";
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == people.size())
        return go(Page::sheet);
    outside_.signing.once(people[*pressed], [this, person = people[*pressed]] {
        second_ = person;
        go(Page::second_look);
    });
}

void Cab::second_look(Sheet& sheet)
{
    const Choice choice = states_choice(say("{}: how does it stand?", desk::shown_name(outside_.book, second_)));
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed != choice.options.size())
        write(see_the_setting(outside_.hand(second_), unit_, choice.options[*pressed].words));
    go(Page::sheet);
}

} // namespace cotter::ui
