// The glass at rest and under quick fingers: no blank page, no verdict past its end, no second tap taken, no list that
// only a swipe turns.

#include "own_book.hpp"
#include "rig.hpp"

#include "decide.hpp"
#include "lift_question.hpp"
#include "may_lift_until.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using tests::Rig;
using tests::SampleBook;

namespace {

// The rig of the sample that may lift, on its sheet, in a shift to 17:30.
void go_to_may_lift(Rig& rig, SampleBook& sample)
{
    for (const std::string& each : {std::string{"T. Dunmore (invented)"}, std::string{"EX-14"}, std::string{"Mark A"},
                                    sample.store().fact("pipe", "sk-450")->doc.value("name", "")})
        rig.tap(each);
}

rules::Instant end_of_shift(const records::Book& book)
{
    return rules::Instant{desk::open_shift(book, desk::current_site(book)).at("end").get<std::int64_t>()};
}

// Press and release at once, without a second's going by.
void quick_tap(Rig& rig, const std::string& words)
{
    const ui::Seen* found = rig.target(words);
    REQUIRE(found);
    const ImVec2 at{found->x + found->w / 2, found->y + found->h / 2};
    ImGuiIO& io = ImGui::GetIO();
    ui::feed_pointer(io, at);
    rig.frame();
    ui::feed_press(io, true);
    rig.frame();
    ui::feed_press(io, false);
    rig.frame();
    rig.ticks += 0.1;
    rig.frame();
}

} // namespace

TEST_CASE("a finding that the clock brings while the card is open leaves no blank glass")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    go_to_may_lift(rig, sample);
    rig.tap("Lift");
    CHECK(rig.target("All so"));
    rig.now = end_of_shift(sample.store()) + rules::Instant{1};
    rig.frame();
    CHECK(rig.again_in() == 0); // at once, whatever this frame shows
    rig.frame();
    CHECK(rig.shows("DO NOT LIFT"));
    CHECK(rig.shows("If a load hangs"));
}

TEST_CASE("MAY LIFT is drawn anew in the second after its end")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    go_to_may_lift(rig, sample);
    REQUIRE(rig.shows("MAY LIFT"));
    const rules::Instant end = end_of_shift(sample.store());
    rig.now = end - rules::Instant{20};
    rig.frame();
    CHECK(rig.shows("MAY LIFT"));
    CHECK(rig.again_in() == 21);
    rig.now = end + rules::Instant{1};
    rig.frame();
    CHECK(rig.shows("DO NOT LIFT"));
}

TEST_CASE("a double tap answers one question, not two")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    rig.tap("Place");
    rig.tap("Mark C");
    CHECK(rig.shows("1 of 4"));
    quick_tap(rig, "Yes");
    quick_tap(rig, "Yes");
    CHECK(rig.shows("2 of 4"));
    rig.ticks += 1;
    quick_tap(rig, "Yes");
    CHECK(rig.shows("3 of 4"));
}

TEST_CASE("a list is turned by a button too, to its end and back to the top")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    rig.tap("This day");
    rig.frame();
    REQUIRE(rig.target("Further down"));
    const std::string first = rig.seen().at(1).text;
    for (int i = 0; i < 20 && rig.target("Further down"); ++i)
        rig.tap("Further down");
    CHECK(rig.shows("Trenches")); // what comes last
    rig.tap("To the top");
    CHECK(rig.shows("Stops called, and lifted by nobody"));
}

TEST_CASE("a list of records to put right is turned to its end by its button, and stays there")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    for (const char* each : {"Record", "Put right"})
        rig.tap(each);
    for (int i = 0; i < 60 && rig.target("Further down"); ++i)
        rig.tap("Further down");
    REQUIRE(rig.target("To the top"));
    rig.tap("To the top");
    CHECK(rig.target("Further down"));
}

TEST_CASE("the second tap of the double one that opened a pad falls on none of its keys")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::yard};
    quick_tap(rig, "Find");
    quick_tap(rig, "5"); // not heard yet
    rig.ticks += 1;
    quick_tap(rig, "0");
    quick_tap(rig, "2"); // on a pad keys are as quick as fingers
    CHECK(rig.shows("02"));
    CHECK_FALSE(rig.shows("502"));
}

TEST_CASE("for somebody else a locked glass begins anew only where that is held")
{
    tests::OwnBook book;
    book.staff();
    Rig rig{book.store(), ui::Door::cab};
    rig.tap("farrow");
    tests::type(rig, tests::farrows);
    rig.tap("8 hours");
    rig.ticks += 3600;
    rig.frame();
    rig.tap("Somebody else");
    CHECK(rig.shows("may have begun something that is not signed"));
    rig.tap("Back");
    tests::type(rig, tests::farrows);
    CHECK(rig.target("ex-21")); // where it was
    rig.ticks += 3600;
    rig.frame();
    rig.tap("Somebody else");
    rig.hold("Hold to begin anew");
    CHECK(rig.shows("Who is on the levers?"));
}

TEST_CASE(
    "an answer holds until the midnight at which its examination ends, where the shift goes on: every minute asked")
{
    SampleBook sample;
    desk::LiftAsked asked;
    asked.unit = "pl-03";
    asked.machine = "ex-14";
    asked.pipe = "sk-450";
    asked.on_the_levers = "dunmore";
    asked.standing = "A";
    asked.now = *desk::parse_instant("2026-11-25T16:00:00Z");
    rules::Question question = desk::lift_question(sample.store(), asked);
    REQUIRE(decide(question).may_lift());
    const std::string zone = "Europe/London";
    CHECK(desk::may_lift_until(question, zone) == *question.shift->end); // 17:30
    question.shift->end = *desk::parse_instant("2026-11-26T02:00:00Z");
    for (rules::Report& each : question.reports)
        each.latest = *rules::parse_day("2026-11-25");
    REQUIRE(decide(question).may_lift());
    const rules::Instant until = desk::may_lift_until(question, zone);
    CHECK(until == *desk::parse_instant("2026-11-25T23:59:59Z"));
    for (rules::Instant at = asked.now; at <= *question.shift->end; at = at + rules::Instant{60}) {
        rules::Question then = question;
        then.now = at;
        then.day = desk::local_day(at, zone);
        CHECK(decide(then).may_lift() == (at <= until));
    }
}
