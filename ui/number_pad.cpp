#include "number_pad.hpp"

#include "digit_keys.hpp"

#include <algorithm>
#include <utility>

namespace cotter::ui {

namespace {

constexpr std::size_t longest = 12;

} // namespace

// A point where none is meant is typed too: then the number is refused, not read as another.
void NumberPad::press(char key, const Words& words)
{
    const bool is_digit = '0' <= key && key <= '9';
    if ((is_digit || key == '.' || key == ',') && std::exchange(stands, false))
        typed.clear();
    if (key == ',') // the decimal sign of other languages
        key = '.';
    if (key == '-' && words.sign && std::exchange(stands, false))
        typed = "-"; // another number begins with it
    else if (key == '-' && words.sign)
        typed = !typed.empty() && typed[0] == '-' ? typed.substr(1) : "-" + typed;
    else if (typed.size() < longest && (is_digit || (key == '.' && typed.find('.') == std::string::npos)))
        typed += key;
}

void NumberPad::rub_out_last()
{
    if (std::exchange(stands, false))
        typed.clear();
    if (!typed.empty())
        typed.pop_back();
}

void NumberPad::draw_typed(Sheet& sheet, const Words& words, const Box& line)
{
    sheet.fill(line, colours().sheet);
    sheet.frame(line, thick_mm);
    const double used = sheet.text(line.x + 3, line.y + 4, Letter::heading, words::decimal(typed));
    sheet.text(line.x + 6 + used, line.y + 5.5, Letter::text, words.unit, colours().second);
    if (words.sign && sheet.button("\u00b1", {line.x, line.y + line.h + glove.gap, glove.target, glove.target}))
        press('-', words);
}

std::optional<std::size_t> NumberPad::draw(Sheet& sheet, const Words& words)
{
    sheet.take_digits();
    for (const ImWchar each : ImGui::GetIO().InputQueueCharacters)
        press(each < 128 ? static_cast<char>(each) : ' ', words);
    if (is_key_pressed(ImGuiKey_Backspace))
        rub_out_last();
    sheet.fill({0, 0, sheet.width(), sheet.height()}, colours().ground);
    const PadPlace place = pad_place(sheet);
    const double x = pad_edge_mm;
    const double room = sheet.is_narrow() ? place.y - 35 : place.bottom - 80;
    const bool plain = sheet.height_of(Letter::heading, words.question, place.text_w) +
                           sheet.height_of(Letter::text, words.hint, place.text_w) >
                       room;
    const double head = sheet.wrapped({x, 8, place.text_w, 0}, {Letter::heading, plain}, words.question, 3);
    const double hint =
        sheet.wrapped({x, 11 + head, place.text_w, 0}, {Letter::text, plain}, words.hint, 3, colours().second);
    draw_typed(sheet, words, {x, 16 + head + hint, std::min(place.text_w, 90.0), 13});
    if (const auto key = digit_keys(sheet, place, words.point))
        *key == rub_out ? rub_out_last() : press(*key, words);
    if (takes_typed() && !words.ways_out.empty())
        return words.ways_out.size() - 1;
    return ways_out_of(sheet, place, words.ways_out);
}

} // namespace cotter::ui
