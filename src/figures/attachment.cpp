#include "attachment.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace cotter::figures {

namespace {

struct Bounds {
    double left = 0, right = 0, top = 0, bottom = 0;
    void take(Point p)
    {
        left = std::min(left, p.x);
        right = std::max(right, p.x);
        top = std::min(top, p.y);
        bottom = std::max(bottom, p.y);
    }
};

// From millimetres of the thing to millimetres of the sheet.
struct View {
    double scale = 1;
    Point origin;
    Point at(Point p) const { return {origin.x + p.x * scale, origin.y + p.y * scale}; }
};

Point moved_outward(Point p, double by)
{
    const double length = std::hypot(p.x, p.y);
    return length < 1 ? p : Point{p.x * (length + by) / length, p.y * (length + by) / length};
}

std::vector<Point> placed(const Outline& outline, const AttachmentPicture& picture, bool mirror)
{
    const double by = outline.follows_barrel && picture.barrel > 0 ? (picture.barrel - picture.middle_barrel) / 2 : 0;
    std::vector<Point> points;
    for (const Point& each : outline.points) {
        const Point moved = moved_outward(each, by);
        points.push_back(mirror ? Point{-moved.x, moved.y} : moved);
    }
    return points;
}

std::vector<std::vector<Point>> all_outlines(const AttachmentPicture& picture)
{
    std::vector<std::vector<Point>> all;
    for (const Outline& each : picture.outlines) {
        all.push_back(placed(each, picture, false));
        if (each.mirrored)
            all.push_back(placed(each, picture, true));
    }
    return all;
}

Bounds bounds_of(const AttachmentPicture& picture, const std::vector<std::vector<Point>>& outlines)
{
    Bounds bounds;
    const double r = picture.barrel / 2;
    bounds.take({-r, -r});
    bounds.take({r, r});
    for (const auto& points : outlines)
        for (const Point& p : points)
            bounds.take(p);
    for (const StatePlace& state : picture.states) {
        bounds.take({state.at.x - 90, state.at.y - 60});
        bounds.take({state.at.x + 200, state.at.y + 60});
    }
    return bounds;
}

constexpr double below = 13; // room for the dimension under the pipe

View fitted(const Bounds& b, double width, double height)
{
    View view;
    view.scale = std::min(width / std::max(b.right - b.left, 1.0), (height - below) / std::max(b.bottom - b.top, 1.0));
    view.origin.x = (width - (b.right - b.left) * view.scale) / 2 - b.left * view.scale;
    view.origin.y = -b.top * view.scale;
    return view;
}

void add_pipe(Figure& figure, const View& view, const AttachmentPicture& picture)
{
    const Point centre = view.at({0, 0});
    const double outer = picture.barrel / 2 * view.scale, inner = picture.bore / 2 * view.scale;
    figure.add(Circle{centre, outer, Pen::thick, Fill::paper});
    figure.add(HatchedRing{centre, outer, inner});
    figure.add(Circle{centre, inner, Pen::thick, Fill::paper});
    figure.add(Line{{centre.x - outer - 3, centre.y}, {centre.x + outer + 3, centre.y}, Pen::chain});
    figure.add(Line{{centre.x, centre.y - outer - 3}, {centre.x, centre.y + outer + 3}, Pen::chain});
}

void add_diameter(Figure& figure, const View& view, const AttachmentPicture& picture)
{
    const Point centre = view.at({0, 0});
    const double outer = picture.barrel / 2 * view.scale, y = centre.y + outer + 9;
    for (const double x : {centre.x - outer, centre.x + outer})
        figure.add(Line{{x, centre.y}, {x, y + 1.5}, Pen::thin});
    figure.add(Arrow{{centre.x - outer, y}, {centre.x + outer, y}, true});
    char text[32];
    std::snprintf(text, sizeof text, "\u00d8 %.0f", picture.barrel);
    const bool has_room = outer > text_width(text, 2.8) + 5; // beside the axis; else after the arrow
    figure.add(Label{has_room ? Point{centre.x + 2.5, y - 1.2} : Point{centre.x + outer + 2, y + 1.4}, text,
                     Align::left, 2.8});
}

// Holes that stand close are drawn smaller, so that none lies on another.
double hole_radius(const View& view, const std::vector<StatePlace>& states)
{
    double radius = 2.1;
    for (std::size_t i = 1; i < states.size(); ++i) {
        const Point a = view.at(states[i - 1].at), b = view.at(states[i].at);
        radius = std::min(radius, std::hypot(a.x - b.x, a.y - b.y) * 0.34);
    }
    return radius;
}

// A state is a hole; a pin fills the one that stands, a ring surrounds each that is wanted.
void add_state(Figure& figure, const View& view, const StatePlace& state, double radius)
{
    const Point at = view.at(state.at);
    if (state.wanted)
        figure.add(Circle{at, radius * 1.55, Pen::thick, Fill::none});
    figure.add(Circle{at, radius, Pen::thin, Fill::paper});
    if (state.stands)
        figure.add(Circle{at, radius * 0.75, Pen::thin, Fill::ink});
    figure.add(Label{{at.x + radius * 1.55 + 3.4, at.y + 1.4}, state.name, Align::left, 2.8, true, true});
}

Point target_of(const Note& note, const AttachmentPicture& picture, const View& view, const Bounds& bounds)
{
    switch (note.to) {
    case Note::To::head: return view.at({0, bounds.top + (bounds.bottom - bounds.top) * 0.04});
    case Note::To::pipe: return view.at({-picture.barrel / 2 * 0.7, picture.barrel / 2 * 0.7});
    case Note::To::hole:
        for (const StatePlace& each : picture.states)
            if (each.stands)
                return view.at(each.at);
        return view.at(picture.states.empty() ? Point{} : picture.states.front().at);
    }
    return view.at({});
}

void add_notes(Figure& figure, const View& view, const AttachmentPicture& picture, const Bounds& bounds)
{
    constexpr double radius = 3.6, step = 12;
    double y = radius + 1;
    for (const Note& note : picture.notes) {
        const Point at{radius + 1, y}, to = target_of(note, picture, view, bounds);
        figure.add(Line{{at.x + radius, at.y}, to, Pen::thin});
        figure.add(Circle{to, 0.7, Pen::thin, Fill::ink});
        figure.add(Circle{at, radius, Pen::thick, Fill::paper});
        figure.add(Label{{at.x, at.y + capital / 2}, note.number, Align::centre, capital});
        y += step;
    }
}

} // namespace

Figure attachment(const AttachmentPicture& picture, double width, double height)
{
    Figure figure{width, height, {}};
    const auto outlines = all_outlines(picture);
    const Bounds bounds = bounds_of(picture, outlines);
    const double beside = picture.notes.empty() ? 0 : 12; // the notes' column
    View view = fitted(bounds, width - beside, height);
    view.origin.x += beside;
    if (picture.barrel > 0)
        add_pipe(figure, view, picture);
    for (const auto& points : outlines) {
        Polygon polygon{{}, Fill::steel};
        for (const Point& p : points)
            polygon.points.push_back(view.at(p));
        figure.add(std::move(polygon));
    }
    for (const StatePlace& state : picture.states)
        add_state(figure, view, state, hole_radius(view, picture.states));
    if (picture.barrel > 0)
        add_diameter(figure, view, picture);
    add_notes(figure, view, picture, bounds);
    return figure;
}

} // namespace cotter::figures
