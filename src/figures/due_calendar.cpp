#include "due_calendar.hpp"

#include <algorithm>

namespace cotter::figures {

namespace {

constexpr double weekdays_mm = 6, line_mm = 4.4, in = 1.6;

// "4", and "1 Dec" where a month begins or the picture does.
std::string number_of(const std::string& name, bool with_month)
{
    const std::string day = name.substr(name.find(' ') + 1);
    return with_month ? day : day.substr(0, day.find(' '));
}

struct Cell {
    Point at;
    double w, h;
};

void draw_due(Figure& figure, const Cell& cell, const std::vector<DueMark>& due)
{
    const auto room = static_cast<std::size_t>(std::max(0.0, (cell.h - line_mm - 0.8) / line_mm));
    double y = cell.at.y + line_mm + 3.4;
    for (std::size_t i = 0; i < std::min(room, due.size()); ++i, y += line_mm) {
        const bool last = i + 1 == room && due.size() > room;
        if (due[i].sign && !last)
            figure.add(Mark{{cell.at.x + in + 1.4, y - 1.4}, 3.2, *due[i].sign});
        figure.add(Label{{cell.at.x + in + (due[i].sign && !last ? 4 : 0), y},
                         last ? "+" + std::to_string(due.size() - i) : due[i].label,
                         Align::left,
                         capital});
    }
}

} // namespace

Figure due_calendar(const std::vector<DueMark>& marks, rules::Day today, rules::Day monday, int weeks, double width,
                    double height, const std::function<std::string(rules::Day)>& name_of)
{
    Figure figure{width, height, {}};
    const double w = width / 7, h = (height - weekdays_mm) / weeks;
    for (int i = 0; i < 7 * weeks; ++i) {
        const rules::Day day = rules::add_days(monday, rules::Days{i});
        const std::string name = name_of(day);
        const Cell cell{{w * (i % 7), weekdays_mm + h * (i / 7)}, w, h};
        if (i < 7)
            figure.add(
                Label{{cell.at.x + in, weekdays_mm - 1.8}, name.substr(0, name.find(' ')), Align::left, capital});
        const Pen pen = day == today ? Pen::thick : Pen::thin;
        const double x = cell.at.x, y = cell.at.y;
        const Point corners[] = {{x, y}, {x + w, y}, {x + w, y + h}, {x, y + h}};
        for (std::size_t c = 0; c < 4; ++c)
            figure.add(Line{corners[c], corners[(c + 1) % 4], pen});
        figure.add(Label{{x + in, y + 3.6},
                         number_of(name, i == 0 || date::year_month_day{day}.day() == date::day{1}),
                         Align::left,
                         day < today ? 2.2 : capital});
        std::vector<DueMark> due;
        std::copy_if(marks.begin(), marks.end(), std::back_inserter(due),
                     [&](const DueMark& mark) { return mark.latest == day; });
        draw_due(figure, cell, due);
    }
    return figure;
}

} // namespace cotter::figures
