#pragma once

#include "question.hpp"

#include <optional>

namespace cotter::rules {

struct ChartPoint {
    Millimetres radius, height;
};

// The rating at a point: the lowest corner of its cell governs (on a grid line only that line's corners); nothing
// outside the grid or with a blank among the corners. Never extrapolated.
// Source: "between tabulated radii use the smaller value at the next larger radius", stated in a public mobile-crane
// manual; ISO 10567 says nothing either way. Blank = not permitted: common chart convention, from memory.
std::optional<Kilograms> lowest_corner(const Chart& chart, Sector over, ChartPoint point);

// The lowest of the sectors asked: both where the slew does not stay in one.
std::optional<Kilograms> rated_at(const Chart& chart, Known<Sector> sector, ChartPoint point);

// Between the corners, for information beside the rating; never decides.
std::optional<double> bilinear_kg(const Chart& chart, Sector over, ChartPoint point);

// Does the chart rate over 1,000 kg at the least radius that it rates, or over 40,000 N m anywhere?
// Source: ISO 10567:1992 item 3.4 as quoted in a public machine manual; EN 474-5 (same figures, from memory).
bool needs_lifting_devices(const Chart& chart);

} // namespace cotter::rules
