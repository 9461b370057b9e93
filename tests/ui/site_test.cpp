#include "accept.hpp"
#include "clock.hpp"
#include "confirmed.hpp"
#include "pins.hpp"
#include "rig.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using tests::Rig;
using tests::SampleBook;

TEST_CASE("the supervisor confirms a standing place by four answers")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    rig.tap("Place");
    rig.tap("Mark C");
    for (int i = 0; i < 4; ++i)
        rig.tap("Yes");
    const auto record = sample.store().newest("place_confirmed", 1).front().entry;
    CHECK(record.about == "C");
    CHECK(record.who == "hallam");
    CHECK(record.body["zone_closed"] == true);
}

TEST_CASE("a no among the four answers is written as a no")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    rig.tap("Place");
    rig.tap("Mark B");
    rig.tap("Yes");
    rig.tap("No");
    rig.tap("Yes");
    rig.tap("Yes");
    CHECK(sample.store().newest("place_confirmed", 1).front().entry.body["ground_and_edge"] == false);
}

TEST_CASE("the signaller of the day is named, and only somebody admitted for it is offered")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    rig.tap("People today");
    CHECK_FALSE(rig.target("I. Farrow (invented)"));
    rig.tap("S. Iqbal (invented)");
    const auto named = sample.store().newest("people_today", 1).front().entry;
    CHECK(named.at == rig.now - rules::Instant{60});
    CHECK(named.body["roles"]["signaller"] == "iqbal");
}

TEST_CASE("what is out of date stands above ground with the sign to stop, and Stopped now says why")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    CHECK(rig.shows("What falls due when"));
    rig.tap("Stopped now");
    CHECK(rig.shows("Examination out of date"));
}

TEST_CASE("a book without units says what to do first")
{
    SampleBook sample;
    const auto folder = sample.path().parent_path() / "empty";
    auto empty = db::Store::make(folder / "book.db", {"a device", true, rules::Instant{1795590000}, rules::Day{}});
    for (const auto door : {ui::Door::site, ui::Door::yard}) {
        Rig rig{*empty, door};
        CHECK(rig.shows("No unit is in the book yet"));
    }
}

TEST_CASE("Site works by keyboard: arrows go from button to button, space presses, Page Down turns the list")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    for (int i = 0; i < 8 && rig.shows("What falls due when"); ++i) {
        rig.key(ImGuiKey_RightArrow);
        rig.key(ImGuiKey_Space);
    }
    REQUIRE(rig.shows("Stopped now, and why"));
    const auto first_line = [&] {
        for (const auto& each : rig.seen())
            if (!each.target && each.text.find(": ") != std::string::npos)
                return each.text;
        return std::string{};
    };
    const std::string before = first_line();
    rig.key(ImGuiKey_PageDown);
    CHECK(first_line() != before);
    rig.key(ImGuiKey_PageUp);
    CHECK(first_line() == before);
}

TEST_CASE("a lift made without an answer is shown with its reason")
{
    SampleBook sample;
    desk::Hand hand;
    hand.by = "hallam";
    hand.at = *desk::parse_instant("2026-11-25T07:50:00Z");
    hand.day = rules::utc_day(hand.at);
    sample.store().append({entry(hand, "lift_without_answer", "ex-21", {{"why", "Trapped leg, tablet dead"}})});
    Rig rig{sample.store(), ui::Door::site};
    rig.tap("Stopped now");
    CHECK(rig.shows("Lifted without an answer: EX-21"));
    CHECK(rig.shows("Trapped leg, tablet dead"));
}

TEST_CASE("a clock that is not believed is confirmed by the supervisor of the day")
{
    const tests::Folder folder;
    auto store =
        db::Store::make(folder.path() / "book.db", {"a device", false, rules::Instant{1795590000}, rules::Day{}});
    store->accept_by(desk::accept);
    const auto at = *desk::parse_instant("2026-11-25T07:50:00Z");
    desk::Hand hand;
    hand.by = "hallam";
    hand.at = at;
    hand.day = rules::utc_day(at);
    store->append({entry(hand, "site", "s", {{"name", "S"}, {"zone", "Europe/London"}}),
                   entry(hand, "person", "hallam", {{"name", "O. Hallam (invented)"}}),
                   entry(hand, "admission", "hallam", {{"site", "s"}, {"card_seen", true}, {"roles", {"supervisor"}}}),
                   entry(hand, "clock_notice", store->state().device, {{"kind", "back"}}),
                   desk::set_pin(hand, "hallam", "402716")});
    hand = desk::signed_by(hand);
    Rig rig{*store, ui::Door::site};
    rig.tap("Stopped now");
    CHECK(rig.shows("The clock went back"));
    rig.tap("Confirm");
    CHECK(rig.shows("No supervisor is named"));
    rig.tap("Back");
    store->append({name_people(hand, *store, "s", {{"supervisor", "hallam"}})});
    rig.frame();
    rig.tap("Confirm");
    CHECK(rig.shows("Is it Wed 25 Nov 2026"));
    rig.tap("Yes, it is");
    for (const char* digit : {"4", "0", "2", "7", "1", "6"})
        rig.tap(digit);
    CHECK(rig.shows("Nothing is stopped now"));
    const auto clock = desk::clock_of(*store, rig.now);
    REQUIRE(clock.notices.size() == 1);
    CHECK(rules::is_confirmed(clock, clock.notices[0]));
    store->append({name_people(hand, *store, "s", {})}); // the confirmed time runs on with the clock
    const auto later = desk::clock_of(*store, rig.now + rules::Instant{600});
    CHECK(rules::is_confirmed(later, later.notices[0]));
}
