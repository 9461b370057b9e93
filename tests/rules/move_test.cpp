#include "move.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>

using namespace cotter::rules;
using namespace cotter::rules::literals;

namespace {

// Tracks 3.6 m by 2.8 m beside a trench 1.6 m wide and 2.5 m deep, a pipe 800 mm over its socket on the ground.
MoveAsked beside_a_trench()
{
    MoveAsked asked;
    asked.footprint = {1'800, 1'400, 0};
    asked.stand_off = 1'000;
    asked.trench_width = 1'600;
    asked.bed = 2'500;
    asked.pick_radius = 4'000;
    asked.pick_bearing = 30;
    asked.clear = 1'100;
    asked.outside = 800;
    asked.pin_above_crown = 1'500;
    asked.centre_below_pin = 1'400;
    return asked;
}

const MovePoint& at(const std::vector<MovePoint>& points, Stage stage)
{
    return points[static_cast<std::size_t>(stage)];
}

// Falls with the radius from 5,000 kg; the same at both heights and over both sectors.
Chart falling_chart(std::int64_t side_less = 0)
{
    Chart chart;
    for (const Sector over : {Sector::front, Sector::side})
        for (const std::int64_t height : {-3'000, 0, 3'000, 6'000})
            for (const std::int64_t radius : {2'000, 3'000, 4'000, 5'000, 6'000})
                chart.cells.push_back({over, Millimetres{height}, Millimetres{radius},
                                       Kilograms{7'000 - radius - (over == Sector::side ? side_less : 0)}});
    return chart;
}

} // namespace

TEST_CASE("the heights and radii of a drawn example")
{
    const auto points = move_points(beside_a_trench());
    REQUIRE(points.size() == stages.size());
    CHECK(at(points, Stage::pick).height == 2'300); // 0 + 800 + 1,500
    CHECK(at(points, Stage::slew).height == 3'400); // the rail's 1,100 under the pipe
    CHECK(at(points, Stage::laid).height == -200);  // -2,500 + 800 + 1,500
    CHECK(at(points, Stage::laid).radius == 3'200); // 1,400 + 1,000 + 800
    CHECK(at(points, Stage::laid).bearing == doctest::Approx(90));
    CHECK(at(points, Stage::slew).radius == 4'000); // the greater of pick and lay
    CHECK(at(points, Stage::edge).height == 3'400);
    CHECK(at(points, Stage::lower).height > at(points, Stage::laid).height);
}

TEST_CASE("in line with the trench the laid pipe is ahead, past the end of the tracks")
{
    MoveAsked asked = beside_a_trench();
    asked.beside = Beside::in_line;
    asked.footprint.slew_ahead = 300;
    asked.lay_along = 1'200;
    const auto points = move_points(asked);
    CHECK(at(points, Stage::laid).radius == 1'800 - 300 + 1'000 + 1'200);
    CHECK(at(points, Stage::laid).bearing == 0);
}

TEST_CASE("a rigid attachment swings its load out, a hanging one does not")
{
    MoveAsked asked = beside_a_trench();
    asked.greatest_tilt = 30;
    CHECK(move_points(asked).back().centre_radius == 3'200);
    CHECK(mounting_moment_nm(asked, 1'000) == 0);
    asked.rigid = true;
    CHECK(move_points(asked).back().centre_radius == doctest::Approx(3'200 + 700)); // 1,400 sin 30
    CHECK(mounting_moment_nm(asked, 1'000) == doctest::Approx(1'000 * 9.81 * 0.7));
}

TEST_CASE("over the front, over the side, or over both as the slew turns")
{
    MoveAsked asked = beside_a_trench();
    const auto sector = [&] { return sector_of(asked, move_points(asked)); };
    CHECK(sector() == Sector::both); // from 30 degrees ahead round to the side
    asked.pick_bearing = 80;
    CHECK(sector() == Sector::side);
    asked.pick_bearing = -80; // from the other side, over the front or the rear
    CHECK(sector() == Sector::both);
    asked.beside = Beside::in_line;
    asked.pick_bearing = 20;
    CHECK(sector() == Sector::front);
    asked.pick_bearing = 179;
    CHECK(sector() == Sector::both);
}

TEST_CASE("the greatest radius is read at every height; what is off the chart governs, then the least rating")
{
    MoveAsked asked = beside_a_trench();
    auto read = readings(move_points(asked), falling_chart(), Sector::both);
    CHECK(governing(read).rated == 3'000_kg); // 4,000 mm
    for (const Reading& each : read)
        CHECK(each.radius == 4'000_mm);
    asked.pick_radius = 4'000.2; // a fraction more is the next millimetre, and the next column
    CHECK(governing(readings(move_points(asked), falling_chart(), Sector::both)).rated == 2'000_kg);
    asked.bed = 5'700; // the pin 3,400 under the ground: below the chart
    const Reading worst = governing(readings(move_points(asked), falling_chart(), Sector::both));
    CHECK_FALSE(worst.rated);
    CHECK(worst.stage == Stage::laid);
}

TEST_CASE("a blank that the greatest radius passes by is off the chart for a point that is in it")
{
    const auto points = move_points(beside_a_trench()); // over the edge at 3,200 out and 3,400 up
    Chart chart = falling_chart();
    CHECK(governing(readings_along(points, chart, Sector::side)).rated == 3'000_kg);
    for (Cell& each : chart.cells) // near and high, where an arm cannot fold so far
        if (each.radius == 3'000_mm && *each.height >= 3'000_mm)
            each.rated.reset();
    CHECK(governing(readings(points, chart, Sector::side)).rated == 3'000_kg); // at 4,000
    const Reading worst = governing(readings_along(points, chart, Sector::side));
    CHECK_FALSE(worst.rated);
    CHECK(worst.radius < 4'000_mm);
}

TEST_CASE("a pipe is lifted plumb before it is taken out: a blank straight over the stack is off the chart")
{
    MoveAsked asked = beside_a_trench();
    asked.pick_radius = 2'500;
    asked.stand_off = 2'300; // laid at 4,500
    const auto points = move_points(asked);
    CHECK(way_of(points).size() == points.size() + 1);
    CHECK(way_of(points)[1].radius == 2'500);
    CHECK(way_of(points)[1].height == at(points, Stage::slew).height);
    Chart chart = falling_chart();
    for (Cell& each : chart.cells) // near and very high
        if (each.radius == 2'000_mm && *each.height >= 3'000_mm)
            each.rated.reset();
    const Reading worst = governing(readings_along(points, chart, Sector::side));
    CHECK_FALSE(worst.rated);
    CHECK(worst.radius == 2'500_mm);
}

TEST_CASE("a blank passed on the way down is off the chart, though no end of the way is in it")
{
    const auto points = move_points(beside_a_trench());
    Chart chart;
    for (const std::int64_t height : {-3'000, 0, 1'800, 2'200, 2'600, 3'000, 6'000})
        for (const std::int64_t radius : {2'000, 3'000, 4'000, 5'000})
            if (height != 2'200 || radius != 3'000)
                chart.cells.push_back({Sector::side, Millimetres{height}, Millimetres{radius}, 4'000_kg});
    for (const MovePoint& each : points)
        CHECK(rated_at(chart, Sector::side,
                       {Millimetres{std::llround(each.radius)}, Millimetres{std::llround(each.height)}}));
    const Reading worst = governing(readings_along(points, chart, Sector::side));
    CHECK_FALSE(worst.rated);
    CHECK(worst.height > 1'800_mm);
    CHECK(worst.height < 2'600_mm);
}

TEST_CASE("over both, the lower of front and side")
{
    const auto read = readings(move_points(beside_a_trench()), falling_chart(400), Sector::both);
    CHECK(governing(read).rated == 2'600_kg);
    CHECK(governing(readings(move_points(beside_a_trench()), falling_chart(400), Sector::front)).rated == 3'000_kg);
}

TEST_CASE("mirrored, or with more stand-off: the same, or never less radius and never more rating")
{
    std::mt19937 dice{3};
    for (int i = 0; i < 500; ++i) {
        const auto from_to = [&](double from, double to) { return std::uniform_real_distribution<>{from, to}(dice); };
        MoveAsked asked = beside_a_trench();
        asked.beside = dice() % 2 == 0 ? Beside::alongside : Beside::in_line;
        asked.stand_off = from_to(300, 2'500);
        asked.lay_along = from_to(0, 2'000);
        asked.pick_radius = from_to(2'000, 5'500);
        asked.pick_bearing = from_to(-180, 180);
        asked.bed = from_to(0, 4'000);
        const auto points = move_points(asked);
        const auto rated = [](const std::vector<MovePoint>& p) {
            const auto found = governing(readings(p, falling_chart(), Sector::both)).rated;
            return found ? found->count() : -1;
        };
        MoveAsked mirrored = asked;
        mirrored.lay_along = asked.beside == Beside::alongside ? -asked.lay_along : asked.lay_along;
        if (asked.beside == Beside::in_line)
            mirrored.pick_bearing = -asked.pick_bearing;
        const auto other = move_points(mirrored);
        for (std::size_t k = 0; k < points.size(); ++k)
            CHECK(other[k].radius == doctest::Approx(points[k].radius));
        MoveAsked further = asked;
        further.stand_off += from_to(0, 1'000);
        CHECK(move_points(further).back().radius >= points.back().radius);
        CHECK(rated(move_points(further)) <= rated(points));
    }
}
