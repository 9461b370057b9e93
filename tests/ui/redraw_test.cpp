#include "redraw.hpp"
#include "scroll.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace cotter::ui;
using cotter::rules::Instant;

namespace {

const Instant twelve_past{12}; // seconds past a minute

} // namespace

TEST_CASE("after an event three frames are drawn, then the loop sleeps until the minute turns")
{
    Redraw redraw;
    for (int i = 0; i < Redraw::settle_frames; ++i)
        redraw.drew();
    CHECK(redraw.seconds_to_wait(false, twelve_past) == 48);
    CHECK(redraw.seconds_to_wait(false, Instant{60}) == 60);
    redraw.woken();
    int frames = 0;
    while (redraw.seconds_to_wait(false, twelve_past) == 0) {
        redraw.drew();
        ++frames;
    }
    CHECK(frames == 3);
}

TEST_CASE("while a finger is down the loop does not sleep")
{
    Redraw redraw;
    for (int i = 0; i < Redraw::settle_frames; ++i)
        redraw.drew();
    CHECK(redraw.seconds_to_wait(true, twelve_past) == 0);
}

TEST_CASE("a thrown list never turns back and comes to rest, at any frame rate")
{
    for (const float seconds : {1.0F / 240, 1.0F / 60, 1.0F / 15}) {
        CAPTURE(seconds);
        Fling fling;
        for (int i = 0; i < 5; ++i)
            fling.drag(12, 1.0F / 60);
        float total = 0;
        int frames = 0;
        while (fling.moving() && frames < 10'000) {
            const float moved = fling.advance(seconds);
            CHECK(moved >= 0);
            total += moved;
            ++frames;
        }
        CHECK(frames < 10'000);
        CHECK(total > 100);
        CHECK(total < 250);
    }
}
