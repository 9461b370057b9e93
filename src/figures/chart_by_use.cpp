#include "lift_plan.hpp"
#include "real_size.hpp"

#include "chart.hpp"

#include <algorithm>
#include <cmath>
#include <set>

namespace cotter::figures {

using namespace rules;

namespace {

struct Lines {
    std::vector<std::int64_t> radii, heights;
};

Lines grid_of(const Chart& chart)
{
    std::set<std::int64_t> radii, heights;
    for (const Cell& each : chart.cells) {
        if (each.radius)
            radii.insert(each.radius->count());
        if (each.height)
            heights.insert(each.height->count());
    }
    return {{radii.begin(), radii.end()}, {heights.begin(), heights.end()}};
}

// Closer the fuller.
double apart_for(double use) { return use > 0.9 ? 1.4 : use > 0.75 ? 2.4 : use > 0.5 ? 4.5 : 0; }

void draw_cell(Figure& figure, const ChartDrawn& drawn, const RealSize& real, const rules::Box& cell)
{
    const ChartPoint inside{Millimetres{std::llround((cell.left + cell.right) / 2)},
                            Millimetres{std::llround((cell.bottom + cell.top) / 2)}};
    const auto rated = rated_at(drawn.chart, drawn.over, inside);
    const Point corner = real.at(cell.left, cell.top), end = real.at(cell.right, cell.bottom);
    real.frame(figure, cell);
    if (!rated) {
        figure.add(Line{corner, end, Pen::thin});
        figure.add(Line{{corner.x, end.y}, {end.x, corner.y}, Pen::thin});
        return;
    }
    const double use = drawn.load_kg / std::max(static_cast<double>(rated->count()), 1.0);
    if (use > 1)
        figure.add(Polygon{{corner, {end.x, corner.y}, end, {corner.x, end.y}}, Fill::ink});
    else if (const double apart = apart_for(use); apart > 0)
        hatch(figure, corner, end.x - corner.x, end.y - corner.y, apart);
}

void write_rating(Figure& figure, const ChartDrawn& drawn, const RealSize& real, const rules::Box& cell)
{
    const ChartPoint inside{Millimetres{std::llround((cell.left + cell.right) / 2)},
                            Millimetres{std::llround((cell.bottom + cell.top) / 2)}};
    const Point corner = real.at(cell.left, cell.top);
    if (const auto rated = rated_at(drawn.chart, drawn.over, inside))
        figure.add(
            Label{{corner.x + 1.2, corner.y + 3.2}, std::to_string(rated->count()), Align::left, 2.2, true, true});
}

std::string plain_metres(std::int64_t mm)
{
    const std::string text = in_metres(static_cast<double>(mm));
    return text.substr(0, text.find(' '));
}

void draw_axes(Figure& figure, const RealSize& real, const Lines& grid)
{
    for (const auto each : grid.radii) {
        const Point at = real.at(static_cast<double>(each), static_cast<double>(grid.heights.front()));
        figure.add(Label{{at.x, at.y + 4.5}, plain_metres(each), Align::centre, 2.2});
    }
    for (const auto each : grid.heights) {
        const Point at = real.at(static_cast<double>(grid.radii.front()), static_cast<double>(each));
        figure.add(Label{{at.x - 1.5, at.y + 1.1}, plain_metres(each), Align::right, 2.2});
    }
}

// The arm-nose pin's way; the greatest radius governs with every height, so it stands as a line too.
void draw_move(Figure& figure, const RealSize& real, const std::vector<MovePoint>& points)
{
    for (std::size_t i = 0; i + 1 < points.size(); ++i)
        real.line(figure, {points[i].radius, points[i].height}, {points[i + 1].radius, points[i + 1].height},
                  Pen::thick);
    double greatest = 0, low = points.front().height, high = low;
    for (const MovePoint& each : points) {
        greatest = std::max({greatest, each.radius, each.centre_radius});
        low = std::min(low, each.height);
        high = std::max(high, each.height);
        figure.add(Circle{real.at(each.radius, each.height), 1.1, Pen::thick, Fill::ink});
    }
    real.line(figure, {greatest, low}, {greatest, high}, Pen::dashed);
}

constexpr double over_rating = 100, unrated = -1; // in place of how far apart

// One line of the key: a small cell as it is drawn, and what it means.
void key_line(Figure& figure, Point at, double apart, const std::string& says)
{
    constexpr double w = 9, h = 5;
    figure.add(Polygon{{at, {at.x + w, at.y}, {at.x + w, at.y + h}, {at.x, at.y + h}},
                       apart > over_rating ? Fill::ink : Fill::none});
    if (apart > 0 && apart < over_rating)
        hatch(figure, at, w, h, apart);
    if (apart < 0) {
        figure.add(Line{at, {at.x + w, at.y + h}, Pen::thin});
        figure.add(Line{{at.x, at.y + h}, {at.x + w, at.y}, Pen::thin});
    }
    figure.add(Label{{at.x + w + 3, at.y + h / 2 + capital / 2}, says, Align::left, capital});
}

constexpr double key_width = 74, key_height = 80; // mm of the sheet

void draw_key(Figure& figure, const ChartDrawn& drawn, Point at)
{
    const auto line = [&](const std::string& says) {
        figure.add(Label{{at.x, at.y + capital}, says, Align::left, capital});
        at.y += 6;
    };
    line("the load, with all that hangs");
    line(std::to_string(std::llround(std::ceil(drawn.load_kg))) + " kg");
    line("ratings in kg");
    line("across: m from the slew axis");
    line("up: m over the ground, arm-nose pin");
    at.y += 2;
    for (const auto& [apart, says] : {std::pair{0.0, "under half of the rating"},
                                      {4.5, "over half"},
                                      {2.4, "over three quarters"},
                                      {1.4, "over nine tenths"},
                                      {over_rating + 1, "over the rating"},
                                      {unrated, "not rated"}}) {
        key_line(figure, at, apart, says);
        at.y += 7.5;
    }
}

template <typename Each> void for_each_cell(const Lines& grid, Each each)
{
    const auto f = [](std::int64_t value) { return static_cast<double>(value); };
    for (std::size_t r = 0; r + 1 < grid.radii.size(); ++r)
        for (std::size_t h = 0; h + 1 < grid.heights.size(); ++h)
            each(rules::Box{f(grid.radii[r]), f(grid.heights[h]), f(grid.radii[r + 1]), f(grid.heights[h + 1])});
}

} // namespace

Figure chart_by_use(const ChartDrawn& drawn, double width, double height)
{
    constexpr double left = 16, bottom = 8, top = 4;
    const Lines grid = grid_of(drawn.chart);
    Figure inner{width, height, {}};
    if (grid.radii.size() < 2 || grid.heights.size() < 2)
        return inner;
    const bool beside = width > height; // where the key stands: beside the chart, or under it
    const double w = width - left - 8 - (beside ? key_width : 0), h = height - bottom - top - (beside ? 0 : key_height);
    const auto f = [](std::int64_t value) { return static_cast<double>(value); };
    const RealSize real{
        {f(grid.radii.front()), f(grid.heights.front()), f(grid.radii.back()), f(grid.heights.back())}, w, h};
    for_each_cell(grid, [&](const rules::Box& cell) { draw_cell(inner, drawn, real, cell); });
    draw_axes(inner, real, grid);
    for_each_cell(grid, [&](const rules::Box& cell) { write_rating(inner, drawn, real, cell); });
    if (!drawn.points.empty())
        draw_move(inner, real, drawn.points);
    draw_key(inner, drawn, beside ? Point{w + 8, 2} : Point{2, h + bottom + top});
    return moved(std::move(inner), left, top);
}

} // namespace cotter::figures
