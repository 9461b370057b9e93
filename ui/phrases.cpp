#include "phrases.hpp"

#include "field.hpp"
#include "title_block.hpp"

#include <algorithm>

namespace cotter::ui {

Phrases::Phrases(const Outside& outside, std::string question, std::vector<const char*> phrases, bool may_type)
    : outside_{outside}, question_{std::move(question)}, phrases_{std::move(phrases)}, may_type_{may_type}
{
}

Phrases::Left Phrases::type(Sheet& sheet, const std::string& person)
{
    const auto pressed = ui::draw(sheet, {question_, "", {}, false, "Back"}, turned_);
    const bool enter = field(sheet, "phrase", {6, 34, std::min(sheet.width() - 12, 180.0), 12}, said_);
    const bool taken = sheet.button("Take it", {6, 54, 44, glove.target}) || enter;
    ui::draw(sheet, title_block(outside_, "WRITES", person));
    if (pressed)
        types_ = false;
    return taken && !said_.empty() ? Left::said : Left::nothing;
}

Phrases::Left Phrases::draw(Sheet& sheet, const std::string& person)
{
    if (types_)
        return type(sheet, person);
    Choice choice{question_, "", {}, false, "Back"};
    for (const char* each : phrases_)
        choice.options.push_back({each, "", std::nullopt});
    if (may_type_)
        choice.options.push_back({"Other words", "on the keyboard", std::nullopt});
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "WRITES", person));
    if (!pressed)
        return Left::nothing;
    if (*pressed == choice.options.size())
        return Left::back;
    if (*pressed == phrases_.size()) {
        types_ = true;
        return Left::nothing;
    }
    said_ = phrases_[*pressed];
    return Left::said;
}

} // namespace cotter::ui
