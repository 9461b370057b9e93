// A pipe between struts, against polygons of Boost.Geometry that are turned and measured.

#include "threading.hpp"

#include <doctest/doctest.h>

#define BOOST_ALLOW_DEPRECATED_HEADERS // one that the library itself includes
#define BOOST_GEOMETRY_NO_ROBUSTNESS   // plain doubles, no rescaling to whole numbers
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/box.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>

#include <cmath>
#include <numbers>
#include <random>

namespace bg = boost::geometry;
namespace rules = cotter::rules;
using rules::Passage;
using rules::Way;

namespace {

using Point = bg::model::d2::point_xy<double>;
using Polygon = bg::model::polygon<Point>;
using Box = bg::model::box<Point>;

constexpr double strut_width = 1000, far_away = 30'000;

Polygon rectangle(double from_x, double from_y, double to_x, double to_y)
{
    Polygon made;
    bg::convert(Box{Point{from_x, from_y}, Point{to_x, to_y}}, made);
    return made;
}

Polygon about_origin(double width, double height) { return rectangle(-width / 2, -height / 2, width / 2, height / 2); }

Polygon turned(const Polygon& shape, double degrees)
{
    Polygon made;
    bg::transform(shape, made, bg::strategy::transform::rotate_transformer<bg::degree, double, 2, 2>{degrees});
    return made;
}

struct Size {
    double width, height;
};

Size envelope(double length, double depth, double tilt)
{
    const auto box = bg::return_envelope<Box>(turned(about_origin(length, depth), tilt));
    return {box.max_corner().x() - box.min_corner().x(), box.max_corner().y() - box.min_corner().y()};
}

// The two struts, with the middle of the opening at the origin.
std::vector<Polygon> struts(const Passage& p)
{
    const double near = p.gap / 2, half = p.strut_depth / 2;
    return {rectangle(-near - strut_width, -half, -near, half), rectangle(near, -half, near + strut_width, half)};
}

// What a pipe of this depth sweeps along its own axis through the middle of the opening.
Polygon swept(double depth, double tilt) { return turned(about_origin(far_away, depth), tilt); }

// Of the struts and the pipe grown by its clearance. `grown_by`: a hundredth of a millimetre less or more, as polygons
// that just touch have no sure intersection in doubles.
double overlap(const Passage& p, double tilt, double grown_by)
{
    double area = 0;
    for (const Polygon& strut : struts(p)) {
        std::vector<Polygon> common;
        bg::intersection(swept(p.depth + 2 * p.clearance + grown_by, tilt), strut, common);
        for (const Polygon& each : common)
            area += bg::area(each);
    }
    return area;
}

double distance_to_struts(const Passage& p, double tilt)
{
    const auto both = struts(p);
    const Polygon pipe = swept(p.depth, tilt);
    return std::min(bg::distance(pipe, both[0]), bg::distance(pipe, both[1]));
}

bool has_room(const Passage& p, double tilt, double margin = 1e-4)
{
    return !p.room || envelope(p.length, p.depth, tilt).height <= *p.room - 2 * p.clearance + margin;
}

bool passes_whole(const Passage& p, double tilt, double margin = 1e-4)
{
    return envelope(p.length, p.depth, tilt).width <= p.gap - 2 * p.clearance + margin;
}

bool passes_swept(const Passage& p, double tilt) { return tilt > 0 && overlap(p, tilt, -0.01) == 0; }

// Does it pass with a little to spare?
bool passes_easily(const Passage& p, double tilt)
{
    return has_room(p, tilt, -1e-3) && (passes_whole(p, tilt, -1e-3) || (tilt > 0 && overlap(p, tilt, 0.01) == 0));
}

Passage narrower(Passage p, double by)
{
    p.gap -= by;
    return p;
}

// Seeded: the same passages on every machine that has the same library of numbers.
class Passages {
public:
    explicit Passages(unsigned seed) : random_{seed} {}

    Passage next(double greatest_tilt)
    {
        Passage p;
        p.length = between(1000, 6000);
        p.depth = between(300, std::min(p.length, 2200.0));
        p.max_tilt = between(0, greatest_tilt);
        p.clearance = between(0, 150);
        p.strut_depth = between(20, 800);
        const bool about_its_length = random_() % 2 == 0; // else lowering whole hardly ever wins
        p.gap = about_its_length ? between(0.9 * p.length, p.length + 2 * p.clearance + 100) : between(600, 6500);
        if (random_() % 3 == 0)
            p.room = between(800, 6000);
        return p;
    }

private:
    double between(double low, double high) { return std::round(std::uniform_real_distribution<>{low, high}(random_)); }

