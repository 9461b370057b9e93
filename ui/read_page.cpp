#include "read_page.hpp"

#include "foot.hpp"

#include <algorithm>

namespace cotter::ui {

namespace {

constexpr double inset = 14, between = 4, opener_mm = 26, pitch = 1.72;

double width_for(const Box& area, const ReadLine& line)
{
    return area.w - inset - 4 - (line.opens.empty() ? 0 : opener_mm + 4);
}

double height_of(const Sheet& sheet, const ReadLine& line, const Box& area)
{
    if (line.is_heading)
        return 11;
    const double w = width_for(area, line);
    const double text =
        capital_mm(Letter::bold) * pitch * sheet.lines_of(Letter::bold, line.words, w) +
        (line.more.empty() ? 0 : capital_mm(Letter::second) * pitch * sheet.lines_of(Letter::second, line.more, w));
    return std::max(text, line.opens.empty() ? 0 : at_desk().target) + std::max(between, at_desk().gap);
}

// Its button is there once all of it is on the paper.
bool draw_line(Sheet& sheet, const ReadLine& line, double y, const Box& area)
{
    if (line.is_heading) {
        sheet.text(area.x + 4, y + 5.5, Letter::second, line.words, colours().second);
        sheet.line(area.x, y + 10.5, area.x + area.w, y + 10.5, thin_mm, colours().rule);
        return false;
    }
    const double w = width_for(area, line);
    if (line.sign)
        sheet.sign(*line.sign, area.x + 7.5, y + 4.2, 6.5);
    const double used = sheet.wrapped({area.x + inset, y + 2.4, w, 0}, Letter::bold, line.words, 6);
    sheet.wrapped({area.x + inset, y + 2.4 + used, w, 0}, Letter::second, line.more, 12, colours().second);
    const Box button{area.x + area.w - opener_mm - 4, y + 2, opener_mm, at_desk().target};
    const double gap = at_desk().gap;
    return !line.opens.empty() && button.y >= area.y && button.y + button.h + gap <= area.y + area.h &&
           sheet.button(line.opens, button);
}

} // namespace

std::optional<std::size_t> ReadPage::list(Sheet& sheet, const std::vector<ReadLine>& lines, const Box& area)
{
    double all = 3;
    for (const ReadLine& each : lines)
        all += height_of(sheet, each, area);
    touch_scroll(scroll_, sheet, area, sheet.theme().px(all - area.h));
    double y = area.y - static_cast<double>(scroll_.at) / sheet.theme().px_per_mm();
    std::optional<std::size_t> opened;
    sheet.clip(area);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const double height = height_of(sheet, lines[i], area);
        if (y + height > area.y && y < area.y + area.h && draw_line(sheet, lines[i], y, area))
            opened = i;
        y += height;
    }
    sheet.clip_no_more();
    return opened;
}

ReadPage::Pressed ReadPage::draw(Sheet& sheet, const std::string& title, const std::vector<ReadLine>& lines,
                                 const std::vector<std::string>& buttons)
{
    const Box area = begin_page(sheet, title, buttons);
    const auto opened = list(sheet, lines, area);
    return {opened, draw_foot(sheet, buttons)};
}

} // namespace cotter::ui
