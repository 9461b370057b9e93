#include "trench_path.hpp"

#include "path_search.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace cotter::rules {

namespace {

Polygon part_at(const Box& part, const Pose& at) { return moved(turned(polygon(part), at.tilt), {at.x, at.y}); }

double lowest(const Polygon& p)
{
    return std::min_element(p.begin(), p.end(), [](Point a, Point b) { return a.y < b.y; })->y;
}

Pose between(const Pose& a, const Pose& b, double t)
{
    return {a.x + t * (b.x - a.x), a.y + t * (b.y - a.y), a.tilt + t * (b.tilt - a.tilt)};
}

// No point of the body moves farther than this.
double travel(const Body& body, const Pose& a, const Pose& b)
{
    return std::hypot(b.x - a.x, b.y - a.y) + reach_of(body) * std::abs(b.tilt - a.tilt) * std::numbers::pi / 180;
}

constexpr double touch = 1e-6;  // mm: what rounding may take of a clearance
constexpr double finest = 0.25; // mm of travel that is looked at no closer

// Both ends are free: free between them if what they have to spare outlasts the travel, else each half is asked.
bool is_free_between(const PathAsked& asked, const Pose& a, double spare_a, const Pose& b, double spare_b)
{
    const double length = travel(asked.body, a, b);
    if (length <= spare_a + spare_b || length <= finest)
        return true;
    const Pose middle = between(a, b, 0.5);
    const double spare_middle = spare(asked, middle);
    return spare_middle >= -touch && is_free_between(asked, a, spare_a, middle, spare_middle) &&
           is_free_between(asked, middle, spare_middle, b, spare_b);
}

// Leaves out every pose that a straight way past it makes needless, the farthest first.
std::vector<Pose> straightened(const PathAsked& asked, const std::vector<Pose>& path)
{
    std::vector<Pose> out{path.front()};
    for (std::size_t at = 0; at + 1 < path.size();) {
        std::size_t step = path.size() - 1 - at;
        while (step > 1 && !is_free(asked, path[at], path[at + step]))
            step /= 2;
        at += std::max<std::size_t>(step, 1);
        out.push_back(path[at]);
    }
    return out;
}

PathAsked with_clearance(PathAsked asked, double share)
{
    for (Obstacle& each : asked.obstacles)
        each.clearance *= share;
    return asked;
}

} // namespace

double spare(const PathAsked& asked, const Pose& at)
{
    double least = INFINITY;
    for (const Box& part : asked.body) {
        const Polygon p = part_at(part, at);
        least = std::min(least, lowest(p) - asked.bed);
        for (const Obstacle& each : asked.obstacles)
            least = std::min(least, distance(p, polygon(each.box)) - each.clearance);
    }
    return least;
}

bool is_free(const PathAsked& asked, const Pose& from, const Pose& to)
{
    const double at_start = spare(asked, from), at_end = spare(asked, to);
    return at_start >= -touch && at_end >= -touch && is_free_between(asked, from, at_start, to, at_end);
}

std::vector<Pose> find_path(const PathAsked& asked)
{
    std::vector<Pose> path = search_path(asked);
    for (int pass = 0; pass < 3 && path.size() > 2; ++pass)
        path = straightened(asked, path);
    for (std::size_t i = 0; i + 1 < path.size(); ++i)
        if (!is_free(asked, path[i], path[i + 1]))
            return {};
    return path;
}

std::optional<double> share_of_clearance(const PathAsked& asked)
{
    if (search_path(with_clearance(asked, 0)).empty())
        return std::nullopt;
    double found = 0;
    for (double step = 0.5; step >= 1.0 / 16; step /= 2)
        if (!search_path(with_clearance(asked, found + step)).empty())
            found += step;
    return found;
}

} // namespace cotter::rules
