// A standing place from above and in section.

#include "lift_plan.hpp"
#include "physics.hpp"
#include "real_size.hpp"

#include <algorithm>
#include <cmath>

namespace cotter::figures {

using namespace rules;

namespace {

constexpr double margin = 7; // mm of the sheet

Point spot(const MovePoint& p)
{
    return {p.radius * std::cos(radians(p.bearing)), -p.radius * std::sin(radians(p.bearing))};
}

// The trench's near edge from the slew axis.
double near_edge(const MoveAsked& move)
{
    const Footprint& f = move.footprint;
    return move.beside == Beside::in_line ? f.half_length - f.slew_ahead + move.stand_off
                                          : f.half_width + move.stand_off;
}

std::vector<Point> pipe_at(Point middle, double along_degrees, double length, double outside)
{
    const double c = std::cos(radians(along_degrees)), s = std::sin(radians(along_degrees));
    std::vector<Point> corners;
    for (const auto& [u, v] : {std::pair{-0.5, -0.5}, {0.5, -0.5}, {0.5, 0.5}, {-0.5, 0.5}})
        corners.push_back({middle.x + u * length * c - v * outside * s, middle.y + u * length * s + v * outside * c});
    return corners;
}

void draw_trench_from_above(Figure& figure, const RealSize& real, const StandDrawn& stand)
{
    const MoveAsked& move = stand.move;
    const double edge = near_edge(move), reach = stand.zone, half = move.trench_width / 2;
    if (move.beside == Beside::in_line) {
        for (const double y : {-half, half})
            real.line(figure, {edge, y}, {reach, y}, Pen::thick);
        real.line(figure, {edge, -half}, {edge, half}, Pen::thick);
        return;
    }
    for (const double y : {-edge, -edge - move.trench_width})
        real.line(figure, {-reach, y}, {reach, y}, Pen::thick);
}

void draw_machine_from_above(Figure& figure, const RealSize& real, const StandDrawn& stand)
{
    const Footprint& f = stand.move.footprint;
    const double left = -f.half_length - f.slew_ahead, right = f.half_length - f.slew_ahead;
    const double shoe = f.half_width * 0.4;
    real.box(figure, {left, f.half_width - shoe, right, f.half_width}, Fill::steel);
    real.box(figure, {left, -f.half_width, right, -f.half_width + shoe}, Fill::steel);
    real.circle(figure, {0, 0}, stand.tail_swing, Pen::thin);
    real.line(figure, {-600, 0}, {600, 0}, Pen::chain);
    real.line(figure, {0, -600}, {0, 600}, Pen::chain);
}

// The way of the lift point: out at the stack, round with the slew, in over the trench.
void draw_slew(Figure& figure, const RealSize& real, const std::vector<MovePoint>& points)
{
    constexpr int steps = 24;
    MovePoint at = points.at(1);
    Point last = spot(points.front());
    for (int i = 0; i <= steps; ++i) {
        at.bearing = points[1].bearing + (points[2].bearing - points[1].bearing) * i / steps;
        real.line(figure, last, spot(at), Pen::dashed);
        last = spot(at);
    }
    real.line(figure, last, spot(points.back()), Pen::dashed);
}

void label(Figure& figure, const RealSize& real, Point at, const std::string& text, double up = 1.5)
{
    const Point on_sheet = real.at(at.x, at.y);
    figure.add(Label{{on_sheet.x, on_sheet.y - up}, text, Align::centre, capital, true, true});
}

} // namespace

Figure from_above(const StandDrawn& stand, double width, double height)
{
    Figure figure{width, height, {}};
    const auto points = move_points(stand.move);
    const RealSize real{{-stand.zone, -stand.zone, stand.zone, stand.zone}, width - 2 * margin, height - 2 * margin};
    Figure inner{width, height, {}};
    real.circle(inner, {0, 0}, stand.zone, Pen::dashed);
    draw_trench_from_above(inner, real, stand);
    draw_machine_from_above(inner, real, stand);
    draw_slew(inner, real, points);
    const Point pick = spot(points.front()), laid = spot(points.back());
    real.outline(inner, pipe_at(pick, 90 - points.front().bearing, stand.pipe_length, stand.move.outside), Fill::paper);
    real.outline(inner, pipe_at(laid, 0, stand.pipe_length, stand.move.outside), Fill::paper);
    real.dimension(inner, {0, 0}, laid, in_metres(points.back().radius));
    const double past = 1 + (stand.pipe_length / 2 + 600) / std::max(points.front().radius, 1.0);
    label(inner, real, {pick.x * past, pick.y * past}, "the stack", 4.2);
    label(inner, real, {pick.x * past, pick.y * past}, in_metres(points.front().radius), 0);
    label(inner, real, {0, stand.zone}, "nobody inside", 1.5);
    label(inner, real, {0, stand.zone}, in_metres(std::ceil(stand.zone / 10) * 10), -2.7);
    const double edge = near_edge(stand.move);
    if (stand.move.beside == Beside::alongside)
        real.dimension(inner, {-stand.zone * 0.55, -stand.move.footprint.half_width}, {-stand.zone * 0.55, -edge},
                       in_metres(stand.move.stand_off));
    else {
        const double y = pick.y > 0 ? -stand.zone * 0.3 : stand.zone * 0.3; // away from the stack
        real.dimension(inner, {edge - stand.move.stand_off, y}, {edge, y}, in_metres(stand.move.stand_off));
    }
    return moved(std::move(inner), margin, margin);
}

namespace {

void draw_pipe_end(Figure& figure, Point middle, double radius)
{
    const double bore = radius * 0.78;
    figure.add(Circle{middle, radius, Pen::thick, Fill::paper});
    figure.add(HatchedRing{middle, radius, bore});
    figure.add(Circle{middle, bore, Pen::thick, Fill::none});
}

// Short strokes under the line, as ground is drawn.
void draw_earth(Figure& figure, const RealSize& real, double from, double to, double level)
{
    constexpr double apart = 4, stroke = 1.8; // mm of the sheet
    const Point a = real.at(from, level), b = real.at(to, level);
    for (double x = a.x + 1; x < b.x - 1; x += apart)
        figure.add(Line{{x + stroke, a.y}, {x, a.y + stroke}, Pen::thin});
}

// Ground with its trench; behind the end of a trench only the near side is cut.
void draw_ground(Figure& figure, const RealSize& real, const StandDrawn& stand, double left, double right)
{
    const double edge = near_edge(stand.move), bed = -stand.move.bed;
    const double far = stand.move.beside == Beside::in_line ? right : edge + stand.move.trench_width;
    real.line(figure, {left, 0}, {edge, 0}, Pen::thick);
    real.line(figure, {edge, 0}, {edge, bed}, Pen::thick);
    real.line(figure, {edge, bed}, {far, bed}, Pen::thick);
    draw_earth(figure, real, left, edge, 0);
    draw_earth(figure, real, edge, far, bed);
    if (far < right) {
        real.line(figure, {far, bed}, {far, 0}, Pen::thick);
        real.line(figure, {far, 0}, {right, 0}, Pen::thick);
        draw_earth(figure, real, far, right, 0);
    }
    real.line(figure, {edge, bed}, {edge + bed, 0}, Pen::chain);
    const Point foot = real.at(edge + bed / 2, bed / 2);
    figure.add(Label{{foot.x - 2, foot.y + capital}, "45\u00b0", Align::right, capital});
}

void draw_machine_in_section(Figure& figure, const RealSize& real, const MoveAsked& move, Point pin)
{
    const Footprint& f = move.footprint;
    const bool along = move.beside == Beside::in_line;
    const double left = along ? -f.half_length - f.slew_ahead : -f.half_width,
                 right = along ? f.half_length - f.slew_ahead : f.half_width;
    if (along)
        real.box(figure, {left, 0, right, 800}, Fill::steel);
    else
        for (const double x : {left, right - 600})
            real.box(figure, {x, 0, x + 600, 800}, Fill::steel);
    real.box(figure, {-1400, 1000, 1200, 2700}, Fill::paper);
    real.line(figure, {0, -300}, {0, 3000}, Pen::chain);
    const Point knee{pin.x * 0.55, std::max(pin.y, 1500.0) + 1500};
    real.line(figure, {600, 1600}, knee, Pen::thick);
    real.line(figure, knee, pin, Pen::thick);
}

} // namespace

Figure in_section(const StandDrawn& stand, double width, double height)
{
    const MoveAsked& move = stand.move;
    const auto points = move_points(move);
    const double edge = near_edge(move),
                 across = move.beside == Beside::in_line ? points.back().radius : edge + move.trench_width / 2;
    const double left = -std::max(move.bed, 3000.0), right = std::max(across, edge + move.trench_width) + 3400;
    const double top = std::max(points[2].height, 1500.0) + 2700;
    Figure inner{width, height, {}};
    const RealSize real{{left, -move.bed - 400, right, top}, width - 2 * margin, height - 2 * margin};
    draw_ground(inner, real, stand, left, right);
    draw_machine_in_section(inner, real, move, {across, points[2].height});
    const double r = move.outside / 2, half = move.beside == Beside::alongside ? r : stand.pipe_length / 2;
    for (const double underside : {points[2].height - move.pin_above_crown - move.outside, -move.bed})
        if (move.beside == Beside::alongside)
            draw_pipe_end(inner, real.at(across, underside + r), r * real.scale());
        else
            real.box(inner,
                     {across - stand.pipe_length / 2, underside, across + stand.pipe_length / 2, underside + 2 * r},
                     Fill::paper);
    real.line(inner, {across, points[2].height}, {across, -move.bed}, Pen::dashed);
    real.dimension(inner, {right - 1900, 0}, {right - 1900, -move.bed}, in_metres(move.bed));
    real.dimension(inner, {edge - move.stand_off, 0}, {edge, 0}, in_metres(move.stand_off), 7);
    real.dimension(inner, {across + half + 300, 0}, {across + half + 300, points[2].height},
                   in_metres(points[2].height));
    real.dimension(inner, {0, top - 500}, {across, top - 500}, in_metres(across));
    return moved(std::move(inner), margin, margin);
}

} // namespace cotter::figures
