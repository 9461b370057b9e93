// Pressure under a track by the effective area.

#include "ground.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>

using namespace cotter;

namespace {

// All of the load on one track: standing so far across that the other carries none.
struct Footing {
    double width, length, load_kn;
};

std::optional<double> under(const Footing& footing, double eccentricity)
{
    // Half of twice the load is on each of two tracks; slewed straight ahead nothing leans across.
    const rules::Base base{footing.length, footing.width, 10'000, 0};
    return rules::pressure_kpa(base, {0, 0, 2 * footing.load_kn * 1000 / 9.81, eccentricity}, 0);
}

} // namespace

// Source: a worked foundation calculation on zanotowane.pl (724/1086): B = 3.0 m, e_B = 0.148 m, and the width that it
// reduces to, printed as 2.705 m (3.0 - 2 x 0.148 = 2.704 m; it rounds e).
TEST_CASE("a published footing's reduced width")
{
    const Footing footing{23'000, 3'000, 1'000}; // the reduced dimension lies along the track here
    const double reduced = 1'000e3 / (footing.width * under(footing, 148).value() / 1000);
    CHECK(reduced == doctest::Approx(2'705).epsilon(0.001));
}

// Source: B. M. Das, Principles of Foundation Engineering, example of two-way eccentricity: a square of 1.5 m with
// e_L = 0.3 m and e_B = 0.15 m has an effective area of (1.275 + 0.315) x 1.5 / 2 = 1.19 m2 by Highter and Anders. The
// rectangle of Meyerhof and EN 1997-1 is 1.2 m x 0.9 m: smaller, so the pressure is not less than the book's.
TEST_CASE("never less than the book's pressure where the load leans both ways")
{
    const double book = 100.0 / ((1.275 + 0.315) * 1.5 / 2);
    const double ours = under({1'500 - 2 * 150, 1'500, 100}, 300).value();
    CHECK(ours >= book);
    CHECK(ours == doctest::Approx(100.0 / (1.2 * 0.9)));
}

// Source: strength of materials. Linear pressure under a rigid strip has its greatest value P/A (1 + 6e/L) within the
// middle third, twice the mean at its end; the effective area gives P/A / (1 - 2e/L), which is 1.5 times the mean
// there.
TEST_CASE("at the middle third's end the mean on the effective area is one and a half times the whole's")
{
    const double whole = under({500, 3'000, 100}, 0).value();
    CHECK(under({500, 3'000, 100}, 500).value() == doctest::Approx(1.5 * whole));
}

// Source: equilibrium, by summing small pieces: a uniform pressure on the effective length must hold the same force and
// moment as what stands.
TEST_CASE("the pressure found holds up what stands, in force and in moment")
{
    std::mt19937 dice{7};
    int held = 0;
    for (int i = 0; i < 200; ++i) {
        const auto from_to = [&](double from, double to) { return std::uniform_real_distribution<>{from, to}(dice); };
        const rules::Base base{from_to(2'500, 4'500), from_to(400, 900), from_to(1'900, 2'800), from_to(-300, 300)};
        const rules::Weights standing{from_to(12'000, 30'000), from_to(-600, 200), from_to(0, 3'000),
                                      from_to(2'000, 7'000)};
        const double turn = from_to(0, 180);
        const auto pressure = rules::pressure_kpa(base, standing, turn);
        if (!pressure)
            continue;
        ++held;
        const double total = (standing.machine_kg + standing.load_kg) * 9.81;
        const double out = (standing.machine_kg * standing.machine_ahead + standing.load_kg * standing.load_radius) /
                           (standing.machine_kg + standing.load_kg);
        const double along = base.slew_ahead + out * std::cos(turn * std::acos(-1) / 180);
        const double across = std::abs(out * std::sin(turn * std::acos(-1) / 180));
        const double near_track = total * (0.5 + across / base.gauge); // moments about the far track
        double force = 0, moment = 0;
        constexpr int pieces = 20'000;
        for (int k = 0; k < pieces; ++k) {
            const double x = base.contact_length * ((k + 0.5) / pieces - 0.5);
            if (std::abs(x - along) > base.contact_length / 2 - std::abs(along))
                continue;
            const double piece = *pressure / 1000 * base.shoe_width * base.contact_length / pieces;
            force += piece;
            moment += piece * x;
        }
        CHECK(force == doctest::Approx(near_track).epsilon(0.001));
        CHECK(moment == doctest::Approx(near_track * along).epsilon(0.01).scale(near_track * 100));
    }
    CHECK(held > 100);
}

TEST_CASE("a load outside the base is refused, and nowhere in a slew is the pressure above the greatest")
{
    const rules::Base base{3'600, 600, 2'400, 100};
    const rules::Weights standing{22'000, -350, 1'800, 5'400};
    CHECK_FALSE(rules::pressure_kpa(base, {22'000, -350, 9'000, 7'000}, 90));
    CHECK_FALSE(rules::greatest_pressure_kpa(base, {22'000, -350, 9'000, 7'000}, 0, 90));
    CHECK_FALSE(rules::pressure_kpa({0, 600, 2'400, 0}, standing, 0));
    const double greatest = rules::greatest_pressure_kpa(base, standing, -90, 90).value();
    for (double turn = -90; turn <= 90; turn += 0.37)
        CHECK(rules::pressure_kpa(base, standing, turn).value() <= greatest * 1.0005);
    CHECK(rules::greatest_pressure_kpa(base, standing, 0, 20).value() <= greatest);
}
