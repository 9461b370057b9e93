#pragma once

// A picture as shapes in millimetres on the sheet, x to the right, y down: the same on screen and on paper.

#include <string>
#include <variant>
#include <vector>

namespace cotter::figures {

struct Point {
    double x = 0, y = 0;
};

// Source: ISO 128 (line types), from memory: thick 0.5 mm outlines, thin 0.25 mm dimensions, chain line for axes.
enum class Pen { thick, thin, chain, dashed };
enum class Fill { none, paper, steel, ink };
enum class Align { left, centre, right };
enum class Sign { stop, warning, to_do, in_order };

struct Line {
    Point from, to;
    Pen pen = Pen::thin;
};
struct Arrow {
    Point from, to;
    bool both_ends = false;
};
struct Polygon {
    std::vector<Point> points;
    Fill fill = Fill::none;
};
struct Circle {
    Point centre;
    double radius = 0;
    Pen pen = Pen::thick;
    Fill fill = Fill::none;
};
struct HatchedRing {
    Point centre;
    double outer = 0, inner = 0;
};                                     // cut concrete: 45 degree hatching
inline constexpr double capital = 2.8; // mm, height of lettering unless said
struct Label {
    Point at;
    std::string text;
    Align align = Align::left;
    double capital = figures::capital;
    bool lettering = true;
    bool breaks_lines = false; // on a patch of paper, so that a line under it is broken
}; // at: left end of the base line
struct Mark {
    Point centre;
    double size = 6;
    Sign sign = Sign::stop;
};

using Shape = std::variant<Line, Arrow, Polygon, Circle, HatchedRing, Label, Mark>;

struct Figure {
    double width = 0, height = 0;
    std::vector<Shape> shapes;
    void add(Shape shape) { shapes.push_back(std::move(shape)); }
};

Figure moved(Figure figure, double right, double down); // its shapes, not its size

// About how wide a text of this capital height is, in mm: enough to keep labels apart.
double text_width(const std::string& text, double capital);

} // namespace cotter::figures
