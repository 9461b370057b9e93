// Paths into a strutted trench, looked at step by step with polygons of Boost.Geometry; and where geometry has a known
// answer, whether it was found. COTTER_TRENCHES=1000 looks at more than tests/run has time for.

#include "threading.hpp"
#include "trench_path.hpp"

#include <doctest/doctest.h>

#define BOOST_ALLOW_DEPRECATED_HEADERS // one that the library itself includes
#define BOOST_GEOMETRY_NO_ROBUSTNESS   // plain doubles, no rescaling to whole numbers
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/box.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>

#include <cmath>
#include <cstdlib>
#include <ctime>
#include <numbers>
#include <random>

namespace bg = boost::geometry;
using namespace cotter::rules;

namespace {

using Point2 = bg::model::d2::point_xy<double>;
using Shape2 = bg::model::polygon<Point2>;
using Box2 = bg::model::box<Point2>;

Shape2 shape_of(const Box& box)
{
    Shape2 made;
    bg::convert(Box2{Point2{box.left, box.bottom}, Point2{box.right, box.top}}, made);
    return made;
}

Shape2 placed(const Box& part, const Pose& at)
{
    namespace to = bg::strategy::transform;
    Shape2 turned, made;
    bg::transform(shape_of(part), turned,
                  to::rotate_transformer<bg::degree, double, 2, 2>{-at.tilt}); // its are clockwise
    bg::transform(turned, made, to::translate_transformer<double, 2, 2>{at.x, at.y});
    return made;
}

double lowest(const Shape2& shape) { return bg::return_envelope<Box2>(shape).min_corner().y(); }

// What is left of the least clearance; the bed has none.
double left_over(const PathAsked& asked, const Pose& at)
{
    double least = INFINITY;
    for (const Box& part : asked.body) {
        const Shape2 shape = placed(part, at);
        least = std::min(least, lowest(shape) - asked.bed);
        for (const Obstacle& each : asked.obstacles)
            least = std::min(least, bg::distance(shape, shape_of(each.box)) - each.clearance);
    }
    return least;
}

// Every 5 mm and every tenth of a degree.
double least_left_over(const PathAsked& asked, const Pose& a, const Pose& b)
{
    const double steps = 1 + std::ceil(std::max(std::hypot(b.x - a.x, b.y - a.y) / 5, std::abs(b.tilt - a.tilt) / 0.1));
    double least = INFINITY;
    for (double i = 0; i <= steps; ++i) {
        const double t = i / steps;
        least = std::min(
            least, left_over(asked, {a.x + t * (b.x - a.x), a.y + t * (b.y - a.y), a.tilt + t * (b.tilt - a.tilt)}));
    }
    return least;
}

void check_path(const PathAsked& asked, const std::vector<Pose>& path)
{
    REQUIRE(path.size() >= 2);
    for (std::size_t i = 0; i + 1 < path.size(); ++i)
        REQUIRE(least_left_over(asked, path[i], path[i + 1]) > -0.05); // between two looks it moves 5 mm at most
    for (const Pose& each : path)
        REQUIRE(std::abs(each.tilt) <= asked.tilt_limit + 1e-9);
    const Pose& last = path.back();
    REQUIRE(last.tilt == 0);
    REQUIRE(last.x >= asked.laid.from);
    REQUIRE(last.x <= asked.laid.to);
    for (const Obstacle& each : asked.obstacles)
        REQUIRE(path.front().y + asked.body.front().bottom >= each.box.top + each.clearance - 1e-6);
}

int trenches()
{
    const char* given = std::getenv("COTTER_TRENCHES");
    return given ? std::atoi(given) : 150;
}

class Random {
public:
    explicit Random(unsigned seed) : random_{seed} {}
    double between(double low, double high)
    {
        return std::round(low + (high - low) * static_cast<double>(random_() - random_.min()) /
                                    static_cast<double>(random_.max() - random_.min()));
    }

private:
    std::mt19937 random_;
};

Passage random_passage(Random& random)
{
    Passage p;
    p.length = random.between(1000, 3500);
    p.depth = random.between(300, 1800);
    p.gap = random.between(900, 4500);
    p.max_tilt = random.between(0, 30);
    p.clearance = random.between(0, 150);
    p.strut_depth = random.between(100, 400);
    p.room = random.between(600, 3000);
    return p;
}

constexpr double beside = 8000; // how far the trench is known on either side of the gap

// One gap, closed off to both sides; the pipe may lie anywhere near it.
PathAsked one_gap(const Passage& p)
{
    const double top = *p.room + p.strut_depth;
    PathAsked asked;
    asked.body = {{-p.length / 2, -p.depth / 2, p.length / 2, p.depth / 2}};
    asked.obstacles = {{{-beside, *p.room, 0, top}, p.clearance}, {{p.gap, *p.room, p.gap + beside, top}, p.clearance}};
    asked.tilt_limit = p.max_tilt;
    asked.laid = {-3000, p.gap + 3000};
    for (const double x : {-beside - 1000, p.gap + beside})
        asked.obstacles.push_back({{x, 0, x + 1000, top}, 0});
    return asked;
}

// Struts in two frames, a waling's end, the pipe already laid, and what grips the pipe above and below it.
PathAsked random_trench(Random& random)
{
    PathAsked asked;
    const double length = random.between(1200, 3000), barrel = random.between(300, 1200);
    const double grip = random.between(400, length), above = random.between(200, 700);
    asked.body = {{-length / 2, -barrel / 2, length / 2, barrel / 2},
                  {-grip / 2, -barrel / 2 - 60, grip / 2, barrel / 2 + above}};
    asked.tilt_limit = random.between(0, 25);
    const double clearance = random.between(20, 120), gap = random.between(1200, 4500),
                 depth = random.between(2500, 5000);
    for (const double level : {depth * 0.45, depth * 0.8})
        for (int i = -1; i <= 2; ++i) {
            const double x = i * gap + random.between(-100, 100);
            asked.obstacles.push_back(
                {{x, level, x + random.between(120, 300), level + random.between(120, 300)}, clearance});
        }
    const double end = random.between(-600, 600);
    asked.obstacles.push_back({{end - 6000, 0, end, barrel + 60}, 20});
    for (const double x : {-gap - 3000, 2 * gap + 2000})
        asked.obstacles.push_back({{x, 0, x + 1000, depth}, 0});
    asked.laid = {end + length / 2 + 20, end + length / 2 + 40};
    return asked;
}

} // namespace

