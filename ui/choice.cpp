#include "choice.hpp"

#include "title_block.hpp"

#include <algorithm>

namespace cotter::ui {

namespace {

struct Grid {
    std::size_t columns, rows;
    double w, h, gap;
    Box cell(std::size_t i, double top, double left) const
    {
        return {left + static_cast<double>(i % columns) * (w + gap), top + static_cast<double>(i / columns) * (h + gap),
                w, h};
    }
};

constexpr double margin = 6;

Grid grid_for(const Choice& choice, double width, double top, double bottom)
{
    Grid grid{1, 1, 0, 24, choice.apart ? glove.opposite_gap : glove.gap};
    grid.columns = width > 180 && choice.options.size() > 2 ? 3 : choice.options.size() > 1 ? 2 : 1;
    grid.w =
        (width - 2 * margin - grid.gap * static_cast<double>(grid.columns - 1)) / static_cast<double>(grid.columns);
    grid.rows = std::max<std::size_t>(1, static_cast<std::size_t>((bottom - top + grid.gap) / (grid.h + grid.gap)));
    return grid;
}

bool draw_option(Sheet& sheet, const Choice::Option& option, const Box& box)
{
    if (option.more.empty())
        return sheet.button(option.words, box, option.sign, option.chosen);
    const bool pressed = sheet.target(option.words, box, option.chosen);
    if (option.sign)
        sheet.sign(*option.sign, box.x + box.w - 5, box.y + 5, 6);
    const double used =
        sheet.wrapped({box.x + 3, box.y + 4, box.w - (option.sign ? 12 : 6), 0}, Letter::bold, option.words, 2);
    sheet.wrapped({box.x + 3, box.y + 5 + used, box.w - 6, 0}, Letter::second,
                  sheet.cut(Letter::second, option.more, box.w - 6, 2), 2, colours().second);
    return pressed;
}

} // namespace

std::optional<std::size_t> draw(Sheet& sheet, const Choice& choice, std::size_t& page)
{
    sheet.fill({0, 0, sheet.width(), sheet.height()}, colours().ground);
    const double width = sheet.width() - choice.kept_right;
    const Box plate{0, 0, std::min(sheet.width(), 135.0), choice.plate ? plate_mm : 0};
    if (choice.plate)
        draw(sheet, *choice.plate, plate);
    const double head =
        sheet.wrapped({margin, plate.h + 8, width - 2 * margin, 0}, Letter::heading, choice.question, 3);
    const double hint = sheet.wrapped({margin, plate.h + 10 + head, width - 2 * margin, 0}, Letter::text, choice.hint,
                                      6, choice.plate ? colours().ink : colours().second);
    const double top = plate.h + 16 + head + hint,
                 bottom = sheet.height() - title_height(sheet) - glove.target - 2 * glove.gap;
    const Grid grid = grid_for(choice, width, top, bottom);
    const std::size_t fit = grid.columns * grid.rows,
                      pages = (choice.options.size() + fit - 1) / std::max<std::size_t>(fit, 1);
    if (page >= std::max<std::size_t>(pages, 1))
        page = 0;
    std::optional<std::size_t> pressed;
    for (std::size_t i = page * fit; i < choice.options.size() && i < (page + 1) * fit; ++i) {
        ImGui::PushID(static_cast<int>(i));
        if (draw_option(sheet, choice.options[i], grid.cell(i - page * fit, top, margin)))
            pressed = i;
        ImGui::PopID();
    }
    const double y = sheet.height() - title_height(sheet) - glove.target - glove.gap;
    if (!choice.back.empty() && sheet.button(choice.back, {margin, y, 34, glove.target}))
        pressed = choice.options.size();
    if (pages > 1 && sheet.button("More", {sheet.width() - margin - 34, y, 34, glove.target}))
        page = (page + 1) % pages;
    return pressed;
}

} // namespace cotter::ui
