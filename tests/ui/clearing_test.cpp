// What clears a finding, a stop or a defect, by whom, and what comes back with a unit.

#include "rig.hpp"

#include "outlook.hpp"
#include "written.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using records::Json;
using tests::Rig;
using tests::SampleBook;

namespace {

void go_to_the_sheet(Rig& rig, SampleBook& sample)
{
    for (const std::string& each :
         {std::string{"I. Farrow (invented)"}, std::string{"EX-21"}, std::string{"Mark C"},
          sample.store().fact("pipe", "sk-600")->doc.value("name", ""), std::string{"hole 2"}})
        rig.tap(each);
}

// The row's own button, on whichever page of findings it stands.
bool press_row(Rig& rig, const std::string& words, const std::string& button)
{
    while (!rig.shows(words) && rig.turn_findings()) {
    }
    for (const ui::Seen& row : rig.seen())
        for (const ui::Seen& each : rig.seen())
            if (!row.target && words.starts_with(row.text.substr(0, 12)) && each.target && each.text == button &&
                each.y <= row.y + 10 && row.y < each.y + each.h) {
                rig.tap_at(ui::Seen{each});
                return true;
            }
    return false;
}

std::size_t count(const records::Book& book, const char* kind) { return book.newest(kind, 10'000).size(); }

bool has_open(const records::Book& book, const std::string& unit, rules::Day today)
{
    const auto open = desk::open_defects(book, today);
    return std::any_of(open.begin(), open.end(), [&](const auto& each) { return each.unit == unit; });
}

} // namespace

TEST_CASE("whoever may clears it at the machine: the standing place, the trench")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    go_to_the_sheet(rig, sample);
    const auto places = count(sample.store(), "place_confirmed"), trenches = count(sample.store(), "trench_inspection");
    REQUIRE(press_row(rig, "Standing place not confirmed", "Confirm"));
    for (int i = 0; i < 4; ++i)
        rig.tap("Yes");
    CHECK(count(sample.store(), "place_confirmed") == places + 1);
    CHECK_FALSE(press_row(rig, "Standing place not confirmed", "Confirm"));
    REQUIRE(press_row(rig, "Trench not found safe", "Inspect"));
    CHECK(rig.shows("Who says so?"));
    CHECK_FALSE(rig.target("I. Farrow (invented)")); // no competent person
    rig.tap("M. Varley (invented)");
    rig.tap("Safe to enter");
    rig.tap("Yes");
    rig.tap("Sign it");
    rig.tap("Back");
    CHECK(count(sample.store(), "trench_inspection") == trenches + 1);
    CHECK_FALSE(press_row(rig, "Trench not found safe", "Inspect"));
}

TEST_CASE("a defect of a report stays open until a competent person has cleared it")
{
    SampleBook sample;
    const auto today = *rules::parse_day("2026-11-25");
    desk::Hand hand;
    hand.at = *desk::parse_instant("2026-11-25T08:00:00Z");
    hand.day = today;
    REQUIRE(has_open(sample.store(), "qh-2", today));
    const Json body{{"defect", "qh-2-d1"}, {"remedy", "part renewed, like for like"}};
    hand.by = "hallam"; // a supervisor
    desk::write(sample.store(), {desk::entry(hand, "defect_cleared", "qh-2", body)});
    CHECK(has_open(sample.store(), "qh-2", today));
    hand.by = "varley"; // competent
    desk::write(sample.store(), {desk::entry(hand, "defect_cleared", "qh-2", body)});
    CHECK_FALSE(has_open(sample.store(), "qh-2", today));
}

TEST_CASE("damage that is seen when a unit comes back stops it until somebody has cleared it")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::yard};
    const auto defects = count(sample.store(), "defect_found");
    rig.tap("Returned");
    for (int i = 0; i < 6 && !rig.target("CL-02"); ++i)
        rig.tap("More");
    for (const char* each : {"CL-02", "K. Sefton (invented)"})
        rig.tap(each);
    for (const char* each : {"Yard or site where it is now", "Thorl Lane yard (invented)"})
        rig.tap(each);
    rig.tap("Damage seen; open if there is none");
    rig.type("left jaw bent");
    rig.frame();
    rig.tap("Take it");
    rig.tap("Sign it");
    rig.tap("Without");
    REQUIRE(count(sample.store(), "defect_found") == defects + 1);
    const auto found = sample.store().newest("defect_found", 1).front().entry;
    CHECK(found.about == "cl-02");
    CHECK(found.body["answer"] == "stop");
    CHECK(found.body["what"] == "left jaw bent");
}

