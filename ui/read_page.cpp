#include "read_page.hpp"

#include "foot.hpp"

#include <algorithm>
#include <functional>
#include <numeric>

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

// Once: a list of thousands is drawn as quickly as what is seen of it.
void ReadPage::measure(const Sheet& sheet, const std::vector<ReadLine>& lines, const Box& area)
{
    std::size_t of = lines.size();
    const auto mix = [&](std::size_t more) { of = of * 31 + more; };
    mix(std::hash<double>{}(area.w));
    mix(std::hash<double>{}(at_desk().target));
    mix(std::hash<const void*>{}(&sheet.theme()));
    mix(std::hash<double>{}(sheet.theme().px_per_mm()));
    mix(static_cast<std::size_t>(looks().text_percent));
    mix(static_cast<std::size_t>(words::language()));
    for (const ReadLine& each : lines)
        for (const std::string* text : {&each.words, &each.more, &each.opens})
            mix(std::hash<std::string>{}(*text));
    if (of == measured_)
        return;
    measured_ = of;
    heights_.clear();
    for (const ReadLine& each : lines)
        heights_.push_back(height_of(sheet, each, area));
}

std::optional<std::size_t> ReadPage::list(Sheet& sheet, const std::vector<ReadLine>& lines, const Box& area)
{
    measure(sheet, lines, area);
    const double all = std::accumulate(heights_.begin(), heights_.end(), 3.0);
    touch_scroll(scroll_, sheet, area, sheet.theme().px(all - area.h));
    double y = area.y - static_cast<double>(scroll_.at) / sheet.theme().px_per_mm();
    std::optional<std::size_t> opened;
    sheet.clip(area);
    for (std::size_t i = 0; i < lines.size() && y < area.y + area.h; ++i) {
        if (y + heights_[i] > area.y && draw_line(sheet, lines[i], y, area))
            opened = i;
        y += heights_[i];
    }
    sheet.clip_no_more();
    return opened;
}

ReadPage::Pressed ReadPage::draw(Sheet& sheet, const std::string& title, const std::vector<ReadLine>& lines,
                                 const std::vector<std::string>& buttons)
{
    const std::vector<std::string> all = with_button(buttons, scroll_.button());
    const Box area = begin_page(sheet, title, all);
    const auto opened = list(sheet, lines, area);
    const std::string pressed = draw_foot(sheet, all);
    const bool is_own = !pressed.empty() && pressed == scroll_.button();
    scroll_.press(pressed);
    return {opened, is_own ? "" : pressed};
}

} // namespace cotter::ui
