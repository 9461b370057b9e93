// Signs and figures on the screen.

#include "sheet.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace cotter::ui {

namespace {

using figures::Sign;

ImU32 fill_colour(figures::Fill fill)
{
    switch (fill) {
    case figures::Fill::none: return 0;
    case figures::Fill::paper: return colours().sheet;
    case figures::Fill::steel: return colours().steel;
    case figures::Fill::ink: return colours().ink;
    }
    return 0;
}

double pen_width(figures::Pen pen) { return pen == figures::Pen::thick ? thick_mm : thin_mm; }

// Dash lengths of a line, mm: drawn, gap, drawn, gap.
struct Dashes {
    double a, gap1, b, gap2;
};

void broken_line(ImDrawList* list, ImVec2 from, ImVec2 to, const Dashes& d, double px_per_mm, float thickness,
                 ImU32 colour)
{
    const float dx = to.x - from.x, dy = to.y - from.y, length = std::hypot(dx, dy);
    const double steps[] = {d.a * px_per_mm, d.gap1 * px_per_mm, d.b * px_per_mm, d.gap2 * px_per_mm};
    float at = 0;
    for (int i = 0; at < length; ++i) {
        const float end = std::min(length, at + static_cast<float>(steps[i % 4]));
        if (i % 2 == 0)
            list->AddLine({from.x + dx * at / length, from.y + dy * at / length},
                          {from.x + dx * end / length, from.y + dy * end / length}, colour, thickness);
        at = end;
    }
}

void arrow_head(ImDrawList* list, ImVec2 tip, ImVec2 from, float size, ImU32 colour)
{
    const float angle = std::atan2(tip.y - from.y, tip.x - from.x), spread = 0.18F;
    const auto corner = [&](float turn) {
        return ImVec2{tip.x - size * std::cos(angle + turn), tip.y - size * std::sin(angle + turn)};
    };
    list->AddTriangleFilled(tip, corner(spread), corner(-spread), colour);
}

// A polygon of any shape without crossing edges, cut into triangles ear by ear; ImGui fills only convex ones.
double turn(ImVec2 a, ImVec2 b, ImVec2 c)
{
    return static_cast<double>((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
}

bool is_inside(ImVec2 p, ImVec2 a, ImVec2 b, ImVec2 c)
{
    return turn(a, b, p) >= 0 && turn(b, c, p) >= 0 && turn(c, a, p) >= 0;
}

bool is_ear(const std::vector<ImVec2>& points, std::size_t i)
{
    const std::size_t n = points.size();
    const ImVec2 a = points[(i + n - 1) % n], b = points[i], c = points[(i + 1) % n];
    if (turn(a, b, c) <= 0)
        return false;
    for (std::size_t k = 0; k < n; ++k)
        if (k != i && k != (i + 1) % n && k != (i + n - 1) % n && is_inside(points[k], a, b, c))
            return false;
    return true;
}

void fill_polygon(ImDrawList* list, std::vector<ImVec2> points, ImU32 colour)
{
    double area = 0;
    for (std::size_t i = 0; i < points.size(); ++i)
        area += turn({0, 0}, points[i], points[(i + 1) % points.size()]);
    if (area < 0)
        std::reverse(points.begin(), points.end());
    const ImDrawListFlags flags = list->Flags;
    list->Flags &= ~ImDrawListFlags_AntiAliasedFill; // no seams between the triangles
    while (points.size() >= 3) {
        std::size_t ear = 0;
        while (ear + 1 < points.size() && !is_ear(points, ear))
            ++ear;
        const std::size_t n = points.size();
        list->AddTriangleFilled(points[(ear + n - 1) % n], points[ear], points[(ear + 1) % n], colour);
        points.erase(points.begin() + static_cast<std::ptrdiff_t>(ear));
    }
    list->Flags = flags;
}

} // namespace

namespace {

void stop_sign(ImDrawList* list, ImVec2 c, float r)
{
    const float ring = r * 0.22F, d = (r - ring / 2) * 0.7071F;
    list->AddCircleFilled(c, r, sign_white, 48);
    list->AddCircle(c, r - ring / 2, sign_red, 64, ring);
    list->AddLine({c.x - d, c.y - d}, {c.x + d, c.y + d}, sign_red, ring);
}

void warning_sign(ImDrawList* list, ImVec2 c, float r)
{
    const float h = r * 0.95F;
    const ImVec2 a{c.x, c.y - h}, b{c.x - r, c.y + h * 0.8F}, d{c.x + r, c.y + h * 0.8F};
    list->AddTriangleFilled(a, b, d, sign_yellow);
    list->AddTriangle(a, b, d, sign_black, std::max(1.5F, r * 0.13F));
    list->AddRectFilled({c.x - r * 0.09F, c.y - h * 0.3F}, {c.x + r * 0.09F, c.y + h * 0.3F}, sign_black);
    list->AddCircleFilled({c.x, c.y + h * 0.52F}, r * 0.11F, sign_black, 16);
}

void in_order_sign(ImDrawList* list, ImVec2 c, float r)
{
    list->AddRectFilled({c.x - r, c.y - r}, {c.x + r, c.y + r}, sign_green);
    const ImVec2 tick[] = {
        {c.x - r * 0.5F, c.y}, {c.x - r * 0.1F, c.y + r * 0.42F}, {c.x + r * 0.55F, c.y - r * 0.45F}};
    list->AddPolyline(tick, 3, sign_white, 0, r * 0.22F);
}

// On the night sheet a sign stands on white, a sixth of its half size round about.
void backing(ImDrawList* list, Sign sign, ImVec2 c, float r)
{
    const float more = std::max(1.5F, r / 6);
    if (sign == Sign::in_order)
        list->AddRectFilled({c.x - r - more, c.y - r - more}, {c.x + r + more, c.y + r + more}, sign_white);
    else if (sign == Sign::warning)
        list->AddTriangleFilled({c.x, c.y - r * 0.95F - 2.4F * more},
                                {c.x - r - 2 * more, c.y + r * 0.76F + 1.2F * more},
                                {c.x + r + 2 * more, c.y + r * 0.76F + 1.2F * more}, sign_white);
    else
        list->AddCircleFilled(c, r + more, sign_white, 64);
}

} // namespace

void Sheet::sign(Sign sign, double x, double y, double size)
{
    const float r = theme_.px(size / 2);
    const ImVec2 c = px(x, y);
    if (is_night())
        backing(list_, sign, c, r);
    switch (sign) {
    case Sign::stop: stop_sign(list_, c, r); break;
    case Sign::warning: warning_sign(list_, c, r); break;
    case Sign::to_do: list_->AddCircleFilled(c, r, sign_blue, 48); break;
    case Sign::in_order: in_order_sign(list_, c, r); break;
    }
}

void Sheet::draw(const figures::HatchedRing& ring, double x, double y)
{
    const double spacing = 2.2, cx = x + ring.centre.x, cy = y + ring.centre.y;
    for (double offset = -ring.outer * 1.42; offset <= ring.outer * 1.42; offset += spacing) {
        const double d = offset / std::numbers::sqrt2; // distance of the 45 degree line from the centre
        const auto half = [&](double r) { return r > std::abs(d) ? std::sqrt(r * r - d * d) : 0.0; };
        const double outer = half(ring.outer), inner = half(ring.inner);
        const auto piece = [&](double from, double to) {
            const auto at = [&](double t) {
                return px(cx + (d + t) / std::numbers::sqrt2, cy + (d - t) / std::numbers::sqrt2);
            };
            if (to > from)
                list_->AddLine(at(from), at(to), colours().second, theme_.px(thin_mm * 0.7));
        };
        if (inner > 0) {
            piece(-outer, -inner);
            piece(inner, outer);
        } else
            piece(-outer, outer);
    }
}

void Sheet::draw(const figures::Line& line, double x, double y)
{
    const ImVec2 from = px(x + line.from.x, y + line.from.y), to = px(x + line.to.x, y + line.to.y);
    const float w = theme_.px(pen_width(line.pen));
    if (line.pen == figures::Pen::chain)
        broken_line(list_, from, to, {5, 1, 1, 1}, theme_.px_per_mm(), w, colours().second);
    else if (line.pen == figures::Pen::dashed)
        broken_line(list_, from, to, {1.6, 1, 1.6, 1}, theme_.px_per_mm(), theme_.px(0.35), colours().ink);
    else
        list_->AddLine(from, to, line.pen == figures::Pen::thick ? colours().ink : colours().second, w);
}

void Sheet::draw(const figures::Arrow& arrow, double x, double y)
{
    const ImVec2 from = px(x + arrow.from.x, y + arrow.from.y), to = px(x + arrow.to.x, y + arrow.to.y);
    list_->AddLine(from, to, colours().ink, theme_.px(thin_mm));
    arrow_head(list_, to, from, theme_.px(2.4), colours().ink);
    if (arrow.both_ends)
        arrow_head(list_, from, to, theme_.px(2.4), colours().ink);
}

void Sheet::draw(const figures::Polygon& polygon, double x, double y)
{
    std::vector<ImVec2> points;
    for (const figures::Point& p : polygon.points)
        points.push_back(px(x + p.x, y + p.y));
    fill_polygon(list_, points, fill_colour(polygon.fill));
    list_->AddPolyline(points.data(), static_cast<int>(points.size()), colours().ink, ImDrawFlags_Closed,
                       theme_.px(thick_mm));
}

void Sheet::draw(const figures::Circle& circle, double x, double y)
{
    const ImVec2 c = px(x + circle.centre.x, y + circle.centre.y);
    if (circle.fill != figures::Fill::none)
        list_->AddCircleFilled(c, theme_.px(circle.radius), fill_colour(circle.fill), 96);
    list_->AddCircle(c, theme_.px(circle.radius), colours().ink, 96, theme_.px(pen_width(circle.pen)));
}

void Sheet::draw(const figures::Mark& mark, double x, double y)
{
    sign(mark.sign, x + mark.centre.x, y + mark.centre.y, mark.size);
}

void Sheet::draw(const figures::Label& label, double x, double y)
{
    const Lettering letter{label.lettering ? Letter::drawing : label.capital > 3 ? Letter::bold : Letter::second, true};
    const double share = label.align == figures::Align::left ? 0 : label.align == figures::Align::right ? 1 : 0.5;
    const std::string said = words::decimals_in(words::in_language(label.text));
    const double wide = measure(letter, said), high = capital_mm(letter);
    const double left = x + label.at.x - wide * share, top = y + label.at.y - high;
    if (label.breaks_lines)
        fill({left - 0.6, top - 0.6, wide + 1.2, high + 1.2}, colours().sheet);
    put(left, top, letter, said, letter.letter == Letter::second ? colours().second : colours().ink);
}

void Sheet::figure(const figures::Figure& figure, double x, double y)
{
    for (const figures::Shape& each : figure.shapes)
        std::visit([&](const auto& shape) { draw(shape, x, y); }, each);
}

} // namespace cotter::ui
