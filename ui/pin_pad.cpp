#include "pin_pad.hpp"

#include "title_block.hpp"

#include <algorithm>

namespace cotter::ui {

namespace {

constexpr std::size_t length = 6;
constexpr double border = 6, dot_mm = 5, pad_w = 110;

} // namespace

void PinPad::clear()
{
    std::fill(digits_.begin(), digits_.end(), '0');
    digits_.clear();
}

void PinPad::take(char digit)
{
    digits_.reserve(length + 1); // what was typed stands in one place, and is overwritten there
    if (digits_.size() < length)
        digits_ += digit;
}

void PinPad::read_keyboard()
{
    for (const ImWchar each : ImGui::GetIO().InputQueueCharacters)
        if (each >= '0' && each <= '9')
            take(static_cast<char>(each));
    if (is_key_pressed(ImGuiKey_Backspace) && !digits_.empty())
        digits_.pop_back();
}

void PinPad::dots(Sheet& sheet, double x, double y) const
{
    for (std::size_t i = 0; i < length; ++i) {
        const Box dot{x + static_cast<double>(i) * (dot_mm + 3), y, dot_mm, dot_mm};
        if (i < digits_.size())
            sheet.fill(dot, day.ink);
        sheet.frame(dot, thick_mm);
    }
}

void PinPad::keys(Sheet& sheet, double x, double y, double w)
{
    const double step_x = w + glove.gap, step_y = glove.target + glove.gap;
    for (int i = 0; i < 9; ++i)
        if (sheet.button(std::string(1, static_cast<char>('1' + i)),
                         {x + i % 3 * step_x, y + i / 3 * step_y, w, glove.target}))
            take(static_cast<char>('1' + i));
    if (sheet.button("0", {x + step_x, y + 3 * step_y, w, glove.target}))
        take('0');
    if (sheet.button("Rub out", {x + 2 * step_x, y + 3 * step_y, w, glove.target}) && !digits_.empty())
        digits_.pop_back();
}

// Wide glass: question at the left, keys at the right. Narrow: under each other.
PinPad::Press PinPad::draw(Sheet& sheet, const Words& words)
{
    read_keyboard();
    sheet.fill({0, 0, sheet.width(), sheet.height()}, day.ground);
    const bool wide = !sheet.is_narrow();
    const double pad_h = 4 * glove.target + 3 * glove.gap,
                 text_w = wide ? sheet.width() - pad_w - 3 * border : sheet.width() - 2 * border;
    const double key_w = wide ? (pad_w - 2 * glove.gap) / 3 : (sheet.width() - 2 * border - 2 * glove.gap) / 3;
    const double head = sheet.wrapped({border, 8, text_w, 0}, Letter::heading, words.question, 3);
    const double hint = sheet.wrapped({border, 11 + head, text_w, 0}, Letter::text, words.hint, 5, day.second);
    const double under = 16 + head + hint;
    dots(sheet, border, under);
    const double bottom = sheet.height() - title_height(sheet);
    const double low = bottom - (wide ? 6 : glove.target + 2 * glove.gap + 6);
    keys(sheet, wide ? sheet.width() - pad_w - border : border, low - pad_h, key_w); // they never move
    Press press = digits_.size() == length ? Press::complete : Press::nothing;
    double x = border;
    for (std::size_t i = 0; i < words.ways_out.size(); ++i) {
        const double w = std::max(30.0, sheet.width_of(Letter::text, words.ways_out[i]) + 8);
        if (sheet.button(words.ways_out[i], {x, bottom - glove.target - glove.gap, w, glove.target})) {
            way_out_ = i;
            press = Press::way_out;
        }
        x += w + glove.gap;
    }
    return press;
}

} // namespace cotter::ui
