// The diameter of a pipe from its girth, against another library's pi.

#include "tape.hpp"

#include <doctest/doctest.h>
#include <gsl/gsl_math.h>

#include <cmath>

namespace rules = cotter::rules;

// Source: GNU Scientific Library, gsl_math.h, M_PI.
TEST_CASE("a girth read to the millimetre gives back the diameter to the millimetre")
{
    for (std::int64_t diameter = 50; diameter <= 4000; ++diameter) {
        CAPTURE(diameter);
        const rules::Millimetres girth{std::llround(M_PI * static_cast<double>(diameter))};
        CHECK(rules::across(girth).count() == diameter);
    }
}

TEST_CASE("two readings by tape agree up to 8 mm, that included") // firm's own rule
{
    CHECK(rules::agree(rules::Millimetres{580}, rules::Millimetres{588}));
    CHECK_FALSE(rules::agree(rules::Millimetres{580}, rules::Millimetres{589}));
}
