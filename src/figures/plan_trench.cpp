// The path of a pipe with its attachment into the trench, one step of it.

#include "lift_plan.hpp"
#include "real_size.hpp"

#include <algorithm>

namespace cotter::figures {

using namespace rules;

namespace {

std::vector<rules::Point> corners_at(const rules::Box& part, const Pose& at)
{
    std::vector<rules::Point> corners = turned(polygon(part), at.tilt);
    for (rules::Point& each : corners)
        each = {each.x + at.x, each.y + at.y};
    return corners;
}

void take_in(rules::Box& extent, const rules::Box& b)
{
    extent = {std::min(extent.left, b.left), std::min(extent.bottom, b.bottom), std::max(extent.right, b.right),
              std::max(extent.top, b.top)};
}

rules::Box extent_of(const PathAsked& asked, const std::vector<Pose>& path, double ground)
{
    rules::Box extent{asked.laid.from, asked.bed, asked.laid.to, ground};
    for (const Obstacle& each : asked.obstacles)
        take_in(extent, each.box);
    for (const Pose& pose : path)
        for (const Box& part : asked.body)
            for (const rules::Point& each : corners_at(part, pose))
                take_in(extent, {each.x, each.y, each.x, each.y});
    return {extent.left - 1300, extent.bottom - 300, extent.right + 1300, extent.top + 300};
}

void draw_body(Figure& figure, const RealSize& real, const PathAsked& asked, const Pose& at, Fill fill)
{
    for (const Box& part : asked.body) {
        std::vector<Point> corners;
        for (const rules::Point& each : corners_at(part, at))
            corners.push_back({each.x, each.y});
        real.outline(figure, corners, fill);
    }
}

// What stands on the bed is the pipe already laid; what hangs over it is a strut or a waling.
void draw_obstacles(Figure& figure, const RealSize& real, const PathAsked& asked)
{
    for (const Obstacle& each : asked.obstacles) {
        real.box(figure, each.box, Fill::steel);
        const bool lies = each.box.bottom <= asked.bed;
        const Point at = lies ? real.at((each.box.left + each.box.right) / 2, (each.box.bottom + each.box.top) / 2)
                              : real.at((each.box.left + each.box.right) / 2, each.box.bottom);
        figure.add(Label{{at.x, at.y + (lies ? capital / 2 : capital + 1.5)},
                         lies ? "laid pipe" : "strut",
                         Align::centre,
                         capital,
                         true,
                         lies});
    }
}

// Clear between the two struts that the path goes through.
void draw_gap(Figure& figure, const RealSize& real, const PathAsked& asked, const Pose& end)
{
    const Box *before = nullptr, *after = nullptr;
    for (const Obstacle& each : asked.obstacles) {
        if (each.box.bottom <= asked.bed)
            continue;
        if (each.box.right <= end.x && (!before || each.box.right > before->right))
            before = &each.box;
        if (each.box.left >= end.x && (!after || each.box.left < after->left))
            after = &each.box;
    }
    if (before && after)
        real.dimension(figure, {before->right, before->top}, {after->left, before->top},
                       in_metres(after->left - before->right), -4);
}

void draw_levels(Figure& figure, const RealSize& real, const rules::Box& extent, double bed, double ground)
{
    real.line(figure, {extent.left, bed}, {extent.right, bed}, Pen::thick);
    real.line(figure, {extent.left, ground}, {extent.right, ground}, Pen::chain);
    const Point top = real.at(extent.left, ground);
    figure.add(Label{{top.x + 1, top.y - 1.5}, "ground", Align::left, capital, true, true});
    real.dimension(figure, {extent.right - 300, bed}, {extent.right - 300, ground}, in_metres(ground - bed), -13);
}

} // namespace

Figure in_trench(const TrenchDrawn& drawn, double width, double height)
{
    constexpr double margin = 4;
    const PathAsked& asked = drawn.asked;
    Figure inner{width, height, {}};
    const rules::Box extent = extent_of(asked, drawn.path, drawn.ground);
    const RealSize real{extent, width - 2 * margin, height - 2 * margin};
    draw_levels(inner, real, extent, asked.bed, drawn.ground);
    if (!drawn.path.empty())
        draw_body(inner, real, asked, drawn.path.back(), Fill::none);
    draw_obstacles(inner, real, asked);
    if (!drawn.path.empty())
        draw_body(inner, real, asked, drawn.path.at(std::min(drawn.step, drawn.path.size() - 1)), Fill::paper);
    for (std::size_t i = 0; i + 1 < drawn.path.size(); ++i)
        real.line(inner, {drawn.path[i].x, drawn.path[i].y}, {drawn.path[i + 1].x, drawn.path[i + 1].y}, Pen::dashed);
    if (!drawn.path.empty())
        draw_gap(inner, real, asked, drawn.path.back());
    return moved(std::move(inner), margin, margin);
}

} // namespace cotter::figures
