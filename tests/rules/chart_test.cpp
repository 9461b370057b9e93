// The rating at a point of a chart: corners, grid lines, blanks, and what lies off the grid.

#include "chart.hpp"
#include "good_question.hpp"

#include <doctest/doctest.h>

namespace cotter::rules {

namespace {

Cell cell(int radius, int height, Known<Kilograms> rated)
{
    return {Sector::front, Millimetres{height}, Millimetres{radius}, rated};
}

//            radius 3 m   4 m    5 m
// height 1 m     3000    2500   2000
// height 0 m     2800    2400   1900
// height -1 m    2600    blank  1500
Chart grid()
{
    Chart chart;
    chart.cells = {cell(3000, 1000, 3000_kg),  cell(4000, 1000, 2500_kg),       cell(5000, 1000, 2000_kg),
                   cell(3000, 0, 2800_kg),     cell(4000, 0, 2400_kg),          cell(5000, 0, 1900_kg),
                   cell(3000, -1000, 2600_kg), cell(4000, -1000, std::nullopt), cell(5000, -1000, 1500_kg)};
    return chart;
}

Known<Kilograms> at(int radius, int height)
{
    return lowest_corner(grid(), Sector::front, {Millimetres{radius}, Millimetres{height}});
}

} // namespace

TEST_CASE("inside a cell the lowest of its four corners governs")
{
    CHECK(at(3001, 999) == 2400_kg);
    CHECK(at(4999, 1) == 1900_kg);
}

TEST_CASE("on a line of the grid only that line's corners govern")
{
    CHECK(at(3500, 1000) == 2500_kg); // height line: 3000 and 2500
    CHECK(at(3000, 500) == 2800_kg);  // radius line: 3000 and 2800
    CHECK(at(4000, 500) == 2400_kg);
}

TEST_CASE("on a point of the grid its own rating governs")
{
    CHECK(at(4000, 1000) == 2500_kg);
    CHECK(at(5000, 0) == 1900_kg);
    CHECK(at(5000, -1000) == 1500_kg);
}

TEST_CASE("a millimetre past a line takes the corners beyond it")
{
    CHECK(at(4000, 1000) == 2500_kg);
    CHECK(at(4001, 1000) == 2000_kg);
    CHECK(at(4000, 999) == 2400_kg);
}

TEST_CASE("outside the grid there is no rating")
{
    CHECK_FALSE(at(2999, 500));
    CHECK_FALSE(at(5001, 500));
    CHECK_FALSE(at(4000, 1001));
    CHECK_FALSE(at(5000, -1001));
    CHECK(at(5000, -1000));
}

TEST_CASE("a blank among the corners that govern leaves no rating")
{
    CHECK_FALSE(at(4000, -1000));
    CHECK_FALSE(at(3500, -500));
    CHECK_FALSE(at(4500, -1));
    CHECK_FALSE(at(4000, -1));
    CHECK(at(3000, -500) == 2600_kg); // the blank is not on this line
    CHECK(at(3500, 0) == 2400_kg);
}

TEST_CASE("a corner that is not in the chart is a blank")
{
    Chart chart = grid();
    chart.cells.erase(chart.cells.begin());
    CHECK_FALSE(lowest_corner(chart, Sector::front, {3500_mm, 500_mm}));
}

TEST_CASE("of two ratings for one point the lower counts and a blank is lower than any")
{
    Chart chart = grid();
    chart.cells.push_back(cell(4000, 1000, 2499_kg));
    CHECK(lowest_corner(chart, Sector::front, {4000_mm, 1000_mm}) == 2499_kg);
    chart.cells.push_back(cell(4000, 1000, std::nullopt));
    CHECK_FALSE(lowest_corner(chart, Sector::front, {4000_mm, 1000_mm}));
}

TEST_CASE("a chart without a sector has no rating there")
{
    CHECK_FALSE(rated_at(grid(), Sector::side, {4000_mm, 0_mm}));
    CHECK_FALSE(rated_at(grid(), Sector::both, {4000_mm, 0_mm}));
    CHECK(rated_at(grid(), Sector::front, {4000_mm, 0_mm}) == 2400_kg);
}

TEST_CASE("an empty chart rates nothing and needs no devices")
{
    CHECK_FALSE(rated_at(Chart{}, Sector::front, {4000_mm, 0_mm}));
    CHECK_FALSE(needs_lifting_devices(Chart{}));
}

// Midway between 3000, 2500, 2800 and 2400: 10,700 / 4.
TEST_CASE("the rating between the corners is for information")
{
    CHECK(*bilinear_kg(grid(), Sector::front, {3500_mm, 500_mm}) == doctest::Approx(2675));
    CHECK(*bilinear_kg(grid(), Sector::front, {4000_mm, 1000_mm}) == doctest::Approx(2500));
    CHECK(*bilinear_kg(grid(), Sector::front, {3250_mm, 1000_mm}) == doctest::Approx(2875));
    CHECK_FALSE(bilinear_kg(grid(), Sector::front, {3500_mm, Millimetres{-500}}));
}

} // namespace cotter::rules
