// This site, this day; and a book as it was on another day.

#include "signed_book.hpp"
#include "site_day.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using namespace cotter::desk;
using cotter::tests::SignedBook;
using cotter::tests::site_book;

TEST_SUITE_BEGIN("site day");

namespace {

constexpr rules::Instant eight{1'795'593'600}; // 2026-11-25T08:00:00Z

SiteDay seen(const SignedBook& signed_book, rules::Instant at = eight)
{
    return site_day(signed_book.book(), "marsh-lane", at);
}

const DayUnit& unit(const SiteDay& day, const std::string& id)
{
    for (const DayUnit& each : day.units)
        if (each.row.unit == id)
            return each;
    throw std::runtime_error{"not of the day: " + id};
}

} // namespace

TEST_CASE("every unit that is here stands there with its report, its latest date and whether its evidence is here")
{
    const SiteDay day = seen(site_book());
    REQUIRE(day.units.size() == 3);
    CHECK(unit(day, "cl-02").newest_report == "rep-cl-02");
    CHECK(unit(day, "cl-02").row.latest == rules::parse_day("2027-03-01"));
    CHECK(unit(day, "cl-02").examined == rules::parse_day("2026-09-01"));
    CHECK(unit(day, "cl-02").row.evidence_here);
    CHECK_FALSE(unit(day, "cl-05").row.evidence_here);
}

TEST_CASE("a unit that left, or is scrapped, is not of the day")
{
    SignedBook left = site_book();
    left.add("dispatched", "cl-05", {{"purpose", "return"}, {"to", "the yard"}}, "2026-11-25T07:20:00Z", "quill");
    CHECK(seen(left).units.size() == 2);
    SignedBook scrapped = site_book();
    scrapped.add("dispatched", "cl-05", {{"purpose", "scrap"}, {"to", "x"}}, "2026-11-25T07:20:00Z", "quill");
    CHECK(seen(scrapped).units.size() == 2);
}

TEST_CASE("a unit that hangs on a machine here is of the day, wherever the book has it")
{
    SignedBook book = site_book();
    book.add("dispatched", "cl-02", {{"purpose", "repair"}, {"to", "the yard"}}, "2026-11-25T07:20:00Z", "quill");
    CHECK(unit(seen(book), "cl-02").row.tag == "CL-02");
}

TEST_CASE("today's check says who, when and whether it still stands")
{
    const SiteDay day = seen(site_book());
    CHECK(unit(day, "cl-02").check == CheckState::stands);
    CHECK(unit(day, "cl-02").checked_by == "farrow");
    CHECK(unit(day, "cl-02").checked_at == parse_instant("2026-11-25T07:10:00Z"));
    CHECK(unit(day, "cl-05").check == CheckState::not_asked); // hangs on no machine
    CHECK_FALSE(unit(day, "cl-05").checked_at);
}

TEST_CASE("a check is stale after a knock, and another operator has not done it")
{
    SignedBook knocked = site_book();
    knocked.add("event", "ev-1",
                {{"kind", "knock"}, {"day", "2026-11-25"}, {"at", 1'795'592'400}, {"units", {"cl-02"}}},
                "2026-11-25T07:40:00Z");
    CHECK(unit(seen(knocked), "cl-02").check == CheckState::stale);
    CHECK(unit(seen(knocked), "ex-21").check == CheckState::stands);
    SignedBook other = site_book();
    other.add("people_today", "marsh-lane", {{"day", "2026-11-25"}, {"roles", {{"operator", "iqbal"}}}},
              "2026-11-25T07:40:00Z", "hallam");
    CHECK(unit(seen(other), "cl-02").check == CheckState::stale);
}

TEST_CASE("yesterday's check is not today's")
{
    SignedBook book = site_book();
    book.add("shift", "shift-2",
             {{"site", "marsh-lane"}, {"start", 1'795'676'400}, {"end", 1'795'712'400}, {"last_day", "2026-11-26"}},
             "2026-11-26T07:00:00Z");
    const SiteDay day = seen(book, rules::Instant{1'795'680'000});
    CHECK(unit(day, "cl-02").check == CheckState::none);
    CHECK_FALSE(unit(day, "cl-02").checked_at);
}

TEST_CASE("after the shift the day's check is still the one that was done")
{
    SignedBook book = site_book();
    book.add("stood_down", "shift-1", Json::object(), "2026-11-25T16:00:00Z");
    CHECK(unit(seen(book, *parse_instant("2026-11-25T20:00:00Z")), "cl-02").check == CheckState::stands);
}

TEST_CASE("the plan in force, its issue, and who of the day's people is briefed on it")
{
    SiteDay day = seen(site_book());
    REQUIRE(day.plans.size() == 1);
    CHECK(day.plans[0].in_force);
    CHECK(day.plans[0].doc["issue"] == 2);
    REQUIRE(day.people.size() == 2);
    CHECK(day.people[0].role == "operator");
    CHECK_FALSE(day.people[0].briefed);
    CHECK(day.people[1].person == "hallam");
    CHECK(day.people[1].briefed);
    CHECK_FALSE(seen(site_book(), *parse_instant("2026-12-21T08:00:00Z")).plans.at(0).in_force);
}

TEST_CASE("of two plans in force both are of the day, each with its marks; briefed is who is on both")
{
    SignedBook book = site_book();
    book.add("lift_plan", "plan-2",
             {{"site", "marsh-lane"},
              {"issue", 1},
              {"issued", true},
              {"signed", true},
              {"first_day", "2026-11-20"},
              {"last_day", "2026-12-01"},
              {"places", {{{"id", "Z"}}}}},
             "2026-11-25T07:20:00Z", "quill");
    const SiteDay day = seen(book);
    REQUIRE(day.plans.size() == 2);
    CHECK(day.plans[0].doc["id"] == "plan-2");
    CHECK(day.plans[1].in_force);
    CHECK(day.trenches.front().place == "Z");
    CHECK(day.trenches.size() == 1 + seen(site_book()).trenches.size());
    CHECK_FALSE(day.people[1].briefed); // hallam, on the first alone
}

TEST_CASE("a trench holds by a competent person's inspection this shift, until something falls")
{
    SignedBook book = site_book();
    const auto trench = [&] { return seen(book).trenches.at(1); };
    CHECK_FALSE(seen(book).trenches.at(0).needed); // there is none at mark A
    CHECK(trench().needed);
    CHECK_FALSE(trench().holds);
    book.add("trench_inspection", "B", {{"site", "marsh-lane"}, {"safe", true}}, "2026-11-25T07:15:00Z", "farrow",
             {"operator"});
    CHECK(trench().inspected_by == "farrow");
    CHECK_FALSE(trench().holds);
    book.add("trench_inspection", "B", {{"site", "marsh-lane"}, {"safe", true}}, "2026-11-25T07:20:00Z", "penrose",
             {"competent"});
    CHECK(trench().holds);
    book.add("fall_of_ground", "B", {{"site", "marsh-lane"}, {"what", "a lump"}}, "2026-11-25T07:30:00Z");
    CHECK_FALSE(trench().holds);
}

TEST_CASE("a stop is open until somebody entitled lifts it")
{
    SignedBook book = site_book();
    const std::string stop = book.add("stop_called", "cl-02", {{"why", "Jaw bent"}}, "2026-11-25T07:30:00Z", "iqbal");
    REQUIRE(seen(book).stops.size() == 1);
    CHECK(seen(book).stops[0].why == "Jaw bent");
    CHECK(seen(book).stops[0].by == "iqbal");
    book.add("stop_lifted", "cl-02", {{"stop", stop}, {"why", "x"}}, "2026-11-25T07:35:00Z", "farrow", {"operator"});
    CHECK(seen(book).stops.size() == 1);
    book.add("stop_lifted", "cl-02", {{"stop", stop}, {"why", "x"}}, "2026-11-25T07:40:00Z", "hallam", {"supervisor"});
    CHECK(seen(book).stops.empty());
}

TEST_CASE("a stop is shown too where nobody has received the unit anywhere, and not where it has left")
{
    SignedBook book = site_book();
    book.add("stop_called", "gp-1", {{"why", "cracked"}}, "2026-11-25T07:20:00Z", "farrow");
    REQUIRE(seen(book).stops.size() == 1);
    CHECK(seen(book).stops[0].unit == "gp-1");
    book.add("dispatched", "gp-1", {{"purpose", "repair"}, {"to", "the yard"}}, "2026-11-25T07:30:00Z", "quill");
    CHECK(seen(book).stops.empty());
}

TEST_CASE("a site without anything has a day all the same")
{
    SignedBook book;
    book.add("site", "s", {{"name", "S"}, {"zone", "Europe/London"}});
    const SiteDay day = site_day(book.book(), "s", eight);
    CHECK(day.units.empty());
    CHECK(day.plans.empty());
    CHECK(to_json(day, book.book())["plans"] == Json::array());
}

TEST_CASE("a book on a day knows nothing of later ones")
{
    SignedBook book = site_book();
    book.add("stop_called", "cl-02", {{"why", "Jaw bent"}}, "2026-11-26T07:30:00Z", "iqbal");
    const auto now = book.book();
    CHECK(site_day(now, "marsh-lane", eight).stops.size() == 1);
    const auto then = book_on(now, *rules::parse_day("2026-11-25"));
    CHECK(site_day(then, "marsh-lane", eight).stops.empty());
    CHECK(then.find(book.records().back().hash) == std::nullopt);
    CHECK(book_at(now, eight).newest("stop_called", 1).empty());
    CHECK(book_at(now, *parse_instant("2026-11-26T07:30:00Z")).newest("stop_called", 1).size() == 1);
}

TEST_SUITE_END();
