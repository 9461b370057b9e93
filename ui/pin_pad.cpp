#include "pin_pad.hpp"

#include "digit_keys.hpp"

#include <algorithm>

namespace cotter::ui {

namespace {

constexpr std::size_t length = 6;
constexpr double dot_mm = 5;

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
    if (is_key_pressed(ImGuiKey_Backspace))
        rub_out_last();
}

void PinPad::dots(Sheet& sheet, double x, double y) const
{
    for (std::size_t i = 0; i < length; ++i) {
        const Box dot{x + static_cast<double>(i) * (dot_mm + 3), y, dot_mm, dot_mm};
        if (i < digits_.size())
            sheet.fill(dot, colours().ink);
        sheet.frame(dot, thick_mm);
    }
}

void PinPad::rub_out_last()
{
    if (!digits_.empty())
        digits_.pop_back();
}

PinPad::Press PinPad::draw(Sheet& sheet, const Words& words)
{
    sheet.take_digits();
    read_keyboard();
    sheet.fill({0, 0, sheet.width(), sheet.height()}, colours().ground);
    const PadPlace place = pad_place(sheet);
    const double x = pad_edge_mm;
    const double head = sheet.wrapped({x, 8, place.text_w, 0}, Letter::heading, words.question, 3);
    const double hint = sheet.wrapped({x, 11 + head, place.text_w, 0}, Letter::text, words.hint, 5, colours().second);
    dots(sheet, x, 16 + head + hint);
    if (const auto key = digit_keys(sheet, place, false))
        *key == rub_out ? rub_out_last() : take(*key);
    if (const auto pressed = ways_out_of(sheet, place, words.ways_out)) {
        way_out_ = *pressed;
        return Press::way_out;
    }
    return digits_.size() == length ? Press::complete : Press::nothing;
}

} // namespace cotter::ui
