#include "read_page.hpp"

#include "title_block.hpp"

#include <algorithm>

namespace cotter::ui {

namespace {

constexpr double inset = 14, between = 4, opener_mm = 26, pitch = 1.72;

double width_for(const Sheet& sheet, const ReadLine& line)
{
    return sheet.width() - inset - 4 - (line.opens.empty() ? 0 : opener_mm + 4);
}

double height_of(const Sheet& sheet, const ReadLine& line)
{
    if (line.is_heading)
        return 11;
    const double w = width_for(sheet, line);
    const double text =
        capital_mm(Letter::bold) * pitch * sheet.lines_of(Letter::bold, line.words, w) +
        (line.more.empty() ? 0 : capital_mm(Letter::second) * pitch * sheet.lines_of(Letter::second, line.more, w));
    return std::max(text, line.opens.empty() ? 0 : bare.target) + between;
}

bool draw_line(Sheet& sheet, const ReadLine& line, double y)
{
    if (line.is_heading) {
        sheet.text(4, y + 5.5, Letter::second, line.words, colours().second);
        sheet.line(0, y + 10.5, sheet.width(), y + 10.5, thin_mm, colours().rule);
        return false;
    }
    const double w = width_for(sheet, line);
    if (line.sign)
        sheet.sign(*line.sign, 7.5, y + 4.2, 6.5);
    const double used = sheet.wrapped({inset, y + 2.4, w, 0}, Letter::bold, line.words, 6);
    sheet.wrapped({inset, y + 2.4 + used, w, 0}, Letter::second, line.more, 12, colours().second);
    return !line.opens.empty() &&
           sheet.button(line.opens, {sheet.width() - opener_mm - 4, y + 2, opener_mm, bare.target});
}

} // namespace

std::optional<std::size_t> ReadPage::list(Sheet& sheet, const std::vector<ReadLine>& lines, const Box& area)
{
    double all = 3;
    for (const ReadLine& each : lines)
        all += height_of(sheet, each);
    touch_scroll(scroll_, sheet.theme(), area, sheet.theme().px(all - area.h));
    double y = area.y - static_cast<double>(scroll_.at) / sheet.theme().px_per_mm();
    std::optional<std::size_t> opened;
    sheet.clip(area);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const double height = height_of(sheet, lines[i]);
        if (y + height > area.y && y < area.y + area.h && draw_line(sheet, lines[i], y))
            opened = i;
        y += height;
    }
    sheet.clip_no_more();
    return opened;
}

ReadPage::Pressed ReadPage::draw(Sheet& sheet, const std::string& title, const std::vector<ReadLine>& lines,
                                 const std::vector<std::string>& buttons)
{
    sheet.fill({0, 0, sheet.width(), sheet.height()}, colours().ground);
    const Box area{0, head_mm, sheet.width(), sheet.height() - head_mm - foot_mm - title_height(sheet)};
    sheet.fill(area, colours().sheet);
    Pressed pressed{list(sheet, lines, area), ""};
    sheet.text(4, 3.8, Letter::heading, sheet.cut(Letter::heading, title, sheet.width() - 8, 1));
    sheet.line(0, area.y, sheet.width(), area.y, thin_mm);
    sheet.line(0, area.y + area.h, sheet.width(), area.y + area.h, thin_mm);
    double x = bare.gap;
    for (const std::string& each : buttons) {
        const double w = std::max(34.0, sheet.width_of(Letter::bold, each) + 8);
        if (sheet.button(each, {x, area.y + area.h + 1, w, foot_mm - 2}))
            pressed.button = each;
        x += w + bare.gap + 1;
    }
    return pressed;
}

} // namespace cotter::ui