    std::mt19937 random_;
};

void check_nothing_passes(const Passage& p, double below)
{
    for (double tilt = 0; tilt < below; tilt += 0.5) {
        CAPTURE(tilt);
        REQUIRE_FALSE(passes_easily(p, tilt));
    }
}

std::string text(const Passage& p)
{
    std::string made;
    for (const double each : {p.length, p.depth, p.gap, p.max_tilt, p.clearance, p.strut_depth, p.room.value_or(-1)})
        made += std::to_string(each) + " ";
    return made;
}

void check_whole(const Passage& p, const rules::Threading& found)
{
    REQUIRE(passes_whole(p, found.tilt));
    if (found.way == Way::tilted)
        REQUIRE_FALSE(passes_whole(narrower(p, 0.01), found.tilt));
}

void check_swept(const Passage& p, const rules::Threading& found)
{
    REQUIRE(passes_swept(p, found.tilt));
    REQUIRE(distance_to_struts(p, found.tilt) >= p.clearance - 1e-4);
    REQUIRE_FALSE(passes_swept(narrower(p, 1), found.tilt));
}

} // namespace

// Source: Boost.Geometry: transform, envelope, intersection, distance.
TEST_CASE("A way that is answered really passes between the struts, and not if they stand closer")
{
    int seen[4] = {};
    Passages passages{1};
    for (int i = 0; i < 60'000; ++i) {
        const Passage p = passages.next(80);
        INFO(text(p));
        const auto found = rules::thread(p);
        ++seen[static_cast<int>(found.way)];
        if (found.way == Way::none)
            continue;
        REQUIRE(found.tilt >= 0);
        REQUIRE(found.tilt <= p.max_tilt);
        REQUIRE(has_room(p, found.tilt));
        if (found.way == Way::threaded)
            check_swept(p, found);
        else
            check_whole(p, found);
        REQUIRE((found.way == Way::level) == (found.tilt == 0));
    }
    for (const int count : seen)
        CHECK(count > 200);
}

// Source: the same, tilt by tilt in half degrees. Up to 45 degrees, which is where a strut layout is given up.
TEST_CASE("No smaller tilt would pass, and where no way is answered none does")
{
    Passages passages{2};
    for (int i = 0; i < 1500; ++i) {
        const Passage p = passages.next(45);
        INFO(text(p));
        const auto found = rules::thread(p);
        check_nothing_passes(p, found.way == Way::none ? p.max_tilt : found.tilt - 1e-6);
    }
}

// Source: the same polygons.
TEST_CASE("The gap that is said to be needed would do, and half a millimetre less would not")
{
    Passages passages{3};
    int asked = 0;
    for (int i = 0; i < 1500; ++i) {
        Passage p = passages.next(45);
        INFO(text(p));
        const auto found = rules::thread(p);
        if (!found.gap_needed)
            continue;
        ++asked;
        REQUIRE(*found.gap_needed > p.gap);
        p.gap = *found.gap_needed;
        REQUIRE(rules::thread(p).way != Way::none);
        p.gap -= 0.5;
        REQUIRE(rules::thread(p).way == Way::none);
        check_nothing_passes(p, p.max_tilt);
    }
    CHECK(asked > 200);
}

// Source: Boost.Geometry's envelope of the turned rectangle.
TEST_CASE("The plan length is the width of the turned rectangle")
{
    Passages passages{4};
    for (int i = 0; i < 2000; ++i) {
        const Passage p = passages.next(90);
        CHECK(rules::plan_length(p.length, p.depth, p.max_tilt) ==
              doctest::Approx(envelope(p.length, p.depth, p.max_tilt).width).epsilon(1e-9));
    }
}

// Source: plane geometry, own derivation, measured on the turned rectangle.
TEST_CASE("A first tilt makes the plan longer, most at atan of depth over length, and it is back at twice that")
{
    Passages passages{5};
    for (int i = 0; i < 2000; ++i) {
        const Passage p = passages.next(45);
        INFO(text(p));
        const double top = std::atan(p.depth / p.length) * 180 / std::numbers::pi;
        const double longest = envelope(p.length, p.depth, top).width;
        CHECK(rules::plan_length(p.length, p.depth, top) == doctest::Approx(longest).epsilon(1e-9));
        CHECK(longest == doctest::Approx(std::hypot(p.length, p.depth)).epsilon(1e-9));
        for (const double off : {-1.0, -0.1, 0.1, 1.0})
            CHECK(rules::plan_length(p.length, p.depth, top + off) < longest);
        CHECK(rules::plan_length(p.length, p.depth, 2 * top) == doctest::Approx(p.length).epsilon(1e-9));
        CHECK(rules::plan_length(p.length, p.depth, top / 2) > p.length);
    }
}
