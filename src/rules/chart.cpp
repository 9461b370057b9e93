#include "chart.hpp"

#include <algorithm>
#include <array>

namespace cotter::rules {

namespace {

constexpr std::int64_t device_kg = 1000;
constexpr std::int64_t device_nm = 40'000;

// The grid lines around a value; both the same on a line.
struct Bracket {
    Millimetres low, high;
};

bool is_in(const Cell& cell, Sector over) { return cell.over == over && cell.height && cell.radius; }

template <class Axis> std::optional<Bracket> bracket(const Chart& chart, Sector over, Axis axis, Millimetres value)
{
    std::optional<Millimetres> low, high;
    for (const Cell& cell : chart.cells) {
        if (!is_in(cell, over))
            continue;
        const Millimetres line = *(cell.*axis);
        if (line <= value && (!low || line > *low))
            low = line;
        if (line >= value && (!high || line < *high))
            high = line;
    }
    return low && high ? std::optional{Bracket{*low, *high}} : std::nullopt;
}

struct Corners {
    Bracket radius, height;
    std::array<Kilograms, 4> rated; // low-low, low-high, high-low, high-high (radius, height)
};

// 0 or 1: at which of the two lines the value lies (both, where they are one); 2: at neither.
std::size_t line_at(Bracket bracket, Millimetres value)
{
    return value == bracket.low ? 0 : value == bracket.high ? 1 : 2;
}

// The corners of the cell, in one pass; the lower of two entries for one grid point, and a blank is lower than any.
struct Entry {
    Known<Kilograms> rated;
    bool blank = false;
};
std::array<Entry, 4> entries(const Chart& chart, Sector over, Bracket radius, Bracket height)
{
    std::array<Entry, 4> found{};
    for (const Cell& cell : chart.cells) {
        if (!is_in(cell, over))
            continue;
        const std::size_t r = line_at(radius, *cell.radius), h = line_at(height, *cell.height);
        if (r > 1 || h > 1)
            continue;
        Entry& entry = found[2 * r + h];
        entry.blank = entry.blank || !cell.rated;
        if (cell.rated)
            entry.rated = entry.rated ? std::min(*entry.rated, *cell.rated) : *cell.rated;
    }
    return found;
}

std::optional<Corners> corners(const Chart& chart, Sector over, ChartPoint point)
{
    const auto radius = bracket(chart, over, &Cell::radius, point.radius);
    const auto height = bracket(chart, over, &Cell::height, point.height);
    if (!radius || !height)
        return std::nullopt;
    const auto found = entries(chart, over, *radius, *height);
    Corners cell{*radius, *height, {Kilograms{0}, Kilograms{0}, Kilograms{0}, Kilograms{0}}};
    for (std::size_t i = 0; i < 4; ++i) {
        const std::size_t r = radius->low == radius->high ? 0 : i / 2, h = height->low == height->high ? 0 : i % 2;
        const Entry& corner = found[2 * r + h];
        if (corner.blank || !corner.rated)
            return std::nullopt;
        cell.rated[i] = *corner.rated;
    }
    return cell;
}

double share(Bracket bracket, Millimetres value)
{
    if (bracket.low == bracket.high)
        return 0;
    return static_cast<double>((value - bracket.low).count()) /
           static_cast<double>((bracket.high - bracket.low).count());
}

std::optional<Millimetres> least_rated_radius(const Chart& chart)
{
    std::optional<Millimetres> least;
    for (const Cell& cell : chart.cells)
        if (cell.rated && cell.radius && (!least || *cell.radius < *least))
            least = cell.radius;
    return least;
}

// kg * 9.81 * mm > N m * 1000, in whole numbers.
bool over_moment(const Cell& cell) { return cell.rated->count() * cell.radius->count() > device_nm * 100'000 / 981; }

} // namespace

std::optional<Kilograms> lowest_corner(const Chart& chart, Sector over, ChartPoint point)
{
    const auto found = corners(chart, over, point);
    return found ? std::optional{*std::min_element(found->rated.begin(), found->rated.end())} : std::nullopt;
}

std::optional<Kilograms> rated_at(const Chart& chart, Known<Sector> sector, ChartPoint point)
{
    if (sector && *sector != Sector::both)
        return lowest_corner(chart, *sector, point);
    const auto front = lowest_corner(chart, Sector::front, point);
    const auto side = lowest_corner(chart, Sector::side, point);
    return front && side ? std::optional{std::min(*front, *side)} : std::nullopt;
}

std::optional<double> bilinear_kg(const Chart& chart, Sector over, ChartPoint point)
{
    const auto found = corners(chart, over, point);
    if (!found)
        return std::nullopt;
    const double r = share(found->radius, point.radius);
    const double h = share(found->height, point.height);
    const auto kg = [&](std::size_t i) { return static_cast<double>(found->rated[i].count()); };
    return (1 - r) * ((1 - h) * kg(0) + h * kg(1)) + r * ((1 - h) * kg(2) + h * kg(3));
}

bool needs_lifting_devices(const Chart& chart)
{
    const auto least = least_rated_radius(chart);
    return std::any_of(chart.cells.begin(), chart.cells.end(), [&](const Cell& cell) {
        if (!cell.rated || !cell.radius)
            return false;
        return (*cell.radius == *least && cell.rated->count() > device_kg) || over_moment(cell);
    });
}

} // namespace cotter::rules