TEST_CASE("in the check the right answer before can be taken back until it is signed")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    go_to_the_sheet(rig, sample);
    rig.tap("Check");
    CHECK_FALSE(rig.target("The one before"));
    CHECK(rig.shows("1 of "));
    rig.tap("Right");
    CHECK(rig.shows("2 of "));
    rig.tap("The one before");
    CHECK(rig.shows("1 of "));
    rig.tap("Stop");
    const auto check = sample.store().newest("pre_use_check", 1).front().entry;
    CHECK(check.body["answers"].size() == 1);
    CHECK(check.body["answers"][0]["answer"] == "stop");
}

TEST_CASE("an item that was answered with a stop reads as not right, wherever it stands")
{
    SampleBook sample;
    {
        Rig rig{sample.store(), ui::Door::cab};
        go_to_the_sheet(rig, sample);
        rig.tap("Check");
        rig.tap("Stop");
    }
    Rig rig{sample.store(), ui::Door::site};
    rig.tap("Ahead");
    bool said = rig.shows("Not right:");
    for (int i = 0; i < 9 && !said && rig.target("Further down"); ++i) {
        rig.tap("Further down");
        said = rig.shows("Not right:");
    }
    CHECK(said);
}

TEST_CASE("who may not put a record right is not offered")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    for (const char* each : {"Record", "Put right", "One kind"})
        rig.tap(each);
    for (int i = 0; i < 9 && !rig.target("A unit arrives"); ++i)
        rig.tap("More");
    for (const char* each : {"A unit arrives", "Put right"})
        rig.tap(each);
    rig.tap("Hold to make it void");
    REQUIRE_FALSE(rig.target("typed wrong")); // what cannot be undone is held, not tapped
    for (const char* each : {"Hold to make it void", "typed wrong"})
        rig.tap_or_hold(each);
    CHECK(rig.shows("Who puts it right?"));
    CHECK(rig.target("O. Hallam (invented)"));
    CHECK_FALSE(rig.target("I. Farrow (invented)"));
}

TEST_CASE("a number that is typed anew replaces the one that stands")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    for (const char* each : {"Record", "Papers and data"})
        rig.tap(each);
    for (const char* each : {"A pipe type"}) {
        for (int i = 0; i < 6 && !rig.target(each); ++i)
            rig.tap("More");
        rig.tap(each);
    }
    const std::string pipe = sample.store().fact("pipe", "sk-450")->doc.value("name", "");
    for (const std::string& each : {pipe, std::string{"O. Hallam (invented)"}}) {
        for (int i = 0; i < 6 && !rig.target(each) && rig.target("More"); ++i)
            rig.tap("More");
        rig.tap(each);
    }
    for (int i = 0; i < 6 && !rig.target("Mass stated by the maker"); ++i)
        rig.key(ImGuiKey_PageDown);
    rig.tap("Mass stated by the maker");
    rig.tap("7");
    rig.tap("0");
    rig.tap("5");
    rig.tap("Take it");
    CHECK(rig.shows("705 kg"));
}

TEST_CASE("a visitor stops a unit too; somebody of the book writes it down")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::none};
    const auto tap = [&](const char* words) {
        for (int i = 0; i < 6 && !rig.target(words) && rig.target("More"); ++i)
            rig.tap("More");
        rig.tap(words);
    };
    rig.tap("Stop a unit");
    CHECK(rig.target("EX-21")); // what hangs on a machine, and the machine, come first
    for (const char* each : {"CL-02", "bent, cracked or broken", "Somebody else", "I. Farrow (invented)", "Seen"})
        tap(each);
    CHECK(rig.shows("is stopped"));
    const auto stop = sample.store().newest("stop_called", 1).front().entry;
    CHECK(stop.about == "cl-02");
    CHECK(stop.who == "a visitor");
    CHECK(stop.by == "farrow");
    CHECK(stop.how == "seen");
}
