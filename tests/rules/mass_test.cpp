// The mass of a pipe. The figures are worked by hand with pi/4 = 0.785398163.

#include "good_question.hpp"
#include "mass.hpp"

#include <doctest/doctest.h>

namespace cotter::rules {

namespace {

Pipe plain() { return *good_lift().pipe; }

// Barrel 900, wall 100, 2.5 m: 0.785398163 x (0.81 - 0.49) x 2.5 x 2,500 = 1,570.796 kg.
Pipe published()
{
    Pipe pipe = plain();
    pipe.bore = 700_mm;
    pipe.barrel = 900_mm;
    pipe.stated.reset();
    return pipe;
}

double used(const Pipe& pipe)
{
    const auto mass = mass_of(pipe).used;
    REQUIRE(mass.has_value());
    return *mass;
}

// A ring of 800 to 1000 mm, 100 mm long: 0.785398163 x (1.00 - 0.64) x 0.1 x 2,500 = 70.686 kg.
Pipe with_socket()
{
    Pipe pipe = published();
    pipe.bore = 600_mm;
    pipe.barrel = 800_mm; // 1,374.447 kg
    pipe.socket = 1000_mm;
    pipe.socket_length = 100_mm;
    return pipe;
}

} // namespace

TEST_CASE("a pipe is a hollow cylinder") { CHECK(used(published()) == doctest::Approx(1570.796).epsilon(1e-6)); }

TEST_CASE("a socket adds its ring") { CHECK(used(with_socket()) == doctest::Approx(1374.447 + 70.686).epsilon(1e-6)); }

TEST_CASE("a socket not wider than the barrel adds nothing")
{
    Pipe pipe = with_socket();
    pipe.socket = 800_mm;
    CHECK(used(pipe) == doctest::Approx(1374.447).epsilon(1e-6));
}

TEST_CASE("a socket's length that is not known is overall less effective length")
{
    Pipe pipe = with_socket();
    pipe.socket_length.reset();
    pipe.effective = 2400_mm;
    CHECK(used(pipe) == doctest::Approx(1374.447 + 70.686).epsilon(1e-6));
    pipe.effective.reset();
    CHECK_FALSE(mass_of(pipe).used);
}

TEST_CASE("an effective length over the overall one gives no mass")
{
    Pipe pipe = with_socket();
    pipe.socket_length.reset();
    pipe.effective = 2501_mm;
    CHECK_FALSE(mass_of(pipe).used);
}

TEST_CASE("the density of concrete is 2500 where none is stated and no other material has one")
{
    Pipe pipe = published();
    pipe.density.reset();
    CHECK(used(pipe) == doctest::Approx(1570.796).epsilon(1e-6));
    pipe.material = "clay";
    CHECK_FALSE(mass_of(pipe).used);
    pipe.density = Density{2000}; // 1,570.796 x 2000 / 2500
    CHECK(used(pipe) == doctest::Approx(1256.637).epsilon(1e-6));
    pipe.density.reset();
    pipe.material.reset();
    CHECK_FALSE(mass_of(pipe).used);
}

TEST_CASE("the stated allowance is added and none stated is none")
{
    Pipe pipe = published();
    pipe.allowance = Percent{10};
    CHECK(used(pipe) == doctest::Approx(1727.876).epsilon(1e-6));
    CHECK(*mass_of(pipe).computed == doctest::Approx(1570.796).epsilon(1e-6));
    pipe.allowance.reset();
    CHECK(used(pipe) == doctest::Approx(1570.796).epsilon(1e-6));
}

TEST_CASE("the greater of stated and computed governs")
{
    Pipe pipe = published();
    pipe.stated = 1571_kg;
    CHECK(used(pipe) == 1571);
    pipe.stated = 1570_kg;
    CHECK(used(pipe) == doctest::Approx(1570.796).epsilon(1e-6));
    pipe.stated.reset();
    CHECK(used(pipe) == doctest::Approx(1570.796).epsilon(1e-6));
}

TEST_CASE("a stated mass alone is not enough")
{
    for (Known<Millimetres> Pipe::*each : {&Pipe::bore, &Pipe::barrel, &Pipe::socket, &Pipe::overall}) {
        Pipe pipe = plain();
        pipe.*each = std::nullopt;
        CHECK_FALSE(mass_of(pipe).used);
    }
}

TEST_CASE("a bore as wide as the barrel gives no mass")
{
    Pipe pipe = published();
    pipe.bore = 900_mm;
    CHECK_FALSE(mass_of(pipe).computed);
}

} // namespace cotter::rules
