#include "form_page.hpp"

#include "foot.hpp"
#include "title_block.hpp"

#include "reason.hpp"

#include <algorithm>

namespace cotter::ui {

using records::Json;

namespace {

constexpr double inset = 4;

// Left the field's name, right what stands in it.
struct Halves {
    double name, value, value_at;
};

Halves halves_of(const Sheet& sheet, double width)
{
    const double at = width * (sheet.is_narrow() ? 0.5 : 0.55);
    return {at - 15, width - at - 3, at};
}

double line_mm(const Sheet& sheet, const std::string& name, double width)
{
    const Halves halves = halves_of(sheet, width);
    return std::max({at_desk().target + 6, 3 + at_desk().gap + sheet.height_of(Letter::second, name, halves.name),
                     3 + at_desk().gap + 2 * sheet.height_of(Letter::text, "H", halves.value)});
}

struct Parted {
    Box paper, lines;
};

Parted part(const Box& area, bool narrow)
{
    const double share = 0.45;
    if (narrow)
        return {{area.x, area.y, area.w, area.h * share},
                {area.x, area.y + area.h * share, area.w, area.h * (1 - share)}};
    return {{area.x, area.y, area.w * share, area.h}, {area.x + area.w * share, area.y, area.w * (1 - share), area.h}};
}

} // namespace

FormPage::FormPage(const Outside& outside, std::string title, Json schema, Json body, std::string done)
    : outside_{outside}, title_{std::move(title)}, done_{std::move(done)},
      begun_(body), form_{std::move(schema), std::move(body)}
{
}

void FormPage::open(const Line& line)
{
    said_.clear();
    if (is_part(*line.schema) || is_list(*line.schema)) {
        form_.open(line.key);
        scrolls_.emplace_back();
        return;
    }
    field_key_ = line.key;
    field_.emplace(outside_, *line.schema, line.key, form_.value(line.key));
}

void FormPage::add()
{
    const Json& item = form_.schema_here().at("items");
    const std::string key = std::to_string(form_.here().size());
    if (is_part(item))
        form_.put(key, Json::object());
    open({key, "", "", &item, false});
}

void FormPage::go_up()
{
    form_.go_up();
    scrolls_.pop_back();
}

void FormPage::take_out()
{
    form_.take_out();
    scrolls_.pop_back();
}

// What of it is inside the area can be pressed, where that is enough for a finger.
void FormPage::draw_line(Sheet& sheet, const Line& line, const Box& box, const Box& area)
{
    const double top = std::max(box.y, area.y), bottom = std::min(box.y + box.h, area.y + area.h) - at_desk().gap;
    const Halves halves = halves_of(sheet, box.w);
    ImGui::PushID(line.key.c_str());
    if (bottom - top >= at_desk().target && sheet.target(line.name, {box.x, top, box.w, bottom - top}))
        open(line);
    ImGui::PopID();
    sheet.clip({box.x, top, box.w, std::max(0.0, bottom - top)});
    if (line.needed)
        sheet.sign(figures::Sign::to_do, box.x + halves.value_at - 6, box.y + box.h / 2 - 1, 6);
    sheet.wrapped({box.x + 3, box.y + 1.6, halves.name, 0}, Letter::second, line.name, 6, colours().second);
    sheet.wrapped({box.x + halves.value_at, box.y + 1.4, halves.value, 0}, Letter::text,
                  sheet.cut(Letter::text, line.value, halves.value, 2), 2);
    sheet.clip_no_more();
}

void FormPage::list(Sheet& sheet, const Box& area)
{
    const std::vector<Line> all = form_.lines(outside_.book);
    const std::string needed = asks_for_needed_ ? still_needed() : "",
                      why = needed.empty() ? said_ : words::say("Still needed: {}", needed);
    const double said = why.empty() ? 0 : 4 + sheet.height_of(Letter::bold, why, area.w - 16), w = area.w - 2 * inset;
    double whole = said + at_desk().gap;
    for (const Line& each : all)
        whole += line_mm(sheet, each.name, w);
    TouchScroll& scroll = scrolls_.back();
    touch_scroll(scroll, sheet, area, sheet.theme().px(whole - area.h));
    double y = area.y + at_desk().gap - static_cast<double>(scroll.at) / sheet.theme().px_per_mm();
    sheet.clip(area);
    if (!why.empty()) {
        sheet.sign(figures::Sign::stop, area.x + 8, y + 5, 7);
        sheet.wrapped({area.x + 14, y + 2, area.w - 16, 0}, Letter::bold, why, 12);
    }
    y += said;
    for (const Line& each : all) {
        const Box box{area.x + inset, y, w, line_mm(sheet, each.name, w)};
        y += box.h;
        if (box.y < area.y + area.h && y > area.y)
            draw_line(sheet, each, box, area);
    }
    sheet.clip_no_more();
}

std::vector<std::string> FormPage::buttons() const
{
    std::vector<std::string> all{form_.is_whole() ? "Leave it" : "Back"};
    if (is_list(form_.schema_here()))
        all.emplace_back("Add");
    if (form_.is_of_a_list())
        all.emplace_back("Take it out");
    if (form_.is_whole())
        all.push_back(done_);
    return with_button(all, scrolls_.back().button());
}

FormPage::Left FormPage::press(const std::string& word)
{
    if (word == "Add")
        add();
    else if (word == "Take it out")
        take_out();
    else if (word == "Back")
        go_up();
    if (word == "Leave it" && body() == begun_)
        return Left::back;
    scrolls_.back().press(word);
    leaves_ = word == "Leave it";
    if (word.empty() || word != done_)
        return Left::nothing;
    if (const std::string needed = still_needed(); !needed.empty()) {
        say("");
        asks_for_needed_ = true;
        return Left::nothing;
    }
    return Left::done;
}

std::string FormPage::still_needed() const
{
    std::string names;
    for (const Line& each : form_.lines(outside_.book))
        if (each.needed)
            names += (names.empty() ? "" : ", ") + each.name;
    return names;
}

FormPage::Left FormPage::leave(Sheet& sheet, const std::string& person)
{
    const auto pressed = ui::draw(sheet,
                                  {"What was typed here is not signed yet",
                                   "",
                                   {{"Hold to give it up", "", std::nullopt, false, true}},
                                   false,
                                   "Back"},
                                  turned_);
    ui::draw(sheet, title_block(outside_, "WRITES", person));
    if (!pressed)
        return Left::nothing;
    leaves_ = false;
    return *pressed == 0 ? Left::back : Left::nothing;
}

FormPage::Left FormPage::draw(Sheet& sheet, const std::string& person, PicturePane* beside)
{
    if (field_) {
        const FormField::Left left = field_->draw(sheet, person);
        if (left == FormField::Left::changed)
            form_.put(field_key_, field_->value());
        if (left != FormField::Left::nothing)
            field_.reset();
        return Left::nothing;
    }
    if (leaves_)
        return leave(sheet, person);
    std::vector<std::string> words = buttons();
    const bool has_paper = beside && beside->has_picture();
    if (has_paper)
        words.emplace_back(beside->is_largest() ? "Whole page" : "Larger");
    if (has_paper && beside->is_larger())
        words.emplace_back("Next part");
    Box area = begin_page(sheet, form_.place(title_), words);
    if (has_paper) {
        const Parted parted = part(area, sheet.is_narrow());
        beside->draw(sheet, parted.paper);
        area = parted.lines;
    }
    list(sheet, area);
    const std::string word = draw_foot(sheet, words);
    if (has_paper && (word == "Larger" || word == "Whole page"))
        beside->larger();
    if (has_paper && word == "Next part")
        beside->further();
    const Left left = press(word);
    ui::draw(sheet, title_block(outside_, "WRITES", person));
    return left;
}

} // namespace cotter::ui