// Source: Boost.Geometry: transform, distance, envelope.
TEST_CASE("Every step of every path into a random trench keeps the clearances")
{
    Random random{11};
    int found = 0, refused = 0;
    std::clock_t planning = 0;
    for (int i = 0; i < trenches(); ++i) {
        const PathAsked asked = random_trench(random);
        const std::clock_t before = std::clock();
        const auto path = find_path(asked);
        planning += std::clock() - before;
        CAPTURE(i);
        if (path.empty()) {
            ++refused;
            continue;
        }
        ++found;
        check_path(asked, path);
    }
    MESSAGE(found << " found, " << refused << " refused, in " << static_cast<double>(planning) / CLOCKS_PER_SEC
                  << " s of one core");
    CHECK(found > trenches() / 3);
    CHECK(refused > trenches() / 5);
}

// Source: plane geometry, threading.hpp, itself checked against Boost.Geometry in threads.cpp.
TEST_CASE("A way that geometry knows, with 20 mm to spare all round, is never missed")
{
    Random random{12};
    int known = 0;
    for (int i = 0; i < trenches(); ++i) {
        const Passage passage = random_passage(random);
        Passage with_spare = passage;
        with_spare.clearance += 20;
        const PathAsked asked = one_gap(passage);
        const auto path = find_path(asked);
        CAPTURE(i);
        if (!path.empty())
            check_path(asked, path);
        if (thread(with_spare).way == Way::none)
            continue;
        ++known;
        REQUIRE_FALSE(path.empty());
    }
    CHECK(known > trenches() / 3);
}

// Source: plane geometry. A body longer and higher than the gap at every tilt allowed has no way through.
TEST_CASE("Where nothing passes at any tilt, no path is found")
{
    Random random{13};
    int closed = 0;
    for (int i = 0; i < trenches(); ++i) {
        const Passage passage = random_passage(random);
        double least = INFINITY;
        for (double tilt = 0; tilt <= passage.max_tilt; tilt += 0.25) // the least that any way of passing needs
            least = std::min({least, plan_length(passage.length, passage.depth, tilt),
                              tilt > 0 ? passage.depth / std::sin(tilt * std::numbers::pi / 180) : INFINITY});
        if (least <= passage.gap + 50)
            continue;
        ++closed;
        REQUIRE(find_path(one_gap(passage)).empty());
    }
    CHECK(closed > trenches() / 6);
}
