#include "date_wheel.hpp"

#include "digit_keys.hpp"
#include "title_block.hpp"

#include "amounts.hpp"

#include <algorithm>
#include <cmath>

namespace cotter::ui {

namespace {

constexpr int first_year = 1950, last_year = 2099;

rules::Day moved(rules::Day from, int part, int by)
{
    if (part == 0)
        return from + date::days{by};
    const date::year_month_day was{from};
    auto turned = part == 1 ? was + date::months{by} : was + date::years{by};
    if (!turned.ok())
        turned = turned.year() / turned.month() / date::last;
    return rules::Day{turned};
}

} // namespace

void DateWheel::turn(Part part, int by)
{
    const rules::Day then = moved(day_, part, by);
    const int in_year = static_cast<int>(date::year_month_day{then}.year());
    choose(first_year <= in_year && in_year <= last_year ? then : day_);
}

void DateWheel::choose(rules::Day day)
{
    day_ = day;
    is_chosen_ = true;
    typed_.clear();
    said_.clear();
}

std::string DateWheel::text(Part part, int away) const
{
    const rules::Day then = moved(day_, part, away);
    const date::year_month_day it{then};
    if (part == day_of_month) {
        const std::string said = words::short_day(then);
        return said.substr(0, said.find_last_of(' '));
    }
    if (part == month) {
        const std::string said = words::short_day(then);
        return said.substr(said.find_last_of(' ') + 1);
    }
    return std::to_string(static_cast<int>(it.year()));
}

// Eight digits, as on a paper: 20261125 or 25112026; strokes and points between them are no matter.
void DateWheel::type()
{
    const std::string before = typed_;
    for (const ImWchar each : ImGui::GetIO().InputQueueCharacters)
        if ('0' <= each && each <= '9' && typed_.size() < 8)
            typed_ += static_cast<char>(each);
    if (is_key_pressed(ImGuiKey_Backspace) && !typed_.empty())
        typed_.pop_back();
    if (typed_ == before)
        return;
    said_.clear();
    if (typed_.size() == 8)
        take_typed();
}

bool DateWheel::take_typed()
{
    said_ = say("{} is no day. Accepted is a day of {} to {}, such as 20261125 or 25112026.", typed_, first_year,
                last_year);
    if (typed_.size() < 8)
        return false;
    const auto part = [&](std::size_t from, std::size_t size) { return typed_.substr(from, size); };
    for (const std::string& text :
         {part(0, 4) + "-" + part(4, 2) + "-" + part(6, 2), part(4, 4) + "-" + part(2, 2) + "-" + part(0, 2)}) {
        const auto day = rules::parse_day(text);
        const int in_year = day ? static_cast<int>(date::year_month_day{*day}.year()) : 0;
        if (in_year < first_year || in_year > last_year)
            continue;
        choose(*day);
        return true;
    }
    return false;
}

std::string DateWheel::heading() const
{
    return !typed_.empty() ? typed_ + std::string(8 - typed_.size(), '_')
           : is_chosen_    ? words::long_day(day_)
                           : say("No day is chosen yet");
}

void DateWheel::wheel(Sheet& sheet, Part part, const Box& box)
{
    const double step = 11, middle = box.y + box.h / 2;
    const Theme& theme = sheet.theme();
    const Box paper{box.x, box.y + glove.target + 3, box.w, box.h - 2 * (glove.target + 3)};
    if (sheet.button("-", {box.x, box.y, box.w, glove.target}))
        turn(part, -1);
    if (sheet.button("+", {box.x, box.y + box.h - glove.target, box.w, glove.target}))
        turn(part, 1);
    const ImVec2 from{theme.px(paper.x), theme.px(paper.y)},
        to{theme.px(paper.x + paper.w), theme.px(paper.y + paper.h)};
    if (ImGui::IsMouseClicked(0) && ImGui::IsMouseHoveringRect(from, to))
        held_ = part;
    if (held_ == part && ImGui::IsMouseDown(0))
        dragged_[part] -= ImGui::GetIO().MouseDelta.y;
    if (ImGui::IsMouseHoveringRect(from, to))
        dragged_[part] -= ImGui::GetIO().MouseWheel * theme.px(step);
    for (; std::abs(dragged_[part]) >= theme.px(step); dragged_[part] -= std::copysign(theme.px(step), dragged_[part]))
        turn(part, dragged_[part] > 0 ? 1 : -1);
    sheet.fill(paper, colours().sheet);
    sheet.frame(paper, thin_mm);
    sheet.line(paper.x, middle - step / 2, paper.x + paper.w, middle - step / 2, thick_mm);
    sheet.line(paper.x, middle + step / 2, paper.x + paper.w, middle + step / 2, thick_mm);
    for (int away = -1; away <= 1; ++away) {
        const Letter letter = away == 0 ? Letter::bold : Letter::second;
        const double y = middle + away * step - capital_mm(Lettering{letter, true}) / 2;
        if (y > paper.y + 1 && y < paper.y + paper.h - 4)
            sheet.wrapped({paper.x + 3, y, paper.w - 4, 0}, {letter, true}, text(part, away), 1,
                          away == 0 ? colours().ink : colours().second);
    }
}

std::optional<std::size_t> DateWheel::draw(Sheet& sheet, const std::string& question, const std::string& hint,
                                           const std::vector<std::string>& ways_out, rules::Day today)
{
    sheet.take_digits();
    type();
    if (!ImGui::IsMouseDown(0))
        held_ = -1;
    sheet.fill({0, 0, sheet.width(), sheet.height()}, colours().ground);
    const double x = pad_edge_mm, w = sheet.width() - 2 * x;
    double y = 8 + sheet.wrapped({x, 8, w, 0}, Letter::heading, question, 2);
    const std::string& under = said_.empty() ? hint : said_;
    y += 3 + sheet.wrapped({x, y + 2, w, 0}, {Letter::text, !said_.empty()}, under, 2, colours().second);
    sheet.wrapped({x, y + 3, w, 0}, {Letter::heading, true}, heading(), 1);
    const PadPlace place = pad_place(sheet);
    const double top = y + 14, low = place.bottom - glove.target - 2 * glove.gap;
    const double high = std::min(low - top, 84.0), wide = std::min((w - 2 * glove.gap) / 3, 52.0);
    for (const Part part : {day_of_month, month, year})
        wheel(sheet, part, {x + static_cast<double>(part) * (wide + glove.gap), top, wide, high});
    const std::size_t take = ways_out.size() - 1;
    std::vector<std::string> buttons = ways_out; // and one before the last
    buttons.insert(buttons.end() - 1, "Today");
    const auto pressed = takes_typed() ? std::optional{take + 1} : ways_out_of(sheet, place, buttons);
    if (pressed == take)
        choose(today);
    if (!pressed || *pressed < take)
        return pressed;
    if (*pressed == take)
        return std::nullopt;
    if (typed_.empty() && is_chosen_)
        return take;
    if (typed_.empty())
        said_ = say("Turn a wheel, or type the day: nobody has chosen one yet");
    else
        take_typed();
    return std::nullopt;
}

} // namespace cotter::ui
