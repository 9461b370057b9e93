// The path of a pipe with its attachment into the trench, one step of it.

#include "lift_plan.hpp"
#include "real_size.hpp"

#include <algorithm>

namespace cotter::figures {

using namespace rules;

namespace {

rules::Box extent_of(const PathAsked& asked, const std::vector<Pose>& path)
{
    rules::Box extent{asked.laid.from, asked.bed, asked.laid.to, asked.bed + 1000};
    for (const Obstacle& each : asked.obstacles)
        extent = {std::min(extent.left, each.box.left), extent.bottom, std::max(extent.right, each.box.right),
                  std::max(extent.top, each.box.top)};
    for (const Pose& each : path)
        extent.top = std::max(extent.top, each.y);
    return {extent.left, extent.bottom - 200, extent.right, extent.top + 300};
}

void draw_body(Figure& figure, const RealSize& real, const PathAsked& asked, const Pose& at, Fill fill)
{
    for (const Box& part : asked.body) {
        std::vector<Point> corners;
        for (const rules::Point& each : turned(polygon(part), at.tilt))
            corners.push_back({each.x + at.x, each.y + at.y});
        real.outline(figure, corners, fill);
    }
}

} // namespace

Figure in_trench(const PathAsked& asked, const std::vector<Pose>& path, std::size_t step, double width, double height)
{
    constexpr double margin = 4;
    Figure inner{width, height, {}};
    const rules::Box extent = extent_of(asked, path);
    const RealSize real{extent, width - 2 * margin, height - 2 * margin};
    real.line(inner, {extent.left, asked.bed}, {extent.right, asked.bed}, Pen::thick);
    for (const Obstacle& each : asked.obstacles)
        real.box(inner, {each.box.left, each.box.bottom, each.box.right, each.box.top}, Fill::steel);
    if (path.empty())
        return moved(std::move(inner), margin, margin);
    draw_body(inner, real, asked, path.back(), Fill::none);
    draw_body(inner, real, asked, path.at(std::min(step, path.size() - 1)), Fill::paper);
    for (std::size_t i = 0; i + 1 < path.size(); ++i)
        real.line(inner, {path[i].x, path[i].y}, {path[i + 1].x, path[i + 1].y}, Pen::dashed);
    return moved(std::move(inner), margin, margin);
}

} // namespace cotter::figures
