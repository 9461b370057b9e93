#pragma once

// Ink on one page of a PDF, in millimetres from the top left: the look of the screens on paper, drawn with cairo and
// pango.

#include "figure.hpp"

#include <memory>
#include <string>

// cairo's and pango's own names, so that nobody else sees their headers.
struct _cairo;
struct _PangoLayout;

namespace cotter::paper {

using Cairo = _cairo;

struct Colour {
    double red, green, blue;
};
inline constexpr Colour ink{0x14 / 255.0, 0x18 / 255.0, 0x1C / 255.0}, second{0x47 / 255.0, 0x52 / 255.0, 0x5C / 255.0},
    rule{0xB9 / 255.0, 0xB2 / 255.0, 0xA4 / 255.0}, steel{0xDA / 255.0, 0xD6 / 255.0, 0xCB / 255.0}, white{1, 1, 1};

// Source: ISO 128 (line types), from memory, as on the screen.
inline constexpr double thick_mm = 0.5, thin_mm = 0.25;

// Paper is read in the hand: smaller than on the glass, and nothing under 2.0 mm of capital height.
enum class Letter { title, heading, bold, text, small, drawing };
double capital_mm(Letter letter);

// A text set in a width. Words longer than a line are broken, so nothing is ever wider.
class Lines {
public:
    Lines(Cairo* cairo, Letter letter, const std::string& text, double width_mm);

    int count() const;
    double step() const; // mm from line to line
    double height() const { return step() * (count() - 1) + capital_mm(letter_); }
    double width() const;                          // mm, of the widest line
    void draw(int line, double x, double y) const; // y: top of the capitals
    void draw_all(double x, double y) const;

private:
    struct Free {
        void operator()(_PangoLayout* layout) const;
    };
    Cairo* cairo_;
    Letter letter_;
    std::unique_ptr<_PangoLayout, Free> layout_;
};

class Canvas {
public:
    explicit Canvas(Cairo* cairo) : cairo_{cairo} {}

    Lines lines(Letter letter, const std::string& text, double width) const { return {cairo_, letter, text, width}; }
    double width_of(Letter letter, const std::string& text) const;

    void colour(const Colour& colour) const;
    void line(double x1, double y1, double x2, double y2, double thickness) const;
    void frame(double x, double y, double w, double h, double thickness) const;
    void fill(double x, double y, double w, double h) const;
    void sign(figures::Sign sign, double centre_x, double centre_y, double size) const;
    void figure(const figures::Figure& figure, double x, double y) const;

private:
    void draw(const figures::Line& line) const;
    void draw(const figures::Arrow& arrow) const;
    void draw(const figures::Polygon& polygon) const;
    void draw(const figures::Circle& circle) const;
    void draw(const figures::HatchedRing& ring) const;
    void draw(const figures::Label& label) const;
    void draw(const figures::Mark& mark) const;

    Cairo* cairo_;
};

double pt(double mm);

} // namespace cotter::paper
