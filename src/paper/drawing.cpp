// Signs and figures on the page, as on the screen.

#include "canvas.hpp"

#include <cairo.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace cotter::paper {

namespace {

// Source: ISO 3864-4 as tabulated, RAL 3001, 1003, 5005, 6032; the same as on the screen.
constexpr Colour red{0x9B / 255.0, 0x24 / 255.0, 0x23 / 255.0}, yellow{0xF9 / 255.0, 0xA8 / 255.0, 0},
    blue{0, 0x53 / 255.0, 0x87 / 255.0}, green{0x23 / 255.0, 0x7F / 255.0, 0x52 / 255.0};

void circle(cairo_t* cairo, double x, double y, double radius)
{
    cairo_new_sub_path(cairo);
    cairo_arc(cairo, pt(x), pt(y), pt(radius), 0, 2 * std::numbers::pi);
}

void path(cairo_t* cairo, const std::vector<figures::Point>& points)
{
    for (const figures::Point& each : points)
        cairo_line_to(cairo, pt(each.x), pt(each.y));
}

void arrow_head(cairo_t* cairo, figures::Point tip, figures::Point from)
{
    constexpr double size = 2.4, spread = 0.18;
    const double angle = std::atan2(tip.y - from.y, tip.x - from.x);
    const auto corner = [&](double turn) {
        return figures::Point{tip.x - size * std::cos(angle + turn), tip.y - size * std::sin(angle + turn)};
    };
    path(cairo, {tip, corner(spread), corner(-spread)});
    cairo_close_path(cairo);
    cairo_fill(cairo);
}

Colour fill_colour(figures::Fill fill)
{
    return fill == figures::Fill::steel ? steel : fill == figures::Fill::ink ? ink : white;
}

double pen_width(figures::Pen pen) { return pen == figures::Pen::thick ? thick_mm : thin_mm; }

void dash(cairo_t* cairo, figures::Pen pen)
{
    const double chain[] = {pt(5), pt(1), pt(1), pt(1)}, dashed[] = {pt(1.6), pt(1)};
    if (pen == figures::Pen::chain)
        cairo_set_dash(cairo, chain, 4, 0);
    else if (pen == figures::Pen::dashed)
        cairo_set_dash(cairo, dashed, 2, 0);
}

void stop_sign(cairo_t* cairo, const Canvas& canvas, double x, double y, double r)
{
    const double ring = r * 0.22, d = (r - ring / 2) * std::numbers::sqrt2 / 2;
    canvas.colour(white);
    circle(cairo, x, y, r);
    cairo_fill(cairo);
    canvas.colour(red);
    cairo_set_line_width(cairo, pt(ring));
    circle(cairo, x, y, r - ring / 2);
    cairo_stroke(cairo);
    canvas.line(x - d, y - d, x + d, y + d, ring);
}

void warning_sign(cairo_t* cairo, const Canvas& canvas, double x, double y, double r)
{
    const double h = r * 0.95;
    path(cairo, {{x, y - h}, {x - r, y + h * 0.8}, {x + r, y + h * 0.8}});
    cairo_close_path(cairo);
    canvas.colour(yellow);
    cairo_fill_preserve(cairo);
    canvas.colour(ink);
    cairo_set_line_width(cairo, pt(r * 0.13));
    cairo_stroke(cairo);
    canvas.fill(x - r * 0.09, y - h * 0.3, r * 0.18, h * 0.6);
    circle(cairo, x, y + h * 0.52, r * 0.11);
    cairo_fill(cairo);
}

void in_order_sign(cairo_t* cairo, const Canvas& canvas, double x, double y, double r)
{
    canvas.colour(green);
    canvas.fill(x - r, y - r, 2 * r, 2 * r);
    canvas.colour(white);
    cairo_set_line_width(cairo, pt(r * 0.22));
    path(cairo, {{x - r * 0.5, y}, {x - r * 0.1, y + r * 0.42}, {x + r * 0.55, y - r * 0.45}});
    cairo_stroke(cairo);
}

} // namespace

