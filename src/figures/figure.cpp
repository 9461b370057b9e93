#include "figure.hpp"

namespace cotter::figures {

double text_width(const std::string& text, double height)
{
    double characters = 0;
    for (const char c : text)
        characters += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U ? 1 : 0; // count UTF-8 starts
    return characters * height * 0.95;
}

namespace {

struct Mover {
    Point by;
    void point(Point& p) const
    {
        p.x += by.x;
        p.y += by.y;
    }
    void operator()(Line& shape) const
    {
        point(shape.from);
        point(shape.to);
    }
    void operator()(Arrow& shape) const
    {
        point(shape.from);
        point(shape.to);
    }
    void operator()(Polygon& shape) const
    {
        for (Point& each : shape.points)
            point(each);
    }
    void operator()(Circle& shape) const { point(shape.centre); }
    void operator()(HatchedRing& shape) const { point(shape.centre); }
    void operator()(Label& shape) const { point(shape.at); }
    void operator()(Mark& shape) const { point(shape.centre); }
};

} // namespace

Figure moved(Figure figure, double right, double down)
{
    for (Shape& each : figure.shapes)
        std::visit(Mover{{right, down}}, each);
    return figure;
}

} // namespace cotter::figures
