// Forces in the legs of a chain sling, against statics solved by GSL, a published example and EN 818-4.

#include "leg_forces.hpp"
#include "table.hpp"

#include <doctest/doctest.h>

#include <gsl/gsl_linalg.h>

#include <array>
#include <cmath>
#include <random>

using namespace cotter;
using rules::Lug;

namespace {

double length(const Lug& lug) { return std::hypot(lug.x, lug.y, lug.below); }

// Three unknown forces, three equations: along x, along y, upwards.
std::array<double, 3> solved_by_gsl(const std::vector<Lug>& lugs, double load)
{
    std::array<double, 9> rows{};
    for (std::size_t i = 0; i < 3; ++i) {
        rows[i] = lugs[i].x / length(lugs[i]);
        rows[3 + i] = lugs[i].y / length(lugs[i]);
        rows[6 + i] = lugs[i].below / length(lugs[i]);
    }
    std::array<double, 3> right{0, 0, load}, found{};
    gsl_matrix_view matrix = gsl_matrix_view_array(rows.data(), 3, 3);
    gsl_vector_view b = gsl_vector_view_array(right.data(), 3), x = gsl_vector_view_array(found.data(), 3);
    gsl_permutation* order = gsl_permutation_alloc(3);
    int sign = 0;
    gsl_linalg_LU_decomp(&matrix.matrix, order, &sign);
    gsl_linalg_LU_solve(&matrix.matrix, order, &b.vector, &x.vector);
    gsl_permutation_free(order);
    return found;
}

std::vector<Lug> square(double half, double below)
{
    return {{half, half, below}, {-half, half, below}, {-half, -half, below}, {half, -half, below}};
}

} // namespace

