// Signing at the screen: who is in, the lock, two people each with the own PIN, a stop by anybody.

#include "own_book.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using cotter::tests::OwnBook, cotter::tests::farrows, cotter::tests::hallams, cotter::tests::iqbals;
using cotter::tests::Rig, cotter::tests::type;
using records::Json;

TEST_SUITE_BEGIN("pins");

namespace {

void into_the_cab(Rig& rig)
{
    rig.tap("farrow");
    type(rig, farrows);
    rig.tap("8 hours");
    rig.tap("ex-21");
    rig.tap("DN 450 (invented)");
}

} // namespace

TEST_CASE("an operator gives the PIN, and the shift is opened with it; the digits are never drawn")
{
    OwnBook book;
    book.staff();
    Rig rig{book.store(), ui::Door::cab};
    rig.tap("farrow");
    CHECK(rig.shows("your PIN"));
    type(rig, "95813");
    CHECK_FALSE(rig.shows("95813"));
    rig.tap("Rub out");
    type(rig, "30");
    CHECK(rig.shows("How long is this one"));
    rig.tap("8 hours");
    CHECK(book.newest_how("shift") == "pin");
}

TEST_CASE("a wrong PIN opens nothing and says how many tries are left")
{
    OwnBook book;
    book.staff();
    Rig rig{book.store(), ui::Door::cab};
    rig.tap("farrow");
    type(rig, hallams);
    CHECK(rig.shows("4 tries are left"));
    CHECK_FALSE(book.has("shift"));
    CHECK(book.newest("pin_tried").body["right"] == false);
    rig.tap("Back");
    CHECK(rig.shows("Who is on the levers"));
}

TEST_CASE("a pin is moved by two, each with the own PIN, and the second signs once")
{
    OwnBook book;
    book.staff();
    Rig rig{book.store(), ui::Door::cab};
    into_the_cab(rig);
    rig.tap("hole 1"); // what is seen
    CHECK(book.newest_how("setting_seen") == "pin");
    rig.tap("Pin");
    for (int i = 0; i < 3; ++i)
        rig.tap("Done");
    rig.tap("hole 1");
    CHECK(book.newest_how("setting_changed") == "pin");
    rig.tap("iqbal");
    CHECK(rig.shows("your PIN"));
    type(rig, farrows); // one's own is not the other's
    CHECK(rig.shows("that is not the right one"));
    type(rig, iqbals);
    rig.tap("hole 1");
    const auto look = book.newest("setting_seen");
    CHECK(look.by == "iqbal");
    CHECK(look.how == "pin");
}

TEST_CASE("the screen locks after the site's time without a touch; somebody else takes over without the leaver")
{
    OwnBook book;
    book.staff();
    Rig rig{book.store(), ui::Door::cab};
    into_the_cab(rig);
    rig.ticks += 4 * 60 + 50;
    rig.frame();
    CHECK_FALSE(rig.shows("Locked"));
    rig.ticks += 5 * 60;
    rig.frame();
    CHECK(rig.shows("Locked. farrow: your PIN"));
    CHECK(rig.target("hole 1") == nullptr);
    rig.tap("Somebody else");
    rig.hold("Hold to begin anew");
    rig.tap("iqbal");
    type(rig, iqbals);
    CHECK(rig.shows("Which machine")); // the shift runs on
}

TEST_CASE("whoever held a locked screen opens it where it was")
{
    OwnBook book;
    book.staff();
    Rig rig{book.store(), ui::Door::cab};
    into_the_cab(rig);
    rig.ticks += 3600;
    rig.frame();
    type(rig, farrows);
    CHECK(rig.shows("How does it stand"));
}

TEST_CASE("setting down asks for no PIN, however long it hung; then the screen locks")
{
    OwnBook book;
    book.staff();
    desk::Hand hand;
    hand.by = "farrow";
    hand.at = *desk::parse_instant("2026-11-25T07:55:00Z");
    hand.day = rules::utc_day(hand.at);
    const Json decision{{"outcome", "may_lift"}, {"findings", Json::array()}};
    records::Entry asked = desk::ask_for_a_lift(desk::signed_by(hand), rules::Question{}, decision);
    const std::string lift = asked.about;
    desk::write(book.store(), {asked, lift_step(hand, "picked_up", lift)});
    Rig rig{book.store(), ui::Door::cab};
    rig.tap("farrow");
    CHECK(rig.shows("By the record a load hangs")); // at once, after a restart too
    rig.ticks += 3600;
    rig.frame();
    CHECK_FALSE(rig.shows("Locked"));
    rig.tap("Set down, laid");
    CHECK(book.has("set_down"));
    CHECK(book.has("lift_done"));
    rig.frame();
    CHECK(rig.shows("farrow: your PIN"));
    type(rig, farrows);
    CHECK(rig.shows("How long is this one"));
}

