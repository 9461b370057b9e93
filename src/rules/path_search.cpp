#include "path_search.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <queue>
#include <tuple>
#include <utility>

namespace cotter::rules {

namespace {

constexpr double band = 5;       // mm, height of a band
constexpr double turn_slack = 8; // mm, what half a step of tilt may move any point
constexpr int circle_corners = 16;

struct Node {
    int tilt = 0, band = 0, stretch = 0;
    friend auto operator<=>(const Node&, const Node&) = default;
};

// The free stretches of the whole search, worked out as they are asked for.
class FreeSpace {
public:
    explicit FreeSpace(const PathAsked& asked);

    int tilts() const { return tilts_; } // steps to either side
    int bands() const { return bands_; } // the top one is above everything
    double degrees(int tilt) const { return tilt * step_; }
    double height(int band_number) const { return floor_ + band_number * band; }
    double arc() const { return arc_; } // mm that a step of tilt moves the farthest point
    const std::vector<Interval>& stretches(int tilt, int band_number);

private:
    struct Taken {
        Polygon by;
        double bottom = 0, top = 0;
    };
    struct Slice {
        std::vector<Taken> taken;
        double floor = 0;
        std::vector<std::optional<std::vector<Interval>>> bands;
    };
    static Taken taken_by(Polygon polygon);
    Slice slice_at(double degrees) const;
    std::vector<Interval> free_in(const Slice& slice, int band_number) const;

    const PathAsked& asked_;
    double reach_ = 0, step_ = 0, arc_ = 0, floor_ = 0;
    Interval across_;
    int tilts_ = 0, bands_ = 0;
    std::vector<Slice> slices_;
};

double top_of(const PathAsked& asked)
{
    double top = asked.bed;
    for (const Obstacle& each : asked.obstacles)
        top = std::max(top, each.box.top + each.clearance);
    return top;
}

// The middle stays between the outermost faces: what is beyond them is not known.
Interval across(const PathAsked& asked)
{
    Interval x = asked.laid;
    for (const Obstacle& each : asked.obstacles)
        x = {std::min(x.from, each.box.left), std::max(x.to, each.box.right)};
    return x;
}

double below_middle(const Body& body, double degrees)
{
    double least = 0;
    for (const Box& part : body)
        for (const Point& each : turned(polygon(part), degrees))
            least = std::min(least, each.y);
    return -least;
}

FreeSpace::FreeSpace(const PathAsked& asked) : asked_{asked}, reach_{reach_of(asked.body)}
{
    const double widest = 2 * turn_slack / reach_ * 180 / std::numbers::pi;
    tilts_ = static_cast<int>(std::ceil(asked.tilt_limit / widest));
    step_ = tilts_ > 0 ? asked.tilt_limit / tilts_ : 0;
    arc_ = reach_ * step_ * std::numbers::pi / 180;
    floor_ = asked.bed + below_middle(asked.body, 0);
    across_ = across(asked);
    bands_ = 2 + static_cast<int>(std::ceil((top_of(asked) + reach_ + turn_slack - floor_) / band));
    for (int tilt = -tilts_; tilt <= tilts_; ++tilt)
        slices_.push_back(slice_at(degrees(tilt)));
}

FreeSpace::Taken FreeSpace::taken_by(Polygon polygon)
{
    const auto [low, high] =
        std::minmax_element(polygon.begin(), polygon.end(), [](Point a, Point b) { return a.y < b.y; });
    const double bottom = low->y, top = high->y;
    return {std::move(polygon), bottom, top};
}

FreeSpace::Slice FreeSpace::slice_at(double at) const
{
    Slice slice;
    slice.floor = asked_.bed + below_middle(asked_.body, at);
    slice.bands.resize(static_cast<std::size_t>(bands_));
    for (const Obstacle& each : asked_.obstacles) {
        const Polygon kept =
            minkowski_sum(polygon(each.box), around_circle(each.clearance + arc_ / 2 + 1e-3, circle_corners));
        for (const Box& part : asked_.body)
            slice.taken.push_back(taken_by(minkowski_sum(kept, mirrored(turned(polygon(part), at)))));
    }
    return slice;
}

// The bed is not grown by the turning: a body is turned at least so far above it, and laid down level.
std::vector<Interval> FreeSpace::free_in(const Slice& slice, int band_number) const
{
    const double low = height(band_number), high = low + band;
    const bool is_level_on_bed = &slice == &slices_[static_cast<std::size_t>(tilts_)];
    if (low < slice.floor + (is_level_on_bed ? -1e-9 : arc_ / 2))
        return {};
    std::vector<Interval> taken;
    for (const Taken& each : slice.taken)
        if (each.bottom <= high && low <= each.top)
            if (const auto covered = covered_between(each.by, low, high))
                taken.push_back(*covered);
    std::sort(taken.begin(), taken.end(), [](Interval a, Interval b) { return a.from < b.from; });
    std::vector<Interval> left;
    double from = across_.from;
    for (const Interval& each : taken) {
        if (each.from > from)
            left.push_back({from, each.from});
        from = std::max(from, each.to);
    }
    if (across_.to > from)
        left.push_back({from, across_.to});
    return left;
}

const std::vector<Interval>& FreeSpace::stretches(int tilt, int band_number)
{
    Slice& slice = slices_[static_cast<std::size_t>(tilt + tilts_)];
    auto& known = slice.bands[static_cast<std::size_t>(band_number)];
    if (!known)
        known = free_in(slice, band_number);
    return *known;
}

double apart(Interval a, Interval b) { return std::max({0.0, a.from - b.to, b.from - a.to}); }
bool overlap(Interval a, Interval b) { return a.from <= b.to && b.from <= a.to; }

class Search {
public:
    explicit Search(const PathAsked& asked) : asked_{asked}, space_{asked} {}
    std::vector<Pose> path();

private:
    Interval stretch(const Node& node)
    {
        return space_.stretches(node.tilt, node.band)[static_cast<std::size_t>(node.stretch)];
    }
    bool is_goal(const Node& node) { return node.tilt == 0 && node.band == 0 && overlap(stretch(node), asked_.laid); }
    double still_to_go(const Node& node)
    {
        return node.band * band + std::abs(node.tilt) * space_.arc() + apart(stretch(node), asked_.laid);
    }
    void offer(const Node& node, const Node& from, double cost);
    void offer_neighbours(const Node& node, double cost);
    std::vector<Node> nodes_to(Node node) const;
    std::vector<Pose> poses_along(const std::vector<Node>& nodes);

