#include "polygon.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace cotter::rules {

namespace {

double cross(Point a, Point b) { return a.x * b.y - a.y * b.x; }
double dot(Point a, Point b) { return a.x * b.x + a.y * b.y; }

bool is_before(Point a, Point b) { return a.y < b.y || (a.y == b.y && a.x < b.x); }

// The same polygon from its lowest corner on.
Polygon from_lowest(Polygon p)
{
    std::rotate(p.begin(), std::min_element(p.begin(), p.end(), is_before), p.end());
    return p;
}

double to_segment(Point p, Point a, Point b)
{
    const Point along = b - a;
    const double length = dot(along, along);
    const double t = length > 0 ? std::clamp(dot(p - a, along) / length, 0.0, 1.0) : 0;
    const Point off = p - (a + t * along);
    return std::hypot(off.x, off.y);
}

// Is all of b on the outer side of one of a's edges?
bool has_edge_between(const Polygon& a, const Polygon& b)
{
    for (std::size_t i = 0; i < a.size(); ++i) {
        const Point from = a[i], edge = a[(i + 1) % a.size()] - from;
        if (std::all_of(b.begin(), b.end(), [&](Point p) { return cross(edge, p - from) < 0; }))
            return true;
    }
    return false;
}

double corners_to_edges(const Polygon& a, const Polygon& b)
{
    double least = std::hypot(a[0].x - b[0].x, a[0].y - b[0].y);
    for (const Point& corner : a)
        for (std::size_t i = 0; i < b.size(); ++i)
            least = std::min(least, to_segment(corner, b[i], b[(i + 1) % b.size()]));
    return least;
}

} // namespace

Polygon polygon(const Box& box)
{
    return {{box.left, box.bottom}, {box.right, box.bottom}, {box.right, box.top}, {box.left, box.top}};
}

Polygon turned(const Polygon& p, double degrees)
{
    const double t = degrees * std::numbers::pi / 180, c = std::cos(t), s = std::sin(t);
    Polygon out;
    for (const Point& each : p)
        out.push_back({c * each.x - s * each.y, s * each.x + c * each.y});
    return out;
}

Polygon moved(const Polygon& p, Point by)
{
    Polygon out = p;
    for (Point& each : out)
        each = each + by;
    return out;
}

Polygon around_circle(double radius, int corners)
{
    const double step = 2 * std::numbers::pi / corners, reach = radius / std::cos(step / 2);
    Polygon out;
    for (int i = 0; i < corners; ++i)
        out.push_back({reach * std::cos((i + 0.5) * step), reach * std::sin((i + 0.5) * step)});
    return out;
}

Polygon minkowski_sum(const Polygon& a, const Polygon& b)
{
    const Polygon p = from_lowest(a), q = from_lowest(b);
    Polygon out;
    for (std::size_t i = 0, j = 0; i < p.size() || j < q.size();) {
        out.push_back(p[i % p.size()] + q[j % q.size()]);
        const Point along_p = p[(i + 1) % p.size()] - p[i % p.size()],
                    along_q = q[(j + 1) % q.size()] - q[j % q.size()];
        const double turn = cross(along_p, along_q);
        const bool take_p = j == q.size() || (i < p.size() && turn >= 0),
                   take_q = i == p.size() || (j < q.size() && turn <= 0);
        i += take_p ? 1 : 0;
        j += take_q ? 1 : 0;
    }
    return out;
}

Polygon mirrored(const Polygon& p)
{
    Polygon out = p;
    for (Point& each : out)
        each = -1.0 * each;
    return out;
}

double distance(const Polygon& a, const Polygon& b)
{
    if (!has_edge_between(a, b) && !has_edge_between(b, a))
        return 0;
    return std::min(corners_to_edges(a, b), corners_to_edges(b, a));
}

std::optional<Interval> covered_between(const Polygon& p, double low, double high)
{
    std::optional<Interval> covered;
    const auto take = [&](double x) {
        covered = covered ? Interval{std::min(covered->from, x), std::max(covered->to, x)} : Interval{x, x};
    };
    for (std::size_t i = 0; i < p.size(); ++i) {
        const Point a = p[i], b = p[(i + 1) % p.size()];
        if (a.y >= low && a.y <= high)
            take(a.x);
        for (const double y : {low, high})
            if ((a.y < y) != (b.y < y))
                take(a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y));
    }
    return covered;
}

} // namespace cotter::rules
