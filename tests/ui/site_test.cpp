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
    rig.tap("Signaller");
    CHECK_FALSE(rig.target("I. Farrow (invented)"));
    std::string offered;
    for (const auto& each : rig.seen())
        if (each.target && each.text != "Back") {
            offered = each.text;
            break;
        }
    rig.tap(offered);
    CHECK(sample.store().newest("people_today", 1).front().entry.body["roles"].contains("signaller"));
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