void Canvas::sign(figures::Sign sign, double x, double y, double size) const
{
    const double r = size / 2;
    cairo_new_path(cairo_);
    switch (sign) {
    case figures::Sign::stop: stop_sign(cairo_, *this, x, y, r); break;
    case figures::Sign::warning: warning_sign(cairo_, *this, x, y, r); break;
    case figures::Sign::to_do:
        colour(blue);
        circle(cairo_, x, y, r);
        cairo_fill(cairo_);
        break;
    case figures::Sign::in_order: in_order_sign(cairo_, *this, x, y, r); break;
    }
    colour(ink);
}

void Canvas::draw(const figures::Line& line) const
{
    dash(cairo_, line.pen);
    colour(line.pen == figures::Pen::thick ? ink : second);
    this->line(line.from.x, line.from.y, line.to.x, line.to.y, pen_width(line.pen));
    cairo_set_dash(cairo_, nullptr, 0, 0);
}

void Canvas::draw(const figures::Arrow& arrow) const
{
    colour(ink);
    line(arrow.from.x, arrow.from.y, arrow.to.x, arrow.to.y, thin_mm);
    arrow_head(cairo_, arrow.to, arrow.from);
    if (arrow.both_ends)
        arrow_head(cairo_, arrow.from, arrow.to);
}

void Canvas::draw(const figures::Polygon& polygon) const
{
    path(cairo_, polygon.points);
    cairo_close_path(cairo_);
    if (polygon.fill != figures::Fill::none) {
        colour(fill_colour(polygon.fill));
        cairo_fill_preserve(cairo_);
    }
    colour(ink);
    cairo_set_line_width(cairo_, pt(thick_mm));
    cairo_stroke(cairo_);
}

void Canvas::draw(const figures::Circle& round) const
{
    circle(cairo_, round.centre.x, round.centre.y, round.radius);
    if (round.fill != figures::Fill::none) {
        colour(fill_colour(round.fill));
        cairo_fill_preserve(cairo_);
    }
    colour(ink);
    cairo_set_line_width(cairo_, pt(pen_width(round.pen)));
    cairo_stroke(cairo_);
}

// 45 degree hatching between two circles: the ring is the clip, the lines run across.
void Canvas::draw(const figures::HatchedRing& ring) const
{
    constexpr double spacing = 2.2 * std::numbers::sqrt2;
    cairo_save(cairo_);
    cairo_set_fill_rule(cairo_, CAIRO_FILL_RULE_EVEN_ODD);
    circle(cairo_, ring.centre.x, ring.centre.y, ring.outer);
    circle(cairo_, ring.centre.x, ring.centre.y, ring.inner);
    cairo_clip(cairo_);
    colour(second);
    const double r = ring.outer, x = ring.centre.x, y = ring.centre.y;
    for (double at = -2 * r; at <= 2 * r; at += spacing)
        line(x + at - r, y + r, x + at + r, y - r, thin_mm * 0.7);
    cairo_restore(cairo_);
}

void Canvas::draw(const figures::Label& label) const
{
    const Letter letter = label.lettering ? Letter::drawing : label.capital > 3 ? Letter::bold : Letter::small;
    const Lines set = lines(letter, label.text, 10'000);
    const double share = label.align == figures::Align::left ? 0 : label.align == figures::Align::right ? 1 : 0.5;
    const double left = label.at.x - set.width() * share, top = label.at.y - capital_mm(letter);
    if (label.breaks_lines) {
        colour(white);
        fill(left - 0.6, top - 0.6, set.width() + 1.2, capital_mm(letter) + 1.2);
    }
    colour(letter == Letter::small ? second : ink);
    set.draw(0, left, top);
}

void Canvas::draw(const figures::Mark& mark) const { sign(mark.sign, mark.centre.x, mark.centre.y, mark.size); }

void Canvas::figure(const figures::Figure& figure, double x, double y) const
{
    cairo_save(cairo_);
    cairo_translate(cairo_, pt(x), pt(y));
    for (const figures::Shape& each : figure.shapes)
        std::visit([&](const auto& shape) { draw(shape); }, each);
    cairo_restore(cairo_);
    colour(ink);
}

} // namespace cotter::paper
