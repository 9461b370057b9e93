#include "accept.hpp"
#include "clock.hpp"
#include "confirmed.hpp"
#include "outlook.hpp"
#include "pins.hpp"
#include "rig.hpp"

#include <doctest/doctest.h>

#include <algorithm>

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
    rig.tap("People");
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
    rig.tap("Stopped");
    CHECK(rig.shows("Examination out of date"));
}

TEST_CASE("a book without units says what to do first")
{
    SampleBook sample;
    const auto folder = sample.path().parent_path() / "empty";
    auto empty = db::Store::make(folder / "book.db", {"a device", true, rules::Instant{1795590000}, rules::Day{}});
    for (const auto door : {ui::Door::site, ui::Door::yard}) {
        Rig rig{*empty, door};
        CHECK(rig.shows(door == ui::Door::site ? "A new site begins" : "No unit is in the book yet"));
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
    rig.tap("Stopped");
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
    rig.tap("Stopped");
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
    CHECK_FALSE(rig.shows("The clock went back"));
    const auto clock = desk::clock_of(*store, rig.now);
    REQUIRE(clock.notices.size() == 1);
    CHECK(rules::is_confirmed(clock, clock.notices[0]));
    store->append({name_people(hand, *store, "s", {})}); // the confirmed time runs on with the clock
    const auto later = desk::clock_of(*store, rig.now + rules::Instant{600});
    CHECK(rules::is_confirmed(later, later.notices[0]));
}

namespace {

bool shows_the_day(Rig& rig)
{
    return rig.shows("This site, this day") && rig.shows("Stops called, and lifted by nobody") &&
           rig.shows("Catch let go");
}

} // namespace

TEST_CASE("the day is one touch away from the first screen, from Site and from the Yard, without any name, and writes "
          "nothing")
{
    for (const auto door : {ui::Door::none, ui::Door::site, ui::Door::yard}) {
        SampleBook sample;
        const auto before = sample.store().state().head.seq;
        Rig rig{sample.store(), door};
        rig.tap("This day");
        CHECK(shows_the_day(rig));
        rig.tap("Back");
        CHECK_FALSE(rig.shows("This site, this day"));
        CHECK(rig.target("This day"));
        CHECK(sample.store().state().head.seq == before);
    }
}

TEST_CASE("the day has the plan's issue, its people, and further down units with their check and the trenches")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site, {1280, 4000, 5.88}};
    rig.tap("This day");
    for (const char* words :
         {"Plan plan-1, issue 2", "in force", "Supervisor: O. Hallam (invented)", "Briefed on this issue", "CL-02",
          "check not done in full this shift", "check done", "hangs on no machine here", "no copy here",
          "Examination out of date: CL-05", "Mark A: inspected this shift", "Mark C: not found safe this shift"}) {
        CAPTURE(std::string{words});
        CHECK(rig.shows(words));
    }
}

TEST_CASE("the day is looked at anew when a stop is called")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    rig.tap("This day");
    desk::Hand hand;
    hand.by = "hallam";
    hand.at = rig.now;
    hand.day = rules::utc_day(hand.at);
    sample.store().append({call_a_stop(hand, "cl-02", "Jaw looks bent")});
    rig.frame();
    CHECK(rig.shows("Jaw looks bent"));
}

TEST_CASE("the day is written to a stick by one touch, and what cannot be written is said")
{
    SampleBook sample;
    std::string said = "/stick/day.pdf";
    Rig rig{sample.store(), ui::Door::site, {}, [&]() -> std::string {
                if (said.empty())
                    throw std::runtime_error{"no room on the stick"};
                return said;
            }};
    rig.tap("This day");
    rig.tap("Write it as a page");
    CHECK(rig.shows("It is written"));
    CHECK(rig.shows("/stick/day.pdf"));
    rig.tap("Back");
    said.clear();
    rig.tap("Write it as a page");
    CHECK(rig.shows("no room on the stick"));
    rig.tap("Back");
    CHECK(rig.shows("This site, this day"));
}

TEST_CASE(
    "ahead: checks missing today, open defects with their age, what changes within 7, 14 and 30 days, lifts per day")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    rig.tap("Ahead");
    CHECK(rig.shows("Missing today"));
    CHECK(rig.shows("Within 7 days"));
    rig.tap("Per day");
    CHECK(rig.shows("Lifts done, stops as crosses"));
    rig.tap("Back");
    rig.tap("Back");
    const auto today = *rules::parse_day("2026-11-25");
    const auto now = *desk::parse_instant("2026-11-25T08:00:00Z");
    const auto changes = desk::changes_ahead(sample.store(), "wendle-carr", now, today, 30);
    REQUIRE_FALSE(changes.empty());
    CHECK(std::is_sorted(changes.begin(), changes.end(), [](const auto& a, const auto& b) { return a.day < b.day; }));
    CHECK(std::any_of(changes.begin(), changes.end(), [](const auto& each) {
        return each.of == "PL-03" && each.what == "last day of use" && rules::to_string(each.day) == "2026-12-04";
    }));
    CHECK(std::none_of(changes.begin(), changes.end(),
                       [&](const auto& each) { return each.day < today || each.day > today + date::days{30}; }));
    const auto counts = desk::lifts_per_day(sample.store(), today, 14);
    REQUIRE(counts.size() == 14);
    CHECK(counts.back().day == today);
    int lifts = 0;
    for (const auto& each : counts)
        lifts += each.lifts;
    CHECK(lifts > 10);
    const auto open = desk::open_defects(sample.store(), today);
    REQUIRE_FALSE(open.empty());
    CHECK(
        std::is_sorted(open.begin(), open.end(), [](const auto& a, const auto& b) { return a.days_old > b.days_old; }));
}

TEST_CASE("a stop is lifted from where it stands, by somebody entitled, with what was found")
{
    tests::SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    rig.tap("Stopped");
    for (int i = 0; i < 8 && !rig.target("Lift the stop"); ++i)
        rig.key(ImGuiKey_PageDown);
    rig.tap("Lift the stop");
    CHECK(rig.shows("Who looked into it and lifts the stop?"));
    rig.tap("O. Hallam (invented)");
    rig.tap("looked at; no defect is there");
    const auto before = sample.store().state().head.seq;
    rig.tap("Hold to lift the stop"); // a tap is not enough
    CHECK(sample.store().state().head.seq == before);
    rig.hold("Hold to lift the stop");
    CHECK(rig.shows("is lifted"));
    const auto record = sample.store().newest("stop_lifted", 1).front().entry;
    CHECK(record.who == "hallam");
    CHECK(sample.store().fact("stop", record.body["stop"])->doc["lifted"].size() == 1);
}

TEST_CASE("what stops every lift of the site stands among what is stopped")
{
    tests::SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    rig.tap("Stopped");
    CHECK(rig.shows("the trench is not inspected and safe this shift")); // of one mark of the story
    CHECK_FALSE(rig.shows("No lift plan is in force here"));
    rig.now = rig.now + rules::Instant{200LL * 86'400};
    rig.frame();
    CHECK(rig.shows("No lift plan is in force here"));
    CHECK(rig.shows("No supervisor is named for today"));
}
