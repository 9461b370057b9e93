// What takes longer than a moment says how far it is, and can be ended.

#include "in_steps.hpp"
#include "measures.hpp"

#include <doctest/doctest.h>

#include <stdexcept>

using namespace cotter;
using tests::Rig;

namespace {

void show(Rig& rig, ui::Work work)
{
    work.done = 12'345;
    work.of = 50'000;
    rig.show_work(work);
}

} // namespace

TEST_CASE("long work has the glass, says how far it is, and is ended by holding its button, not by a tap")
{
    tests::SampleBook sample;
    for (const ui::Work& each : {ui::reading_the_book, ui::copying_the_book}) {
        Rig rig{sample.store(), ui::Door::none};
        show(rig, each);
        CHECK(rig.shows("24 %"));
        CHECK(rig.shows(each.hint));
        CHECK_FALSE(rig.target("Cab"));
        rig.tap(each.stop); // meant for the page that was there before
        CHECK_FALSE(rig.app().is_work_ended());
        rig.hold(each.stop);
        CHECK(rig.app().is_work_ended());
        rig.app().end_work();
        rig.frame();
        CHECK(rig.target("Cab"));
    }
}

TEST_CASE("what is pressed as long work ends answers nothing on the page under it")
{
    tests::SampleBook sample;
    Rig rig{sample.store(), ui::Door::none};
    show(rig, ui::copying_the_book);
    rig.app().end_work();
    rig.frame();
    const double ended = rig.ticks;
    rig.tap("Cab");
    CHECK(rig.target("Cab"));
    rig.ticks = ended + 1;
    rig.tap("Cab");
    CHECK_FALSE(rig.target("Cab"));
}

TEST_CASE("long work keeps to the sizes of a glove, and no text is clipped")
{
    tests::SampleBook sample;
    Rig rig{sample.store(), ui::Door::none};
    for (const ui::Work& each : {ui::reading_the_book, ui::copying_the_book}) {
        show(rig, each);
        tests::check_everywhere(rig, ui::glove, each.heading);
    }
}

TEST_CASE("a step that fails stops the steps, which go on with it")
{
    tests::SampleBook sample;
    const ui::Outside outside{sample.store(), {}, {}, {}, {}};
    ui::InSteps steps;
    steps.begin(3);
    std::vector<std::size_t> done;
    CHECK_THROWS(steps.work(outside, 1000, [&](std::size_t i) {
        if (i == 1)
            throw std::runtime_error{"cannot be read"};
        done.push_back(i);
    }));
    CHECK(steps.is_stopped());
    CHECK(done == std::vector<std::size_t>{0});
    steps.go_on();
    steps.work(outside, 1000, [&](std::size_t i) { done.push_back(i); });
    CHECK(done == std::vector<std::size_t>{0, 1, 2});
}
