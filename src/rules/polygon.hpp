#pragma once

#include <optional>
#include <vector>

namespace cotter::rules {

// Plane geometry of convex polygons, lengths in mm: x along, y up. Source: textbook plane geometry (Minkowski sum of
// convex polygons by merged edges); checked against Boost.Geometry in tests/outside.

struct Point {
    double x = 0, y = 0;
};
inline Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
inline Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
inline Point operator*(double k, Point p) { return {k * p.x, k * p.y}; }

using Polygon = std::vector<Point>; // convex, counter-clockwise, at least three corners

struct Box {
    double left = 0, bottom = 0, right = 0, top = 0;
};

Polygon polygon(const Box& box);

// Turned about the origin, counter-clockwise.
Polygon turned(const Polygon& p, double degrees);
Polygon moved(const Polygon& p, Point by);

// Regular, with the circle of that radius inside it.
Polygon around_circle(double radius, int corners);

// All sums of a point of one and a point of the other.
Polygon minkowski_sum(const Polygon& a, const Polygon& b);
Polygon mirrored(const Polygon& p); // through the origin

// Between the nearest points; 0 where they meet.
double distance(const Polygon& a, const Polygon& b);

struct Interval {
    double from = 0, to = 0;
};

// What the polygon covers in x anywhere between two heights; nothing if it does not reach between them.
std::optional<Interval> covered_between(const Polygon& p, double low, double high);

} // namespace cotter::rules
