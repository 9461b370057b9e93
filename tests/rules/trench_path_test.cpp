#include "trench_path.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace cotter::rules;

namespace {

// A pipe 2,600 long between two struts over a room of 1,600 mm; the trench is closed at both ends.
PathAsked trench(double gap, double outside = 720)
{
    PathAsked asked;
    asked.body = {{-1300, -outside / 2, 1300, outside / 2}};
    asked.obstacles = {{{-250, 1600, 0, 1850}, 50},
                       {{gap, 1600, gap + 250, 1850}, 50},
                       {{-4000, 0, -3000, 1850}, 0},
                       {{gap + 3000, 0, gap + 4000, 1850}, 0}};
    for (const double from : {-3000.0, gap + 250}) // the struts beyond
        asked.obstacles.push_back({{from, 1600, from + 2750, 1850}, 50});
    asked.tilt_limit = 20;
    asked.laid = {-1000, gap + 1000};
    return asked;
}

bool is_level(const std::vector<Pose>& path)
{
    for (const Pose& each : path)
        if (each.tilt != 0)
            return false;
    return true;
}

} // namespace

TEST_CASE("a pipe that fits level is lowered level, from above the struts to the bed")
{
    const auto path = find_path(trench(2800));
    REQUIRE(path.size() >= 2);
    CHECK(is_level(path));
    CHECK(path.front().y - 360 >= 1900);
    CHECK(path.back().y == doctest::Approx(360));
}

TEST_CASE("a gap shorter than the pipe is threaded with a tilt within the limit, or not at all")
{
    const auto path = find_path(trench(2650, 400));
    REQUIRE_FALSE(path.empty());
    CHECK_FALSE(is_level(path));
    for (const Pose& each : path)
        CHECK(std::abs(each.tilt) <= 20);
    PathAsked stiff = trench(2650, 400);
    stiff.tilt_limit = 0;
    CHECK(find_path(stiff).empty());
}

TEST_CASE("what is refused says with which share of the clearances it would go, or that it never would")
{
    PathAsked tight = trench(2650);
    tight.tilt_limit = 0;
    const auto share = share_of_clearance(tight); // 25 mm on either side instead of 50
    REQUIRE(share);
    CHECK(*share <= 0.5);
    CHECK(*share >= 0.125);
    tight.obstacles[1].box.left = 2500;
    CHECK_FALSE(share_of_clearance(tight));
}

TEST_CASE("the pipe already laid is not driven into, and its own clearance is kept")
{
    PathAsked asked = trench(3000);
    asked.obstacles.push_back({{-3000, 0, -200, 720}, 20});
    asked.laid = {1120, 1140};
    const auto path = find_path(asked);
    REQUIRE_FALSE(path.empty());
    CHECK(path.back().x >= 1120);
    for (std::size_t i = 0; i + 1 < path.size(); ++i)
        CHECK(is_free(asked, path[i], path[i + 1]));
    asked.laid = {1000, 1119}; // nearer than 20 mm
    CHECK(find_path(asked).empty());
}

TEST_CASE("a way through an obstacle is not free, however far apart its ends are free")
{
    const PathAsked asked = trench(2800);
    CHECK_FALSE(is_free(asked, {-1400, 3000, 0}, {-1400, 400, 0}));
    CHECK(is_free(asked, {1400, 3000, 0}, {1400, 400, 0}));
    CHECK_FALSE(is_free(asked, {1400, 400, 0}, {1400, 300, 0})); // below the bed
    CHECK(spare(asked, {1400, 400, 0}) == doctest::Approx(40));
}

TEST_CASE("the same trench gives the same path every time")
{
    const auto a = find_path(trench(2650, 400)), b = find_path(trench(2650, 400));
    REQUIRE(a.size() > 2);
    REQUIRE(a.size() == b.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
        CHECK(a[i].x == b[i].x);
        CHECK(a[i].y == b[i].y);
        CHECK(a[i].tilt == b[i].tilt);
    }
}
