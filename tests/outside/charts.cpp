// The chart, against the GNU Scientific Library and an enumeration. All charts here are made up: no public excavator
// chart that may be copied was found.

#include "chart.hpp"

#include <doctest/doctest.h>
#include <gsl/gsl_errno.h>
#include <gsl/gsl_interp2d.h>

#include <algorithm>
#include <cmath>
#include <memory>
#include <random>

namespace rules = cotter::rules;
using rules::ChartPoint;
using rules::Kilograms;
using rules::Millimetres;
using rules::Sector;

namespace {

const std::vector<double> radii{2500, 3000, 4000, 5500, 6000, 7250, 9000};
const std::vector<double> heights{-4000, -2500, -1000, 0, 1500, 3000};

rules::Cell cell(Sector over, double radius, double height, rules::Known<Kilograms> rated)
{
    return {over, Millimetres{std::llround(height)}, Millimetres{std::llround(radius)}, rated};
}

// A chart in random order of cells, and the same numbers as the library wants them.
struct Grid {
    explicit Grid(unsigned seed)
    {
        std::mt19937 random{seed};
        std::uniform_int_distribution<int> rating{300, 12'000};
        for (std::size_t h = 0; h < heights.size(); ++h)
            for (std::size_t r = 0; r < radii.size(); ++r) {
                const int rated = rating(random);
                kg.push_back(rated);
                chart.cells.push_back(cell(Sector::front, radii[r], heights[h], Kilograms{rated}));
                chart.cells.push_back(cell(Sector::side, radii[r], heights[h], Kilograms{rating(random)}));
            }
        std::shuffle(chart.cells.begin(), chart.cells.end(), random);
    }

    rules::Chart chart;
    std::vector<double> kg; // of the front; the radius runs fastest
};

class Library {
public:
    explicit Library(const Grid& grid) : kg_{grid.kg}
    {
        gsl_set_error_handler_off();
        gsl_interp2d_init(plane_.get(), radii.data(), heights.data(), kg_.data(), radii.size(), heights.size());
    }