TEST_CASE("three legs anywhere: the forces that GSL finds; none where GSL finds a leg that pushes")
{
    std::mt19937 dice{11};
    std::uniform_real_distribution<> anywhere{-2'000, 2'000}, under{500, 4'000};
    int held = 0, refused = 0;
    for (int i = 0; i < 2'000; ++i) {
        std::vector<Lug> lugs;
        for (int leg = 0; leg < 3; ++leg)
            lugs.push_back({anywhere(dice), anywhere(dice), under(dice)});
        const auto expected = solved_by_gsl(lugs, 1'000);
        const bool pushes = expected[0] < -1e-6 || expected[1] < -1e-6 || expected[2] < -1e-6;
        const auto found = rules::leg_forces(lugs, 1'000);
        REQUIRE(found.has_value() == !pushes);
        (pushes ? refused : held) += 1;
        for (std::size_t leg = 0; found && leg < 3; ++leg)
            CHECK((*found)[leg] == doctest::Approx(expected[leg]).epsilon(1e-6));
    }
    CHECK(held > 200);
    CHECK(refused > 200);
}

// Source: mrhengineering.dk, "three slings" (?p=78): hook over the goods' centre of gravity at 0.5, 0.4, 2 m above lugs
// at (0.1, 0), (0.8, 0.3) and (0.1, 0.7); it prints the legs' lengths 2.08, 2.02 and 2.06 m.
TEST_CASE("a published three-leg lift")
{
    const std::vector<Lug> lugs{{-0.4, -0.4, 2}, {0.3, -0.1, 2}, {-0.4, 0.3, 2}};
    CHECK(length(lugs[0]) == doctest::Approx(2.08).epsilon(0.002));
    CHECK(length(lugs[1]) == doctest::Approx(2.02).epsilon(0.003));
    CHECK(length(lugs[2]) == doctest::Approx(2.06).epsilon(0.003));
    const auto found = rules::leg_forces(lugs, 100).value();
    const auto expected = solved_by_gsl(lugs, 100);
    for (std::size_t leg = 0; leg < 3; ++leg)
        CHECK(found[leg] == doctest::Approx(expected[leg]));
}

// Source: EN 818-4: two legs 1.4 times one at 45 degrees (cos 45 x 2), as the textbook triangle of forces has it.
TEST_CASE("two legs at an angle carry half the load over its cosine; out of line with the load they hold nothing")
{
    for (const double degrees : {5.0, 30.0, 45.0, 60.0}) {
        const double half = 1'000 * std::tan(degrees * std::acos(-1) / 180);
        const auto found = rules::leg_forces({{half, 0, 1'000}, {-half, 0, 1'000}}, 2'000).value();
        CHECK(found[0] == doctest::Approx(1'000 / std::cos(degrees * std::acos(-1) / 180)));
        CHECK(found[1] == doctest::Approx(found[0]));
    }
    CHECK_FALSE(rules::leg_forces({{500, 10, 1'000}, {-500, 0, 1'000}}, 2'000));
    CHECK_FALSE(rules::leg_forces({{500, 0, 1'000}, {300, 0, 1'000}}, 2'000));
    CHECK_FALSE(rules::leg_forces({{500, 0, 0}, {-500, 0, 1'000}}, 2'000));
}

TEST_CASE("two legs off centre share as a lever does")
{
    const auto found = rules::leg_forces({{300, 0, 1'000}, {-900, 0, 1'000}}, 1'200).value();
    CHECK(found[0] / length({300, 0, 1'000}) * 1'000 == doctest::Approx(900)); // upwards, kg
    CHECK(found[1] / length({-900, 0, 1'000}) * 1'000 == doctest::Approx(300));
}

// Source: EN 818-6 (four legs rated as three): whichever carry, ours is not less than a third of the load each; with
// the load in the middle the worst is two opposite legs alone.
TEST_CASE("four legs: the worst set governs, and an off-centre load names the legs that carry it")
{
    const auto middle = rules::greatest_leg_forces(square(600, 1'200), 1'000).value();
    const double two = 500 * length({600, 600, 1'200}) / 1'200;
    for (const double each : middle)
        CHECK(each == doctest::Approx(two));
    auto off = square(600, 1'200);
    for (Lug& lug : off)
        lug.x += 200; // the centre of gravity lies 200 mm towards the two at -x
    const auto found = rules::greatest_leg_forces(off, 1'000).value();
    CHECK(found[1] > found[0]);
    CHECK(found[1] == doctest::Approx(found[2]));
    for (Lug& lug : off)
        lug.x += 600; // outside all four
    CHECK_FALSE(rules::greatest_leg_forces(off, 1'000));
}

// Source: Lami's theorem: with legs at angle b to the line through hook and middle, and the centre of gravity turned by
// f beneath the hook, the nearer leg has W sin(b + f) / sin 2b, the farther W sin(b - f) / sin 2b.
TEST_CASE("two legs of one length hang as Lami's theorem says, wherever the centre of gravity is between them")
{
    for (const double half : {300.0, 450.0, 500.0})
        for (const double leg : {800.0, 1200.0, 3000.0})
            for (const double off : {0.0, 50.0, 100.0, 250.0}) {
                const double b = std::asin(half / leg), f = std::atan(off / std::sqrt(leg * leg - half * half));
                const auto lugs = rules::hung({{half - off, 0, 0}, {-half - off, 0, 0}}, leg);
                REQUIRE(lugs);
                const auto found = rules::leg_forces(*lugs, 1000);
                REQUIRE(found);
                CHECK((*found)[0] == doctest::Approx(1000 * std::sin(b + f) / std::sin(2 * b)));
                CHECK((*found)[1] == doctest::Approx(1000 * std::sin(b - f) / std::sin(2 * b)));
            }
}

// Source: a rigid body keeps its lengths, a leg its own.
TEST_CASE("a load that is turned to hang keeps its shape and its legs their length")
{
    std::mt19937 dice{12};
    std::uniform_real_distribution<> turn{0, 6.283}, some{-200, 200};
    for (int i = 0; i < 500; ++i) {
        const double x = some(dice), y = some(dice);
        std::vector<Lug> flat;
        for (int lug = 0; lug < 3; ++lug) {
            const double at = turn(dice);
            flat.push_back({600 * std::cos(at) - x, 600 * std::sin(at) - y, 0});
        }
        const auto lugs = rules::hung(flat, 1500);
        if (!lugs)
            continue; // three lugs nearly on one spot
        for (std::size_t a = 0; a < 3; ++a) {
            CHECK(length((*lugs)[a]) == doctest::Approx(1500).epsilon(1e-3));
            const std::size_t b = (a + 1) % 3;
            CHECK(std::hypot((*lugs)[a].x - (*lugs)[b].x, (*lugs)[a].y - (*lugs)[b].y,
                             (*lugs)[a].below - (*lugs)[b].below) ==
                  doctest::Approx(std::hypot(flat[a].x - flat[b].x, flat[a].y - flat[b].y)).epsilon(1e-3));
        }
    }
    CHECK_FALSE(rules::hung({{500, 0, 0}, {-500, 0, 0}}, 500));                             // too short
    CHECK_FALSE(rules::hung({{500, 0, 0}, {-500, 0, 0}, {0, 500, 0}, {0, -300, 0}}, 1500)); // no one hook
}
