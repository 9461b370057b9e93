#pragma once

// A drawing to scale: things given in their own millimetres, x to the right and y up, put on the sheet.

#include "figure.hpp"
#include "polygon.hpp"

#include <string>
#include <vector>

namespace cotter::figures {

class RealSize {
public:
    // Everything in the extent, as large as fits.
    RealSize(const rules::Box& extent, double width, double height);

    Point at(double x, double y) const;
    double scale() const { return scale_; } // mm on the sheet for a mm of the thing

    void line(Figure& figure, Point from, Point to, Pen pen = Pen::thin) const;
    void frame(Figure& figure, const rules::Box& box) const; // thin
    void box(Figure& figure, const rules::Box& box, Fill fill = Fill::none) const;
    void outline(Figure& figure, const std::vector<Point>& corners, Fill fill = Fill::none) const;
    void circle(Figure& figure, Point centre, double radius, Pen pen) const;

    // A dimension from one point to another, its text in the middle, `off` mm of the sheet beside it.
    void dimension(Figure& figure, Point from, Point to, const std::string& text, double off = 0) const;

private:
    double scale_, left_, bottom_, x_, y_;
};

// 45 degree lines so far apart, mm on the sheet, in a box of the sheet.
void hatch(Figure& figure, Point top_left, double width, double height, double apart);

std::string in_metres(double mm); // "4.5 m", to a hundredth

} // namespace cotter::figures
