#include "day_plot.hpp"

#include <algorithm>

namespace cotter::figures {

namespace {

constexpr double side = 10, foot = 15, head = 14, cross = 1.6; // mm of the sheet

void draw_stops(Figure& figure, Point at, int stops)
{
    figure.add(Line{{at.x - cross, at.y - cross}, {at.x + cross, at.y + cross}, Pen::thick});
    figure.add(Line{{at.x - cross, at.y + cross}, {at.x + cross, at.y - cross}, Pen::thick});
    figure.add(Label{{at.x + cross + 1, at.y + capital / 2}, std::to_string(stops), Align::left, capital});
}

void draw_lifts(Figure& figure, Point foot_of, double high, int lifts)
{
    figure.add(Polygon{{{foot_of.x - 1.5, foot_of.y},
                        {foot_of.x - 1.5, foot_of.y - high},
                        {foot_of.x + 1.5, foot_of.y - high},
                        {foot_of.x + 1.5, foot_of.y}},
                       Fill::steel});
    figure.add(Label{{foot_of.x, foot_of.y - high - 1.5}, std::to_string(lifts), Align::centre, capital});
}

// "Thu 12 Nov" under each other; the month under the first day alone, and where it begins.
void draw_day(Figure& figure, Point under, const std::string& name, bool is_first)
{
    const auto one = name.find(' '), two = name.find(' ', one + 1);
    const std::string number = name.substr(one + 1, two - one - 1);
    figure.add(Label{{under.x, under.y + 4.5}, name.substr(0, one), Align::centre, 2.2});
    figure.add(Label{{under.x, under.y + 8.5}, number, Align::centre, 2.2});
    if (is_first || number == "1")
        figure.add(Label{{under.x, under.y + 12.5}, name.substr(two + 1), Align::centre, 2.2});
}

} // namespace

Figure day_plot(const std::vector<DayMark>& days, double width, double height,
                const std::function<std::string(rules::Day)>& name_of)
{
    Figure figure{width, height, {}};
    if (days.empty())
        return figure;
    int most = 1;
    for (const DayMark& each : days)
        most = std::max(most, each.lifts);
    const double base = height - foot, room = base - head - 8;
    const double step = (width - 2 * side) / static_cast<double>(days.size());
    figure.add(Line{{side, base}, {width - side, base}, Pen::thick});
    for (std::size_t i = 0; i < days.size(); ++i) {
        const double x = side + (static_cast<double>(i) + 0.5) * step;
        draw_day(figure, {x, base}, name_of(days[i].day), i == 0);
        if (days[i].lifts > 0)
            draw_lifts(figure, {x, base}, room * days[i].lifts / most, days[i].lifts);
        if (days[i].stops > 0)
            draw_stops(figure, {x, head - 6}, days[i].stops);
    }
    return figure;
}

} // namespace cotter::figures
