#include "foot.hpp"

#include "title_block.hpp"

#include <algorithm>

namespace cotter::ui {

namespace {

constexpr double side = 3, above = 1, least_wide = 30;
constexpr std::size_t in_their_own_width = 4; // so many stand at the left with a width of their own; more share the row

double gap() { return std::max(side, at_desk().gap); }
double foot_row_mm() { return at_desk().target + 0.8 + at_desk().gap; }

double width_of_button(const Sheet& sheet, const std::string& words)
{
    return std::max({least_wide, at_desk().target, sheet.width_of(Letter::bold, words) + 6});
}

// Where the rows break: the first of each.
std::vector<std::size_t> rows_of_few(const Sheet& sheet, const std::vector<std::string>& buttons)
{
    std::vector<std::size_t> begins{0};
    double x = side;
    for (std::size_t i = 0; i < buttons.size(); ++i) {
        const double w = width_of_button(sheet, buttons[i]);
        if (x + w > sheet.width() - side && i > begins.back()) {
            begins.push_back(i);
            x = side;
        }
        x += w + gap();
    }
    return begins;
}

std::size_t columns_for_many(const Sheet& sheet, std::size_t count)
{
    for (std::size_t rows = 1; rows < count; ++rows) {
        const std::size_t columns = (count + rows - 1) / rows;
        const auto n = static_cast<double>(columns);
        if ((sheet.width() - (n + 1) * gap()) / n >= std::max(17.0, at_desk().target))
            return columns;
    }
    return 1;
}

std::vector<Box> boxes(const Sheet& sheet, const std::vector<std::string>& buttons)
{
    std::vector<Box> all;
    const double h = at_desk().target + 0.8;
    if (buttons.size() > in_their_own_width) {
        const std::size_t columns = columns_for_many(sheet, buttons.size());
        const auto n = static_cast<double>(columns);
        const double w = (sheet.width() - (n + 1) * gap()) / n;
        for (std::size_t i = 0; i < buttons.size(); ++i)
            all.push_back({gap() + static_cast<double>(i % columns) * (w + gap()),
                           static_cast<double>(i / columns) * foot_row_mm(), w, h});
        return all;
    }
    const auto begins = rows_of_few(sheet, buttons);
    double x = side, y = -foot_row_mm();
    for (std::size_t i = 0; i < buttons.size(); ++i) {
        if (std::find(begins.begin(), begins.end(), i) != begins.end()) {
            x = side;
            y += foot_row_mm();
        }
        const double w = std::min(width_of_button(sheet, buttons[i]), sheet.width() - 2 * side);
        all.push_back({x, y, w, h});
        x += w + gap();
    }
    return all;
}

} // namespace

std::vector<std::string> with_button(std::vector<std::string> buttons, const char* more)
{
    if (*more)
        buttons.emplace_back(more);
    return buttons;
}

Box begin_page(Sheet& sheet, const std::string& heading, const std::vector<std::string>& buttons)
{
    sheet.fill({0, 0, sheet.width(), sheet.height()}, colours().ground);
    const Box area{0, head_mm, sheet.width(),
                   sheet.height() - head_mm - foot_height(sheet, buttons) - title_height(sheet)};
    sheet.fill(area, colours().sheet);
    const double w = sheet.width() - 8;
    const Lettering letter =
        sheet.that_fits({Letter::heading, {Letter::heading, true}, {Letter::bold, true}}, heading, w, 1);
    const bool in_two = letter.letter == Letter::bold;
    sheet.wrapped({4, in_two ? 1.6 : 3.8, w, 0}, letter, heading, in_two ? 2 : 1);
    sheet.line(0, area.y, sheet.width(), area.y, thin_mm);
    sheet.line(0, area.y + area.h, sheet.width(), area.y + area.h, thin_mm);
    return area;
}

double foot_height(const Sheet& sheet, const std::vector<std::string>& buttons)
{
    const auto all = boxes(sheet, buttons);
    return all.empty() ? 0 : all.back().y + foot_row_mm();
}

std::string draw_foot(Sheet& sheet, const std::vector<std::string>& buttons, const std::string& chosen)
{
    const double top = sheet.height() - title_height(sheet) - foot_height(sheet, buttons);
    std::string pressed;
    const auto all = boxes(sheet, buttons);
    const bool many = buttons.size() > in_their_own_width;
    const auto letter = many ? std::optional{sheet.common_letter(buttons, all[0].w, all[0].h, false)} : std::nullopt;
    for (std::size_t i = 0; i < buttons.size(); ++i)
        if (sheet.button(buttons[i], {all[i].x, top + above + all[i].y, all[i].w, all[i].h}, std::nullopt,
                         buttons[i] == chosen, letter))
            pressed = buttons[i];
    for (const char* way_out : {"Back", "Leave it", "Leave"})
        if (goes_back() && std::find(buttons.begin(), buttons.end(), way_out) != buttons.end())
            return way_out;
    return pressed;
}

} // namespace cotter::ui
