#include "number_pad.hpp"

#include "title_block.hpp"

#include <algorithm>

namespace cotter::ui {

namespace {

constexpr std::size_t longest = 12;
constexpr double edge_mm = 6, keys_mm = 110;

} // namespace

void NumberPad::press(char key, const Words& words)
{
    const bool is_digit = '0' <= key && key <= '9';
    if (key == '-' && words.sign)
        typed = !typed.empty() && typed[0] == '-' ? typed.substr(1) : "-" + typed;
    else if (typed.size() < longest &&
             (is_digit || (key == '.' && words.point && typed.find('.') == std::string::npos)))
        typed += key;
}

void NumberPad::keys(Sheet& sheet, const Words& words, double x, double y, double w)
{
    const double step_x = w + glove.gap, step_y = glove.target + glove.gap;
    for (int i = 0; i < 9; ++i)
        if (const char digit = static_cast<char>('1' + i);
            sheet.button(std::string(1, digit), {x + i % 3 * step_x, y + i / 3 * step_y, w, glove.target}))
            press(digit, words);
    if (words.point && sheet.button(".", {x, y + 3 * step_y, w, glove.target}))
        press('.', words);
    if (sheet.button("0", {x + step_x, y + 3 * step_y, w, glove.target}))
        press('0', words);
    if (sheet.button("Rub out", {x + 2 * step_x, y + 3 * step_y, w, glove.target}) && !typed.empty())
        typed.pop_back();
}

std::optional<std::size_t> NumberPad::draw(Sheet& sheet, const Words& words)
{
    for (const ImWchar each : ImGui::GetIO().InputQueueCharacters)
        press(each < 128 ? static_cast<char>(each) : ' ', words);
    if (is_key_pressed(ImGuiKey_Backspace) && !typed.empty())
        typed.pop_back();
    sheet.fill({0, 0, sheet.width(), sheet.height()}, day.ground);
    const bool wide = !sheet.is_narrow();
    const double pad_h = 4 * glove.target + 3 * glove.gap,
                 text_w = wide ? sheet.width() - keys_mm - 3 * edge_mm : sheet.width() - 2 * edge_mm;
    const double key_w = wide ? (keys_mm - 2 * glove.gap) / 3 : (sheet.width() - 2 * edge_mm - 2 * glove.gap) / 3;
    const double head = sheet.wrapped({edge_mm, 8, text_w, 0}, Letter::heading, words.question, 3);
    const double hint = sheet.wrapped({edge_mm, 11 + head, text_w, 0}, Letter::text, words.hint, 3, day.second);
    const Box line{edge_mm, 16 + head + hint, std::min(text_w, 90.0), 13};
    sheet.fill(line, day.sheet);
    sheet.frame(line, thick_mm);
    const double used = sheet.text(line.x + 3, line.y + 4, Letter::heading, typed);
    sheet.text(line.x + 6 + used, line.y + 5.5, Letter::text, words.unit, day.second);
    if (words.sign && sheet.button("\u00b1", {edge_mm, line.y + line.h + glove.gap, glove.target, glove.target}))
        press('-', words);
    const double bottom = sheet.height() - title_height(sheet);
    const double low = bottom - (wide ? 6 : glove.target + 2 * glove.gap + 6);
    keys(sheet, words, wide ? sheet.width() - keys_mm - edge_mm : edge_mm, low - pad_h, key_w);
    std::optional<std::size_t> way_out;
    double x = edge_mm;
    for (std::size_t i = 0; i < words.ways_out.size(); ++i) {
        const double w = std::max(24.0, sheet.width_of(Letter::text, words.ways_out[i]) + 8);
        if (sheet.button(words.ways_out[i], {x, bottom - glove.target - glove.gap, w, glove.target}))
            way_out = i;
        x += w + glove.gap;
    }
    if (is_key_pressed(ImGuiKey_Enter) && !words.ways_out.empty())
        way_out = words.ways_out.size() - 1;
    return way_out;
}

} // namespace cotter::ui
