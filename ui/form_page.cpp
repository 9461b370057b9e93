#include "form_page.hpp"

#include "foot.hpp"
#include "form_words.hpp"
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

bool is_part(const Json& schema)
{
    return schema.contains("properties") || schema.value("additionalProperties", Json{}).is_object();
}

bool is_list(const Json& schema) { return schema.value("type", "") == "array"; }

const Json& inner_of(const Json& schema, const std::string& key)
{
    if (is_list(schema))
        return schema.at("items");
    const auto properties = schema.find("properties");
    return properties != schema.end() && properties->contains(key) ? properties->at(key)
                                                                   : schema.at("additionalProperties");
}

// Is a field of it that must be there not filled in?
bool lacks_something(const Json& schema, const Json& value)
{
    if (value.is_array())
        return std::any_of(value.begin(), value.end(),
                           [&](const Json& each) { return lacks_something(schema.at("items"), each); });
    if (!value.is_object() || !schema.contains("properties"))
        return false;
    const Json needed = schema.value("required", Json::array());
    return std::any_of(needed.begin(), needed.end(), [&](const Json& each) { return !value.contains(each); }) ||
           std::any_of(value.items().begin(), value.items().end(), [&](const auto& each) {
               return lacks_something(schema.at("properties").value(each.key(), Json::object()), each.value());
           });
}

} // namespace

FormPage::FormPage(const Outside& outside, std::string title, Json schema, Json body, std::string done)
    : outside_{outside}, title_{std::move(title)}, done_{std::move(done)}, begun_(body), schema_(std::move(schema)),
      body_(std::move(body))
{
}

const Json& FormPage::schema_here() const
{
    const Json* schema = &schema_;
    for (const std::string& key : path_)
        schema = &inner_of(*schema, key);
    return *schema;
}

Json FormPage::here() const
{
    const Json* at = &body_;
    for (const std::string& key : path_) {
        if (at->is_array() ? std::stoul(key) >= at->size() : !at->contains(key))
            return is_list(schema_here()) ? Json::array() : Json::object();
        at = at->is_array() ? &at->at(std::stoul(key)) : &at->at(key);
    }
    return *at;
}

// Roles are the one part whose keys are free: those that a plan asks about.
std::vector<FormPage::Line> FormPage::lines() const
{
    std::vector<Line> all;
    const Json& schema = schema_here();
    const Json now = here();
    const auto add = [&](const std::string& key, const std::string& name, const Json& inner, bool needed) {
        const Json value = now.is_array() ? now.at(std::stoul(key)) : now.value(key, Json{});
        const bool filled = is_part(inner) && !now.is_array() && !value.is_null();
        all.push_back(
            {key, name,
             filled ? words::say("{} filled in", value.size()) : value_in_words(outside_.book, inner, key, value),
             &inner, (needed && value.is_null()) || (!value.is_null() && lacks_something(inner, value))});
    };
    if (is_list(schema))
        for (std::size_t i = 0; i < now.size(); ++i)
            add(std::to_string(i), std::to_string(i + 1), schema.at("items"), false);
    const Json needed = schema.value("required", Json::array());
    if (schema.contains("properties")) {
        for (const std::string key : schema.at("x-order"))
            if (const auto inner = schema.at("properties").find(key);
                inner != schema.at("properties").end() && key != "photos" && key != "copy")
                add(key, name_of(*inner, key), *inner, std::find(needed.begin(), needed.end(), key) != needed.end());
    } else if (!is_list(schema))
        for (const char* role : {desk::key("operator"), desk::key("supervisor"), desk::key("signaller")})
            add(role, role, schema.at("additionalProperties"), false);
    return all;
}

// The part that is open, with its place where it is one of a list.
std::string FormPage::place() const
{
    std::string text = title_, list;
    const Json* schema = &schema_;
    for (const std::string& key : path_) {
        text =
            is_list(*schema) ? list + " " + std::to_string(std::stoul(key) + 1) : name_of(inner_of(*schema, key), key);
        list = text;
        schema = &inner_of(*schema, key);
    }
    return text;
}

void FormPage::put(const std::string& key, Json value)
{
    Json* at = &body_;
    const Json* schema = &schema_;
    for (const std::string& step : path_) {
        schema = &inner_of(*schema, step);
        at = at->is_array() ? &at->at(std::stoul(step)) : &(*at)[step];
        if (at->is_null())
            *at = is_list(*schema) ? Json::array() : Json::object();
    }
    if (at->is_array() && std::stoul(key) < at->size()) {
        if (value.is_null())
            at->erase(std::stoul(key));
        else
            at->at(std::stoul(key)) = std::move(value);
    } else if (at->is_array()) {
        if (!value.is_null())
            at->push_back(std::move(value));
    } else if (value.is_null())
        at->erase(key);
    else
        (*at)[key] = std::move(value);
}

void FormPage::open(const Line& line)
{
    said_.clear();
    if (is_part(*line.schema) || is_list(*line.schema)) {
        path_.push_back(line.key);
        scrolls_.emplace_back();
        return;
    }
    const Json now = here();
    const bool known = now.is_array() ? std::stoul(line.key) < now.size() : now.contains(line.key);
    field_key_ = line.key;
    field_.emplace(outside_, *line.schema, line.key,
                   !known           ? Json{}
                   : now.is_array() ? now.at(std::stoul(line.key))
                                    : now.at(line.key));
}

void FormPage::add()
{
    const Json& item = schema_here().at("items");
    const std::string key = std::to_string(here().size());
    if (is_part(item))
        put(key, Json::object());
    open({key, "", "", &item, false});
}

void FormPage::go_up()
{
    path_.pop_back();
    scrolls_.pop_back();
}

void FormPage::take_out()
{
    const std::string key = path_.back();
    go_up();
    put(key, Json{});
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
    const std::vector<Line> all = lines();
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
    std::vector<std::string> all{path_.empty() ? "Leave it" : "Back"};
    const bool in_list = is_list(schema_here());
    if (in_list)
        all.emplace_back("Add");
    if (!path_.empty() && !in_list &&
        std::all_of(path_.back().begin(), path_.back().end(), [](char c) { return '0' <= c && c <= '9'; }))
        all.emplace_back("Take it out");
    if (path_.empty())
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
    if (word == "Leave it" && body_ == begun_)
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
    for (const Line& each : lines())
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
            put(field_key_, field_->value());
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
    Box area = begin_page(sheet, place(), words);
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
