#include "threading.hpp"

#include "physics.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace cotter::rules {

namespace {

constexpr double slack = 1e-9; // relative: a root of a limit is allowed at that limit

bool within(double value, double limit) { return value <= limit + slack * std::max(1.0, std::abs(limit)); }

// Length along the axis needed to pass a strut pair on the pipe's own line: (D + 2c)/sin + v/tan.
double threaded_gap(const Passage& p, double tilt)
{
    const double t = radians(tilt);
    return (p.depth + 2 * p.clearance) / std::sin(t) + p.strut_depth / std::tan(t);
}

bool has_room(const Passage& p, double tilt)
{
    return !p.room || within(plan_length(p.depth, p.length, tilt), *p.room - 2 * p.clearance);
}

bool passes_whole(const Passage& p, double tilt)
{
    return within(plan_length(p.length, p.depth, tilt), p.gap - 2 * p.clearance);
}

bool passes_threaded(const Passage& p, double tilt) { return tilt > 0 && within(threaded_gap(p, tilt), p.gap); }

// Tilts at which a cos t + b sin t = wanted, in degrees.
std::vector<double> roots(double a, double b, double wanted)
{
    const double size = std::hypot(a, b);
    if (size <= 0 || std::abs(wanted) > size)
        return {};
    const double middle = std::atan2(b, a);
    const double half = std::acos(wanted / size);
    return {degrees(middle - half), degrees(middle + half)};
}

// (D + 2c) + v cos t = G sin t.
std::vector<double> threaded_roots(const Passage& p) { return roots(-p.strut_depth, p.gap, p.depth + 2 * p.clearance); }

// A least tilt lies at 0 or where a limit is just met.
std::vector<double> candidates(const Passage& p)
{
    std::vector<double> tilts{0, p.max_tilt};
    const auto add = [&](const std::vector<double>& more) { tilts.insert(tilts.end(), more.begin(), more.end()); };
    add(roots(p.length, p.depth, p.gap - 2 * p.clearance));
    add(threaded_roots(p));
    if (p.room)
        add(roots(p.depth, p.length, *p.room - 2 * p.clearance));
    std::erase_if(tilts, [&](double tilt) { return !(tilt >= 0 && tilt <= p.max_tilt); });
    std::sort(tilts.begin(), tilts.end());
    return tilts;
}

// The least tilt that passes the gap; a way only if there is room at that tilt.
std::optional<double> least_tilt(const Passage& p, const std::vector<double>& tilts,
                                 bool (*passes)(const Passage&, double))
{
    const auto found = std::find_if(tilts.begin(), tilts.end(), [&](double tilt) { return passes(p, tilt); });
    return found != tilts.end() && has_room(p, *found) ? std::optional{*found} : std::nullopt;
}

double gap_at(const Passage& p, double tilt)
{
    const double whole = plan_length(p.length, p.depth, tilt) + 2 * p.clearance;
    return tilt > 0 ? std::min(whole, threaded_gap(p, tilt)) : whole;
}

// Whole: least at an end of the allowed tilts, as the plan length is concave; threaded: falls as the tilt grows.
std::optional<double> gap_needed(const Passage& p, const std::vector<double>& tilts)
{
    std::optional<double> least;
    for (const double tilt : tilts)
        if (has_room(p, tilt) && (!least || gap_at(p, tilt) < *least))
            least = gap_at(p, tilt);
    return least;
}

} // namespace

std::string_view name(Way way)
{
    switch (way) {
    case Way::none: return "none";
    case Way::level: return "level";
    case Way::tilted: return "tilted";
    case Way::threaded: return "threaded";
    }
    return "none";
}

double plan_length(double length, double depth, double tilt_degrees)
{
    const double t = radians(tilt_degrees);
    return length * std::cos(t) + depth * std::sin(t);
}

Threading thread(const Passage& p)
{
    if (passes_whole(p, 0) && has_room(p, 0))
        return {Way::level, 0, std::nullopt};
    const auto tilts = candidates(p);
    const auto tilted = least_tilt(p, tilts, passes_whole);
    const auto threaded = least_tilt(p, tilts, passes_threaded);
    if (tilted && (!threaded || *tilted <= *threaded))
        return {Way::tilted, *tilted, std::nullopt};
    if (threaded)
        return {Way::threaded, *threaded, std::nullopt};
    return {Way::none, 0, gap_needed(p, tilts)};
}

} // namespace cotter::rules
