#include "real_size.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace cotter::figures {

RealSize::RealSize(const rules::Box& extent, double width, double height)
    : scale_{std::min(width / std::max(extent.right - extent.left, 1.0),
                      height / std::max(extent.top - extent.bottom, 1.0))},
      left_{extent.left}, bottom_{extent.bottom}, x_{(width - (extent.right - extent.left) * scale_) / 2},
      y_{(height + (extent.top - extent.bottom) * scale_) / 2}
{
}

Point RealSize::at(double x, double y) const { return {x_ + (x - left_) * scale_, y_ - (y - bottom_) * scale_}; }

void RealSize::line(Figure& figure, Point from, Point to, Pen pen) const
{
    figure.add(Line{at(from.x, from.y), at(to.x, to.y), pen});
}

void RealSize::outline(Figure& figure, const std::vector<Point>& corners, Fill fill) const
{
    Polygon polygon{{}, fill};
    for (const Point& each : corners)
        polygon.points.push_back(at(each.x, each.y));
    figure.add(polygon);
}

void RealSize::frame(Figure& figure, const rules::Box& b) const
{
    line(figure, {b.left, b.bottom}, {b.right, b.bottom});
    line(figure, {b.right, b.bottom}, {b.right, b.top});
    line(figure, {b.right, b.top}, {b.left, b.top});
    line(figure, {b.left, b.top}, {b.left, b.bottom});
}

void RealSize::box(Figure& figure, const rules::Box& b, Fill fill) const
{
    outline(figure, {{b.left, b.bottom}, {b.right, b.bottom}, {b.right, b.top}, {b.left, b.top}}, fill);
}

void RealSize::circle(Figure& figure, Point centre, double radius, Pen pen) const
{
    figure.add(Circle{at(centre.x, centre.y), radius * scale_, pen, Fill::none});
}

void RealSize::dimension(Figure& figure, Point from, Point to, const std::string& text, double off) const
{
    Point a = at(from.x, from.y), b = at(to.x, to.y);
    const bool upright = std::abs(b.y - a.y) > std::abs(b.x - a.x);
    (upright ? a.x : a.y) += off;
    (upright ? b.x : b.y) += off;
    figure.add(Arrow{a, b, true});
    if (upright)
        figure.add(Label{{a.x + 1.5, (a.y + b.y) / 2 + capital / 2}, text, Align::left, capital, true, true});
    else
        figure.add(Label{{(a.x + b.x) / 2, (a.y + b.y) / 2 - 1.2}, text, Align::centre, capital, true, true});
}

void hatch(Figure& figure, Point top_left, double width, double height, double apart)
{
    const double step = apart * std::sqrt(2.0);
    for (double c = step; c < width + height; c += step) {
        const double x0 = std::min(c, width), x1 = std::max(0.0, c - height);
        figure.add(Line{{top_left.x + x0, top_left.y + c - x0}, {top_left.x + x1, top_left.y + c - x1}, Pen::thin});
    }
}

std::string in_metres(double mm)
{
    char text[32];
    std::snprintf(text, sizeof text, "%.2f m", mm / 1000);
    return text;
}

} // namespace cotter::figures
