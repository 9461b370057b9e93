#include "order_unit_page.hpp"

#include "attachment_picture.hpp"
#include "finding_words.hpp"
#include "foot.hpp"
#include "title_block.hpp"

#include <algorithm>

namespace cotter::ui {

using figures::Note;
using figures::Sign;

namespace {

// The part of the unit that it is about.
Note::To part_of(rules::Code code)
{
    switch (row(code)) {
    case rules::Row::setting: return Note::To::hole;
    case rules::Row::pipe:
    case rules::Row::load: return Note::To::pipe;
    default: return Note::To::head;
    }
}

} // namespace

void OrderUnitPage::add(Note::To to, const std::string& words, const std::string& more, Sign sign)
{
    constexpr std::size_t drawn = 6; // numbers that stand beside it
    const std::string number = std::to_string(lines_.size() + 1);
    if (picture_ && picture_->notes.size() < drawn)
        picture_->notes.push_back({to, number});
    lines_.push_back({false, sign, number + ". " + words, more});
}

void OrderUnitPage::add_findings(const desk::OrderUnit& unit, const std::vector<rules::Finding>& findings, Sign sign)
{
    const auto naming = [&](const std::string& id) { return desk::shown_name(outside_.book, id); };
    for (const rules::Finding& each : findings) {
        const words::Sentence sentence = words::says(each, unit.question, naming);
        add(part_of(each.code), sentence.headline,
            sentence.detail + ". " + words::in_language(std::string{words::clears(each.code)}) + ".", sign);
    }
}

// With the states that its order's sizes want.
void OrderUnitPage::look_at_picture(const desk::OrderUnit& unit)
{
    picture_.reset();
    const rules::Item* item = rules::find_item(unit.question, rules::Role::attachment);
    if (!item || !item->model)
        return;
    const std::string model = desk::doc(outside_.book, "unit", unit.unit).value("model", "");
    picture_ = picture_of(desk::doc(outside_.book, "model", model), *item->model, unit.question);
    for (const desk::PipeNeeds& need : desk::needs_of(outside_.book, order_, model))
        for (figures::StatePlace& each : picture_->states)
            each.wanted =
                each.wanted || std::find(need.states.begin(), need.states.end(), each.name) != need.states.end();
}

void OrderUnitPage::look()
{
    const std::string of = looked_at(outside_);
    if (of == looked_of_)
        return;
    looked_of_ = of;
    const desk::OrderUnit unit = desk::unit_for(outside_.book, order_, unit_, outside_.now(), outside_.hand("").day);
    title_ = unit.label + " \u00b7 " + unit.model;
    lines_.clear();
    look_at_picture(unit);
    if (unit.headplate)
        add(Note::To::head, words::said(*unit.headplate), say("Change it before the wagon leaves."), Sign::to_do);
    add_findings(unit, unit.stops, Sign::to_do);
    add_findings(unit, unit.cautions, Sign::warning);
    if (lines_.empty())
        lines_.push_back({false, Sign::in_order, "Would do as it stands", ""});
}

void OrderUnitPage::draw_picture(Sheet& sheet, const Box& box) const
{
    if (picture_)
        sheet.figure(figures::attachment(*picture_, box.w - 8, box.h - 10), box.x + 4, box.y + 4);
    else
        sheet.wrapped({box.x + 6, box.y + 10, box.w - 12, 0}, Letter::text,
                      "Its model is not in this book, so it is not drawn.", 3);
}

bool OrderUnitPage::draw(Sheet& sheet)
{
    look();
    const std::vector<std::string> buttons = with_button({"Back"}, reading_.scroll().button());
    const Box area = begin_page(sheet, title_, buttons);
    const bool narrow = sheet.is_narrow();
    const Box left{area.x, area.y, narrow ? area.w : area.w * 0.45, narrow ? area.h * 0.45 : area.h};
    const Box right{narrow ? area.x : left.w, narrow ? area.y + left.h : area.y, narrow ? area.w : area.w - left.w,
                    narrow ? area.h - left.h : area.h};
    draw_picture(sheet, left);
    reading_.list(sheet, lines_, right);
    ui::draw(sheet, title_block(outside_, "DESK", ""));
    const std::string pressed = draw_foot(sheet, buttons);
    reading_.scroll().press(pressed);
    return pressed != "Back";
}

} // namespace cotter::ui