    std::optional<double> at(ChartPoint point) const
    {
        double value = 0;
        const int error = gsl_interp2d_eval_e(plane_.get(), radii.data(), heights.data(), kg_.data(),
                                              static_cast<double>(point.radius.count()),
                                              static_cast<double>(point.height.count()), nullptr, nullptr, &value);
        return error == GSL_SUCCESS ? std::optional{value} : std::nullopt;
    }

private:
    std::vector<double> kg_;
    std::unique_ptr<gsl_interp2d, void (*)(gsl_interp2d*)> plane_{
        gsl_interp2d_alloc(gsl_interp2d_bilinear, radii.size(), heights.size()), gsl_interp2d_free};
};

// No line of the grid lies between the two, nor on the value itself unless it is this one.
bool is_next_to(double line, double value, const std::vector<double>& lines)
{
    const auto ends = std::minmax({line, value});
    return std::none_of(lines.begin(), lines.end(),
                        [&](double other) { return other != line && ends.first <= other && other <= ends.second; });
}

bool is_outside(double value, const std::vector<double>& lines)
{
    return value < lines.front() || value > lines.back();
}

// Every cell that is next to the point, one by one.
rules::Known<Kilograms> lowest_by_enumeration(const rules::Chart& chart, Sector over, ChartPoint point)
{
    const auto radius = static_cast<double>(point.radius.count()), height = static_cast<double>(point.height.count());
    if (is_outside(radius, radii) || is_outside(height, heights))
        return std::nullopt;
    rules::Known<Kilograms> lowest;
    for (const rules::Cell& each : chart.cells) {
        if (each.over != over || !is_next_to(static_cast<double>(each.radius->count()), radius, radii) ||
            !is_next_to(static_cast<double>(each.height->count()), height, heights))
            continue;
        if (!each.rated)
            return std::nullopt;
        lowest = lowest ? std::min(*lowest, *each.rated) : *each.rated;
    }
    return lowest;
}

// Points in and around the grid, every fourth on a line of it.
std::vector<ChartPoint> points(unsigned seed, int count)
{
    std::mt19937 random{seed};
    std::uniform_int_distribution<int> radius{2300, 9200}, height{-4200, 3200};
    std::uniform_int_distribution<std::size_t> line{0, radii.size() - 1}, level{0, heights.size() - 1};
    std::vector<ChartPoint> made;
    for (int i = 0; i < count; ++i) {
        const bool on_line = i % 4 == 0, on_level = i % 8 < 2;
        made.push_back({Millimetres{on_line ? static_cast<std::int64_t>(radii[line(random)]) : radius(random)},
                        Millimetres{on_level ? static_cast<std::int64_t>(heights[level(random)]) : height(random)}});
    }
    return made;
}

rules::Chart one_cell_each(std::initializer_list<std::pair<int, int>> rated_at_radius)
{
    rules::Chart chart;
    for (const auto& [radius, rated] : rated_at_radius)
        chart.cells.push_back(cell(Sector::front, radius, 0, Kilograms{rated}));
    return chart;
}

} // namespace

// Source: GNU Scientific Library, gsl_interp2d_bilinear.
TEST_CASE("Between the corners the value is the library's bilinear one, and nothing outside the grid")
{
    int inside = 0, outside = 0;
    for (unsigned seed = 1; seed <= 10; ++seed) {
        const Grid grid{seed};
        const Library library{grid};
        for (const ChartPoint point : points(seed, 2000)) {
            INFO("radius ", point.radius.count(), ", height ", point.height.count());
            const auto wanted = library.at(point);
            const auto got = rules::bilinear_kg(grid.chart, Sector::front, point);
            REQUIRE(got.has_value() == wanted.has_value());
            ++(wanted ? inside : outside);
            if (wanted)
                REQUIRE(*got == doctest::Approx(*wanted).epsilon(1e-12));
        }
    }
    CHECK(inside > 10'000);
    CHECK(outside > 500);
}

// Source: an enumeration of all cells.
TEST_CASE("The rating is the lowest of the cells next to the point")
{
    for (unsigned seed = 11; seed <= 20; ++seed) {
        const Grid grid{seed};
        for (const ChartPoint point : points(seed, 2000))
            for (const Sector over : {Sector::front, Sector::side}) {
                INFO("radius ", point.radius.count(), ", height ", point.height.count());
                REQUIRE(rules::lowest_corner(grid.chart, over, point) ==
                        lowest_by_enumeration(grid.chart, over, point));
            }
    }
}

// Source: common chart convention, from memory: a blank cell is no lift.
TEST_CASE("A blank among the cells next to the point leaves it without a rating")
{
    std::mt19937 random{21};
    int blank = 0;
    for (unsigned seed = 21; seed <= 30; ++seed) {
        Grid grid{seed};
        for (rules::Cell& each : grid.chart.cells)
            if (random() % 8 == 0)
                each.rated.reset();
        for (const ChartPoint point : points(seed, 1000)) {
            INFO("radius ", point.radius.count(), ", height ", point.height.count());
            const auto wanted = lowest_by_enumeration(grid.chart, Sector::front, point);
            REQUIRE(rules::lowest_corner(grid.chart, Sector::front, point) == wanted);
            blank += !wanted;
        }
    }
    CHECK(blank > 1000);
}

// Source: plane geometry: a mean of four numbers is not under the least of them.
TEST_CASE("The rating is never above the bilinear value")
{
    for (unsigned seed = 31; seed <= 35; ++seed) {
        const Grid grid{seed};
        for (const ChartPoint point : points(seed, 2000))
            if (const auto between = rules::bilinear_kg(grid.chart, Sector::front, point)) {
                const auto lowest = rules::lowest_corner(grid.chart, Sector::front, point).value();
                REQUIRE(static_cast<double>(lowest.count()) <= *between + 1e-6);
            }
    }
}

// Source: a public mobile-crane manual: between tabulated radii the smaller value at the next larger radius counts.
TEST_CASE("Where ratings fall with the radius the next larger radius governs")
{
    const auto chart = one_cell_each({{3000, 4000}, {4000, 2900}, {5000, 2100}});
    const auto at = [&](std::int64_t radius) {
        return rules::lowest_corner(chart, Sector::front, {Millimetres{radius}, Millimetres{0}});
    };
    CHECK(at(3000) == Kilograms{4000});
    CHECK(at(3001) == Kilograms{2900});
    CHECK(at(3999) == Kilograms{2900});
    CHECK(at(4000) == Kilograms{2900});
    CHECK(at(4001) == Kilograms{2100});
    CHECK_FALSE(at(2999));
    CHECK_FALSE(at(5001));
}

// Source: ISO 10567:2007 as quoted in public manuals: over front and over side are separate; unless the slew stays in
// one sector the lower of both counts (own rule).
TEST_CASE("Without a sector the lower of front and side is the rating")
{
    const Grid grid{41};
    for (const ChartPoint point : points(41, 500)) {
        const auto front = lowest_by_enumeration(grid.chart, Sector::front, point);
        const auto side = lowest_by_enumeration(grid.chart, Sector::side, point);
        const auto lower = front && side ? rules::Known<Kilograms>{std::min(*front, *side)} : std::nullopt;
        CHECK(rules::rated_at(grid.chart, Sector::both, point) == lower);
        CHECK(rules::rated_at(grid.chart, std::nullopt, point) == lower);
        CHECK(rules::rated_at(grid.chart, Sector::side, point) == side);
    }
}

// Source: ISO 10567:1992 item 3.4 as quoted in a public machine manual: extra devices are needed when the rated lift
// exceeds 1,000 kg at minimum radius or the overturning moment exceeds 40,000 N m. EN 474-5: same figures, from memory.
TEST_CASE("A chart over 1000 kg at its least radius needs the lifting devices")
{
    CHECK_FALSE(rules::needs_lifting_devices(one_cell_each({{3000, 1000}, {4000, 900}})));
    CHECK(rules::needs_lifting_devices(one_cell_each({{3000, 1001}, {4000, 900}})));
    CHECK_FALSE(rules::needs_lifting_devices(one_cell_each({{3000, 900}, {3500, 1001}}))); // not at the least
}

// Source: the same. 40,000 N m over 9.81 m/s2 is 4,077.47 kg m: 815.49 kg at 5 m, 1,019.4 kg at 4 m.
TEST_CASE("A chart over 40000 newton metres anywhere needs the lifting devices")
{
    CHECK_FALSE(rules::needs_lifting_devices(one_cell_each({{3000, 900}, {5000, 815}})));
    CHECK(rules::needs_lifting_devices(one_cell_each({{3000, 900}, {5000, 816}})));
    CHECK_FALSE(rules::needs_lifting_devices(one_cell_each({{3000, 900}, {4000, 1019}})));
    CHECK(rules::needs_lifting_devices(one_cell_each({{3000, 900}, {4000, 1020}})));
}