    struct Reached {
        double cost = 0;
        Node from;
        bool done = false;
    };
    using Open = std::tuple<double, Node>; // the node breaks ties, so that every run goes the same way

    const PathAsked& asked_;
    FreeSpace space_;
    std::map<Node, Reached> reached_;
    std::priority_queue<Open, std::vector<Open>, std::greater<>> open_;
};

void Search::offer(const Node& node, const Node& from, double cost)
{
    const auto [found, is_new] = reached_.try_emplace(node, Reached{cost, from, false});
    if (!is_new && cost >= found->second.cost)
        return;
    found->second = {cost, from, false};
    open_.emplace(cost + still_to_go(node), node);
}

void Search::offer_neighbours(const Node& node, double cost)
{
    const Interval here = stretch(node);
    for (const auto& [tilt, up, price] :
         {std::tuple{0, -1, band}, {0, 1, band}, {-1, 0, space_.arc()}, {1, 0, space_.arc()}}) {
        Node next{node.tilt + tilt, node.band + up, 0};
        if (std::abs(next.tilt) > space_.tilts() || next.band < 0 || next.band >= space_.bands())
            continue;
        for (const Interval& there : space_.stretches(next.tilt, next.band)) {
            if (overlap(here, there))
                offer(next, node, cost + price);
            ++next.stretch;
        }
    }
}

std::vector<Node> Search::nodes_to(Node node) const
{
    std::vector<Node> nodes{node};
    for (Node from = reached_.at(node).from; from != node; from = reached_.at(node).from)
        nodes.push_back(node = from);
    std::reverse(nodes.begin(), nodes.end());
    return nodes;
}

// x stays where it is unless the next stretch wants another; it moves before the step is made.
std::vector<Pose> Search::poses_along(const std::vector<Node>& nodes)
{
    const auto pose = [&](double x, const Node& at) {
        return Pose{x, space_.height(at.band), space_.degrees(at.tilt)};
    };
    std::vector<Pose> poses;
    // From the laid pipe backwards, so that the way in starts right above where it leads.
    double x =
        std::clamp((asked_.laid.from + asked_.laid.to) / 2, stretch(nodes.back()).from, stretch(nodes.back()).to);
    x = std::clamp(x, asked_.laid.from, asked_.laid.to);
    poses.push_back(pose(x, nodes.back()));
    for (std::size_t i = nodes.size() - 1; i-- > 0;) {
        const Interval here = stretch(nodes[i + 1]), there = stretch(nodes[i]);
        const double next = std::clamp(x, std::max(here.from, there.from), std::min(here.to, there.to));
        if (next != x)
            poses.push_back(pose(next, nodes[i + 1]));
        x = next;
        poses.push_back(pose(x, nodes[i]));
    }
    std::reverse(poses.begin(), poses.end());
    return poses;
}

std::vector<Pose> Search::path()
{
    const Node start{0, space_.bands() - 1, 0};
    offer(start, start, 0);
    while (!open_.empty()) {
        const Node node = std::get<Node>(open_.top());
        open_.pop();
        Reached& here = reached_.at(node);
        if (std::exchange(here.done, true))
            continue;
        if (is_goal(node))
            return poses_along(nodes_to(node));
        offer_neighbours(node, here.cost);
    }
    return {};
}

} // namespace

double reach_of(const Body& body)
{
    double farthest = 1;
    for (const Box& part : body)
        for (const Point& each : polygon(part))
            farthest = std::max(farthest, std::hypot(each.x, each.y));
    return farthest;
}

std::vector<Pose> search_path(const PathAsked& asked) { return Search{asked}.path(); }

} // namespace cotter::rules
