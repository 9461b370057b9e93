// What takes longer than a moment says how far it is, and can be ended.

#include "measures.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using tests::Rig;

namespace {

ui::Work under_way(ui::Work work)
{
    work.done = 12'345;
    work.of = 50'000;
    return work;
}

} // namespace

TEST_CASE("long work has the glass, says how far it is, and is ended by its button")
{
    tests::SampleBook sample;
    for (const ui::Work& each : {ui::reading_the_book, ui::copying_the_book}) {
        Rig rig{sample.store(), ui::Door::none};
        rig.app().show_work(under_way(each));
        rig.frame();
        CHECK(rig.shows("12345 of 50000"));
        CHECK(rig.shows(each.hint));
        CHECK_FALSE(rig.target("Cab"));
        CHECK_FALSE(rig.app().is_work_stopped());
        rig.tap(each.stop);
        CHECK(rig.app().is_work_stopped());
        rig.app().show_work({});
        rig.frame();
        CHECK(rig.target("Cab"));
        CHECK_FALSE(rig.app().is_work_stopped());
    }
}

TEST_CASE("long work keeps to the sizes of a glove, and no text is clipped")
{
    tests::SampleBook sample;
    Rig rig{sample.store(), ui::Door::none};
    for (const ui::Work& each : {ui::reading_the_book, ui::copying_the_book}) {
        rig.app().show_work(under_way(each));
        tests::check_everywhere(rig, ui::glove, each.heading);
    }
}
