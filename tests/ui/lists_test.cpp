// Labels that share a board, and a list under a finger.

#include "measures.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace cotter;
using namespace cotter::tests;

TEST_CASE("no label of the due board lies on another")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    for (const char* each : {"Further", "Further", "Nearer", "Nearer", "Nearer", "Nearer"}) {
        for (const Glass& glass : all_glasses()) {
            rig.look_on(glass);
            for (const ui::Seen& a : rig.seen())
                for (const ui::Seen& b : rig.seen())
                    if (!a.target && !b.target && &a < &b && a.y > 0) {
                        CAPTURE(a.text);
                        CAPTURE(b.text);
                        CHECK_FALSE(overlap(a, b));
                    }
        }
        rig.look_on({});
        rig.tap(each);
    }
}

TEST_CASE("a list on the glass keeps its place under a finger and can be thrown")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::yard};
    const auto top_of = [&] {
        for (const ui::Seen& each : rig.seen())
            if (!each.target && each.text.find("-") != std::string::npos && each.y > 100)
                return each.y;
        return 0.0F;
    };
    const float before = top_of();
    ImGuiIO& io = ImGui::GetIO();
    ui::feed_pointer(io, {640, 500});
    rig.frame();
    ui::feed_press(io, true);
    rig.frame();
    for (int i = 1; i <= 10; ++i) {
        ui::feed_pointer(io, {640, 500 - 12.0F * static_cast<float>(i)});
        rig.frame();
    }
    ui::feed_press(io, false);
    rig.frame();
    CHECK(top_of() != before);
}
