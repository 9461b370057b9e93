// The ways between struts. Figures are chosen so that sines and cosines are those of whole right triangles.

#include "threading.hpp"

#include <doctest/doctest.h>

namespace cotter::rules {

namespace {

Passage passage(double length, double depth, double gap, double max_tilt)
{
    Passage p;
    p.length = length;
    p.depth = depth;
    p.gap = gap;
    p.max_tilt = max_tilt;
    return p;
}

// (500 + 100) / 0.6 + 300 / 0.75 = 1,400: along its own axis at 36.87 degrees.
Passage threaded_at_37()
{
    Passage p = passage(2400, 500, 1400, 45);
    p.clearance = 50;
    p.strut_depth = 300;
    return p;
}

// 2400 x 0.6 + 700 x 0.8 = 2,000: whole at 53.13 degrees. The struts are so deep that its own axis needs 67.5.
Passage tilted_at_53()
{
    Passage p = passage(2400, 700, 2000, 60);
    p.strut_depth = 3000;
    return p;
}

} // namespace

TEST_CASE("a pipe as long as the gap less both clearances passes level")
{
    Passage p = passage(1000, 300, 1100, 0);
    p.clearance = 50;
    CHECK(thread(p).way == Way::level);
    CHECK(thread(p).tilt == 0);
    p.length = 1001;
    CHECK(thread(p).way == Way::none);
}

TEST_CASE("level needs its depth in the room below")
{
    Passage p = passage(1000, 300, 1100, 0);
    p.clearance = 50;
    p.room = 400;
    CHECK(thread(p).way == Way::level);
    p.room = 399;
    CHECK(thread(p).way == Way::none);
    p.room.reset();
    CHECK(thread(p).way == Way::level);
}

TEST_CASE("a first tilt makes the plan length longer")
{
    CHECK(plan_length(2400, 700, 0) == 2400);
    CHECK(plan_length(2400, 700, 16.260205) == doctest::Approx(2500)); // atan(700 / 2400)
    CHECK(plan_length(2400, 700, 32.520409) == doctest::Approx(2400));
    CHECK(plan_length(2400, 700, 90) == doctest::Approx(700));
}

TEST_CASE("a pipe lowered whole passes at the least tilt that fits the gap")
{
    const Threading found = thread(tilted_at_53());
    CHECK(found.way == Way::tilted);
    CHECK(found.tilt == doctest::Approx(53.130102));
}

TEST_CASE("a pipe lowered whole does not pass short of its tilt")
{
    Passage p = tilted_at_53();
    p.max_tilt = 53.13;
    CHECK(thread(p).way == Way::none);
    p.max_tilt = 53.131;
    CHECK(thread(p).way == Way::tilted);
}

TEST_CASE("a pipe along its own axis passes at the least tilt that fits the gap")
{
    const Threading found = thread(threaded_at_37());
    CHECK(found.way == Way::threaded);
    CHECK(found.tilt == doctest::Approx(36.869898));
}

TEST_CASE("a pipe along its own axis does not pass short of its tilt")
{
    Passage p = threaded_at_37();
    p.max_tilt = 36.86;
    CHECK(thread(p).way == Way::none);
    p.max_tilt = 36.87;
    CHECK(thread(p).way == Way::threaded);
}

// At 36.87 degrees: 2400 x 0.6 + 500 x 0.8 = 1,840 and twice 50.
TEST_CASE("a tilted way needs room at its tilt")
{
    Passage p = threaded_at_37();
    p.room = 1940;
    CHECK(thread(p).way == Way::threaded);
    p.room = 1939;
    CHECK(thread(p).way == Way::none);
}

// At 53.13 degrees: 2400 x 0.8 + 700 x 0.6 = 2,340.
TEST_CASE("a pipe lowered whole needs room at its tilt")
{
    Passage p = tilted_at_53();
    p.room = 2340;
    CHECK(thread(p).way == Way::tilted);
    p.room = 2339;
    CHECK(thread(p).way == Way::none);
}

TEST_CASE("of two ways the smaller tilt is taken")
{
    Passage p = tilted_at_53();
    p.strut_depth = 0; // along its own axis from asin(700 / 2000) on
    CHECK(thread(p).way == Way::threaded);
    CHECK(thread(p).tilt == doctest::Approx(20.487315));
}

TEST_CASE("of two ways at one tilt the pipe is lowered whole")
{
    Passage p = passage(1000, 400, 500, 90); // upright in a gap of 400 and twice 50
    p.clearance = 50;
    p.strut_depth = 100;
    CHECK(thread(p).way == Way::tilted);
    CHECK(thread(p).tilt == doctest::Approx(90));
}

TEST_CASE("where there is no way the least gap that would do is said")
{
    Passage p = passage(1000, 500, 1000, 0);
    p.clearance = 50;
    CHECK(*thread(p).gap_needed == doctest::Approx(1100));
    p = threaded_at_37();
    p.gap = 1000;
    p.max_tilt = 36.869898;
    CHECK(*thread(p).gap_needed == doctest::Approx(1400));
}

TEST_CASE("where no gap would do none is said")
{
    Passage p = passage(1000, 500, 900, 30);
    p.room = 100;
    CHECK(thread(p).way == Way::none);
    CHECK_FALSE(thread(p).gap_needed);
}

TEST_CASE("every way has a name")
{
    CHECK(name(Way::none) == "none");
    CHECK(name(Way::level) == "level");
    CHECK(name(Way::tilted) == "tilted");
    CHECK(name(Way::threaded) == "threaded");
}

} // namespace cotter::rules
