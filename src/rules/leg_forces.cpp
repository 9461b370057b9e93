#include "leg_forces.hpp"

#include <algorithm>
#include <cmath>

namespace cotter::rules {

namespace {

constexpr double nothing = 1e-9; // of the greatest length or share

double length(const Lug& lug) { return std::hypot(lug.x, lug.y, lug.below); }

// Forces per unit of length along each leg ("force densities"), so that plan forces balance and the sum lifts the load.
std::vector<double> forces(const std::vector<Lug>& lugs, const std::vector<double>& shares, double load)
{
    double lift = 0;
    for (std::size_t i = 0; i < lugs.size(); ++i)
        lift += shares[i] * lugs[i].below;
    std::vector<double> found;
    for (std::size_t i = 0; i < lugs.size(); ++i)
        found.push_back(load * shares[i] * length(lugs[i]) / lift);
    return found;
}

double cross(const Lug& a, const Lug& b) { return a.x * b.y - a.y * b.x; }

double reach(const std::vector<Lug>& lugs)
{
    double greatest = 0;
    for (const Lug& lug : lugs)
        greatest = std::max(greatest, std::hypot(lug.x, lug.y));
    return greatest;
}

// Two lugs hold only what hangs between them, on the line of both.
std::vector<double> two_shares(const Lug& a, const Lug& b, double scale)
{
    const bool in_line = std::abs(cross(a, b)) <= nothing * scale * scale;
    const bool opposite = a.x * b.x + a.y * b.y <= 0;
    if (!in_line || !opposite)
        return {};
    return {std::hypot(b.x, b.y), std::hypot(a.x, a.y)};
}

// Barycentric: each leg's share is the triangle that the other two make with the centre of gravity.
std::vector<double> three_shares(const Lug& a, const Lug& b, const Lug& c)
{
    std::vector<double> shares{cross(b, c), cross(c, a), cross(a, b)};
    if (shares[0] + shares[1] + shares[2] < 0)
        for (double& each : shares)
            each = -each;
    return shares;
}

bool can_hold(const std::vector<double>& shares)
{
    double sum = 0;
    for (const double each : shares)
        sum += each;
    return !shares.empty() && sum > 0 &&
           std::all_of(shares.begin(), shares.end(), [&](double each) { return each >= -nothing * sum; });
}

} // namespace

namespace {

struct Spot {
    double x = 0, y = 0;
};

// The point of the load's plan that is as far from every lug.
std::optional<Spot> middle_of(const std::vector<Lug>& lugs)
{
    const Lug &a = lugs[0], &b = lugs[1];
    if (lugs.size() == 2)
        return Spot{(a.x + b.x) / 2, (a.y + b.y) / 2};
    const Lug& c = lugs[2];
    const double bx = b.x - a.x, by = b.y - a.y, cx = c.x - a.x, cy = c.y - a.y, twice = 2 * (bx * cy - by * cx);
    if (std::abs(twice) <= nothing * reach(lugs) * reach(lugs))
        return std::nullopt;
    const double bb = bx * bx + by * by, cc = cx * cx + cy * cy;
    return Spot{a.x + (cy * bb - by * cc) / twice, a.y + (bx * cc - cx * bb) / twice};
}

double apart(const Lug& lug, Spot from) { return std::hypot(lug.x - from.x, lug.y - from.y); }

} // namespace

std::optional<std::vector<Lug>> hung(const std::vector<Lug>& lugs, double leg_length)
{
    const auto middle = lugs.size() < 2 ? std::nullopt : middle_of(lugs);
    if (!middle)
        return std::nullopt;
    const double radius = apart(lugs[0], *middle), uneven = std::max(1e-3 * radius, 1e-6);
    if (leg_length <= radius || std::any_of(lugs.begin(), lugs.end(), [&](const Lug& each) {
            return std::abs(apart(each, *middle) - radius) > uneven;
        }))
        return std::nullopt;
    // Down runs from the hook to the centre of gravity; across lies level in the load, ahead is square to both.
    const double height = std::sqrt(leg_length * leg_length - radius * radius);
    const double off = std::hypot(middle->x, middle->y), slant = std::hypot(off, height);
    const double ux = off > 0 ? -middle->x / off : 1, uy = off > 0 ? -middle->y / off : 0;
    std::vector<Lug> hanging;
    for (const Lug& each : lugs) {
        const double ahead = (each.x - middle->x) * ux + (each.y - middle->y) * uy,
                     across = -(each.x - middle->x) * uy + (each.y - middle->y) * ux;
        hanging.push_back({(ahead * height - height * off) / slant, across, (height * height + ahead * off) / slant});
    }
    return hanging;
}

std::optional<std::vector<double>> leg_forces(const std::vector<Lug>& lugs, double load)
{
    if (std::any_of(lugs.begin(), lugs.end(), [](const Lug& lug) { return lug.below <= 0; }))
        return std::nullopt;
    const double scale = reach(lugs);
    std::vector<double> shares;
    if (lugs.size() == 2)
        shares = two_shares(lugs[0], lugs[1], scale);
    else if (lugs.size() == 3)
        shares = three_shares(lugs[0], lugs[1], lugs[2]);
    double sum = 0;
    for (const double each : shares)
        sum += each;
    const double least = lugs.size() == 3 ? nothing * scale * scale : nothing * scale;
    if (sum <= least || !can_hold(shares))
        return std::nullopt;
    return forces(lugs, shares, load);
}

std::optional<std::vector<double>> greatest_leg_forces(const std::vector<Lug>& lugs, double load)
{
    std::vector<double> greatest(lugs.size(), 0);
    bool any = false;
    for (unsigned set = 1; set < 1U << lugs.size(); ++set) {
        std::vector<Lug> some;
        std::vector<std::size_t> which;
        for (std::size_t i = 0; i < lugs.size(); ++i)
            if ((set >> i & 1U) != 0) {
                some.push_back(lugs[i]);
                which.push_back(i);
            }
        const auto carried = leg_forces(some, load);
        for (std::size_t i = 0; carried && i < which.size(); ++i)
            greatest[which[i]] = std::max(greatest[which[i]], (*carried)[i]);
        any = any || carried.has_value();
    }
    if (!any)
        return std::nullopt;
    return greatest;
}

} // namespace cotter::rules