TEST_CASE("a supervisor who takes over signs for himself; the one who leaves is not asked")
{
    OwnBook book;
    book.staff();
    desk::Hand hand;
    hand.by = "hallam";
    hand.at = *desk::parse_instant("2026-11-25T07:55:00Z");
    hand.day = rules::utc_day(hand.at);
    desk::write(book.store(), {entry(desk::signed_by(hand), "admission", "iqbal",
                                     {{"site", "s"}, {"card_seen", true}, {"roles", {"signaller", "supervisor"}}})});
    Rig rig{book.store(), ui::Door::site};
    for (const auto& [who, pin] : {std::pair{"hallam", hallams}, std::pair{"iqbal", iqbals}}) {
        rig.tap("People");
        rig.tap("Supervisor");
        rig.tap(who);
        type(rig, pin);
        CHECK(book.newest("people_today").body["roles"]["supervisor"] == who);
        CHECK(book.newest("people_today").by == who);
        rig.tap("Back");
    }
    rig.tap("People");
    rig.tap("Set a PIN");
    rig.tap("hallam"); // who has forgotten his
    CHECK(rig.shows("Who does this?"));
    rig.tap("iqbal");
    CHECK(rig.shows("hallam: choose a PIN"));
}

TEST_CASE("anybody calls a stop from a locked screen and from the first one, saying who and how, without a PIN")
{
    OwnBook book;
    book.staff();
    Rig rig{book.store(), ui::Door::none};
    rig.tap("Stop a unit");
    rig.tap("cl-02");
    rig.tap("bent, cracked or broken");
    rig.tap("iqbal");
    rig.tap("By phone");
    CHECK(rig.shows("is stopped"));
    rig.tap("Understood");
    const auto stop = book.newest("stop_called");
    CHECK(stop.about == "cl-02");
    CHECK(stop.who == "iqbal");
    CHECK(stop.how == "phone");
    CHECK(rig.target("Cab"));
}

TEST_CASE("the supervisor admits somebody new, who chooses a PIN twice alike, and then works with it")
{
    OwnBook book;
    book.staff();
    Rig rig{book.store(), ui::Door::site};
    rig.tap("People");
    rig.tap("Admit a person");
    type(rig, hallams);
    rig.tap("Somebody new");
    for (const char c : std::string{"V. Tarn"})
        ImGui::GetIO().AddInputCharacter(static_cast<unsigned>(c));
    rig.frame();
    rig.frame();
    rig.tap("Go on");
    rig.tap("Seen");
    rig.tap("Slinger, signaller");
    rig.tap("Operator");
    rig.tap("Operator"); // taken back
    rig.tap("Go on");
    rig.tap("Clasper 90 (invented)");
    rig.tap("Go on");
    rig.tap("Go on");
    CHECK(rig.shows("V. Tarn: choose a PIN"));
    type(rig, "620418");
    type(rig, "620419");
    CHECK(rig.shows("not the same"));
    type(rig, "620418");
    type(rig, "620418");
    CHECK(rig.shows("Who does what today"));
    const auto admitted = book.newest("admission");
    CHECK(admitted.about.starts_with("person-")); // nothing of the name
    CHECK(admitted.who == "hallam");
    CHECK(admitted.how == "pin");
    CHECK(admitted.body["roles"] == Json{"signaller"});
    CHECK(admitted.body["models"] == Json{"clasper-90"});
    CHECK(desk::has_pin(book.store(), admitted.about));
}

TEST_CASE("another signaller is one touch")
{
    OwnBook book;
    book.staff();
    Rig rig{book.store(), ui::Door::site};
    rig.tap("People");
    rig.tap("Supervisor");
    rig.tap("hallam");
    type(rig, hallams);
    rig.tap("iqbal");
    CHECK(book.newest("people_today").body["roles"]["signaller"] == "iqbal");
    rig.tap("hallam");
    CHECK(book.newest("people_today").body["roles"]["signaller"] == "hallam");
    CHECK(book.newest_how("people_today") == "pin");
}

TEST_CASE("where nobody has a PIN yet, who may admit people chooses the first at the screen")
{
    OwnBook book;
    Rig rig{book.store(), ui::Door::site};
    rig.tap("People");
    rig.tap("Supervisor");
    rig.tap("hallam");
    CHECK(rig.shows("choose a PIN"));
    type(rig, "111111");
    CHECK(rig.shows("not accepted"));
    type(rig, hallams);
    type(rig, hallams);
    CHECK(book.newest("people_today").how == "pin");
}

TEST_CASE("who has no PIN is told who sets one")
{
    OwnBook book;
    book.staff();
    desk::Hand hand;
    hand.by = "hallam";
    hand.at = *desk::parse_instant("2026-11-25T07:55:00Z");
    hand.day = rules::utc_day(hand.at);
    desk::write(book.store(), {entry(desk::signed_by(hand), "person", "nils", {{"name", "nils"}}),
                               entry(desk::signed_by(hand), "admission", "nils",
                                     {{"site", "s"}, {"card_seen", true}, {"roles", {"operator"}}})});
    Rig rig{book.store(), ui::Door::cab};
    rig.tap("nils");
    CHECK(rig.shows("has no PIN yet"));
    rig.tap("Back");
    CHECK(rig.shows("Who is on the levers"));
}

TEST_SUITE_END();
