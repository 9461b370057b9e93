#include "plan_numbers.hpp"

#include "amounts.hpp"
#include "dimension.hpp"
#include "register.hpp"

#include <algorithm>
#include <cstdlib>

namespace cotter::ui {

using records::Json;

namespace {

constexpr double left_mm = 14, between_mm = 4, figure_mm = 70;

// As a person reads it: an angle in degrees to a tenth, never shown better than it is.
std::string amount(std::int64_t value, const std::string& unit, bool is_limit)
{
    if (unit != "thousandths of a degree")
        return std::to_string(value) + (unit.empty() || is_limit ? "" : " " + words::in_language(unit));
    const std::int64_t tenths = is_limit ? value / 100 : (value + (value > 0 ? 99 : 0)) / 100;
    return words::decimal((tenths < 0 ? "-" : "") + std::to_string(std::abs(tenths) / 10) + "." +
                          std::to_string(std::abs(tenths) % 10)) +
           "\u00b0";
}

} // namespace

PlanNumbers::Line PlanNumbers::line_of(const records::Book& book, const Json& result)
{
    Line line;
    const std::string about = result.value("about", "");
    line.words = (about.empty() ? "" : desk::shown_name(book, about) + ": ") +
                 words::in_language(result.at("what").get<std::string>());
    line.how = words::in_language(result.at("formula").get<std::string>()) + " \u00b7 " +
               words::in_language(result.at("source").get<std::string>());
    if (result.contains("says")) {
        line.value = words::in_language(result.at("says").get<std::string>());
        return line;
    }
    const std::string unit = result.value("unit", "");
    line.value = amount(result.at("value").get<std::int64_t>(), unit, false);
    if (result.contains("limit")) {
        line.measured = result.at("value").get<double>();
        line.limit = result.at("limit").get<double>();
        line.value += ", " + words::in_language(result.value("limit_is", "limit")) + " " +
                      amount(result.at("limit").get<std::int64_t>(), unit, true);
    }
    return line;
}

void PlanNumbers::show(const records::Book& book, const Json& results, const std::vector<std::string>& why_not)
{
    book_ = &book;
    results_ = results;
    why_not_ = why_not;
    scroll_ = {};
    read();
}

void PlanNumbers::read()
{
    read_in_ = words::language();
    lines_.clear();
    for (const std::string& each : why_not_)
        lines_.push_back({each, "", "", std::nullopt, std::nullopt, true});
    for (const Json& each : results_)
        lines_.push_back(line_of(*book_, each));
}

namespace {

// Words and value beside each other; under each other on narrow glass.
struct Columns {
    double words, value, value_at;
};

Columns columns_of(const Sheet& sheet, double width)
{
    const double all = width - left_mm - between_mm;
    return sheet.is_narrow() ? Columns{all, all, 0} : Columns{all * 0.55 - between_mm, all * 0.45, all * 0.55};
}

} // namespace

double PlanNumbers::height_of(const Sheet& sheet, const Line& line, double width)
{
    const Columns columns = columns_of(sheet, width);
    const double words = sheet.height_of(Letter::bold, line.words, columns.words) +
                         sheet.height_of(Letter::second, line.how, columns.words);
    const double value = sheet.height_of(Letter::bold, line.value, columns.value) + (line.limit ? 7 : 0);
    return between_mm + (sheet.is_narrow() ? words + value : std::max(words, value));
}

void PlanNumbers::draw_line(Sheet& sheet, const Line& line, const Box& box)
{
    constexpr int most = 12;
    const Columns columns = columns_of(sheet, box.w);
    const double x = box.x + left_mm;
    double y = box.y + 2;
    if (line.is_refusal)
        sheet.sign(figures::Sign::stop, box.x + 7.5, y + 2.5, 7);
    y += sheet.wrapped({x, y, columns.words, 0}, Letter::bold, line.words, most);
    if (!line.how.empty())
        y += sheet.wrapped({x, y, columns.words, 0}, Letter::second, line.how, most, colours().second);
    if (!sheet.is_narrow())
        y = box.y + 2;
    if (!line.value.empty())
        y += sheet.wrapped({x + columns.value_at, y, columns.value, 0}, Letter::bold, line.value, most);
    if (line.limit)
        sheet.figure(figures::limit_line(*line.measured, *line.limit, "", figure_mm * 2), x + columns.value_at, y);
    sheet.line(box.x, box.y + box.h, box.x + box.w, box.y + box.h, thin_mm, colours().rule);
}

void PlanNumbers::draw(Sheet& sheet, const Box& area)
{
    if (read_in_ != words::language())
        read();
    double whole = 0;
    for (const Line& each : lines_)
        whole += height_of(sheet, each, area.w);
    touch_scroll(scroll_, sheet, area, sheet.theme().px(whole - area.h));
    double y = area.y - static_cast<double>(scroll_.at) / sheet.theme().px_per_mm();
    sheet.clip(area);
    for (const Line& each : lines_) {
        const double h = height_of(sheet, each, area.w);
        if (y + h > area.y && y < area.y + area.h)
            draw_line(sheet, each, {area.x, y, area.w, h});
        y += h;
    }
    sheet.clip_no_more();
}

} // namespace cotter::ui
