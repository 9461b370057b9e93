#include "move.hpp"

#include "physics.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <set>

namespace cotter::rules {

namespace {

struct Spot {
    double x = 0, y = 0;
};

double radius(Spot at) { return std::hypot(at.x, at.y); }
double bearing(Spot at) { return degrees(std::atan2(at.y, at.x)); }

// The middle of the laid pipe.
Spot laid_at(const MoveAsked& asked)
{
    if (asked.beside == Beside::in_line)
        return {asked.footprint.half_length - asked.footprint.slew_ahead + asked.stand_off + asked.lay_along, 0};
    return {asked.lay_along, asked.footprint.half_width + asked.stand_off + asked.trench_width / 2};
}

// How far the combined centre of gravity may stand out from the arm-nose pin.
double swung_out(const MoveAsked& asked)
{
    return asked.rigid ? asked.centre_below_pin * std::sin(radians(std::min(asked.greatest_tilt, 90.0))) : 0;
}

// The pin's height with the pipe's underside at a level.
double pin_over(const MoveAsked& asked, double level) { return level + asked.outside + asked.pin_above_crown; }

MovePoint point(const MoveAsked& asked, Stage stage, double radius, double bearing, double level)
{
    return {stage, radius, radius + swung_out(asked), pin_over(asked, level), bearing};
}

Millimetres up(double length) { return Millimetres{static_cast<std::int64_t>(std::ceil(length - 1e-6))}; }
Millimetres nearest(double length) { return Millimetres{std::llround(length)}; }

} // namespace

std::vector<MovePoint> move_points(const MoveAsked& asked)
{
    const Spot laid = laid_at(asked);
    const double near = asked.pick_radius, far = radius(laid), there = bearing(laid);
    const double over = std::max({asked.clear, asked.pick_level, 0.0});
    return {point(asked, Stage::pick, near, asked.pick_bearing, asked.pick_level),
            point(asked, Stage::slew, std::max(near, far), asked.pick_bearing, over),
            point(asked, Stage::edge, far, there, over), point(asked, Stage::lower, far, there, (over - asked.bed) / 2),
            point(asked, Stage::laid, far, there, -asked.bed)};
}

std::vector<MovePoint> way_of(const std::vector<MovePoint>& points)
{
    std::vector<MovePoint> way = points;
    MovePoint above = points.front();
    above.height = points.at(1).height;
    if (points.at(1).radius > above.radius)
        way.insert(way.begin() + 1, above);
    return way;
}

Sector sector_of(const MoveAsked& asked, const std::vector<MovePoint>& points)
{
    const Footprint& f = asked.footprint;
    const double corner_ahead = degrees(std::atan2(f.half_width, f.half_length - f.slew_ahead));
    const auto is_front = [&](const MovePoint& p) { return std::abs(p.bearing) <= corner_ahead; };
    const auto is_side = [&](const MovePoint& p) {
        const double corner_behind = 180 - degrees(std::atan2(f.half_width, f.half_length + f.slew_ahead));
        return std::abs(p.bearing) > corner_ahead && std::abs(p.bearing) < corner_behind;
    };
    const bool one_side = points.front().bearing * points.back().bearing > 0;
    if (std::all_of(points.begin(), points.end(), is_front))
        return Sector::front;
    return one_side && std::all_of(points.begin(), points.end(), is_side) ? Sector::side : Sector::both;
}

std::vector<Reading> readings(const std::vector<MovePoint>& points, const Chart& chart, Sector over)
{
    double greatest = 0;
    for (const MovePoint& each : points)
        greatest = std::max({greatest, each.radius, each.centre_radius});
    std::vector<Reading> found;
    for (const MovePoint& each : points) {
        const ChartPoint at{up(greatest), nearest(each.height)};
        found.push_back({each.stage, at.radius, at.height, rated_at(chart, over, at)});
    }
    return found;
}

namespace {

// Shares of the way from `from` to `to` at which it crosses one of the lines.
void add_crossings(std::set<double>& shares, double from, double to, const std::set<double>& lines)
{
    for (const double line : lines)
        if (const double share = (line - from) / (to - from); from != to && share > 0 && share < 1)
            shares.insert(share);
}

struct Grid {
    std::set<double> radii, heights;
};

Grid grid_of(const Chart& chart)
{
    Grid grid;
    for (const Cell& each : chart.cells) {
        if (each.radius)
            grid.radii.insert(real(*each.radius));
        if (each.height)
            grid.heights.insert(real(*each.height));
    }
    return grid;
}

double own_radius(const MovePoint& p) { return std::max(p.radius, p.centre_radius); }

// Both ends, the crossings, and the middles between them.
std::set<double> shares_of(const MovePoint& a, const MovePoint& b, const Grid& grid)
{
    std::set<double> shares{0, 1};
    add_crossings(shares, own_radius(a), own_radius(b), grid.radii);
    add_crossings(shares, a.height, b.height, grid.heights);
    std::set<double> all = shares;
    for (auto next = std::next(shares.begin()); next != shares.end(); ++next)
        all.insert((*std::prev(next) + *next) / 2);
    return all;
}

} // namespace

std::vector<Reading> readings_along(const std::vector<MovePoint>& points, const Chart& chart, Sector over)
{
    const Grid grid = grid_of(chart);
    std::vector<Reading> found;
    const std::vector<MovePoint> way = way_of(points);
    for (std::size_t i = 0; i + 1 < way.size(); ++i) {
        const MovePoint &a = way[i], &b = way[i + 1];
        for (const double share : shares_of(a, b, grid)) {
            const double radius = own_radius(a) + share * (own_radius(b) - own_radius(a));
            const ChartPoint at{up(radius), nearest(a.height + share * (b.height - a.height))};
            found.push_back({share < 1 ? a.stage : b.stage, at.radius, at.height, rated_at(chart, over, at)});
        }
    }
    return found;
}

Reading governing(const std::vector<Reading>& readings)
{
    return *std::min_element(readings.begin(), readings.end(), [](const Reading& a, const Reading& b) {
        const std::int64_t none = -1;
        return (a.rated ? a.rated->count() : none) < (b.rated ? b.rated->count() : none);
    });
}

double mounting_moment_nm(const MoveAsked& asked, double load_kg)
{
    return load_kg * gravity * swung_out(asked) / 1000;
}

} // namespace cotter::rules
