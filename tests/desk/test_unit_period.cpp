// Which records a unit's period has.

#include "signed_book.hpp"
#include "unit_period.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using namespace cotter::desk;
using cotter::tests::SignedBook;
using cotter::tests::site_book;

TEST_SUITE_BEGIN("unit period");

namespace {

using Kinds = std::vector<std::string>;

UnitPeriod of(const SignedBook& book, const std::string& from, const std::string& to, const std::string& id = "cl-02")
{
    return unit_period(book.book(), id, *rules::parse_day(from), *rules::parse_day(to));
}

Kinds kinds(const UnitPeriod& period, When when)
{
    Kinds found;
    for (const auto& each : period.records)
        if (each.when == when)
            found.push_back(each.record.entry.kind);
    return found;
}

bool has(const UnitPeriod& period, const std::string& hash, When when)
{
    for (const auto& each : period.records)
        if (each.record.hash == hash)
            return each.when == when;
    return false;
}

bool has(const UnitPeriod& period, const std::string& hash)
{
    return has(period, hash, When::before) || has(period, hash, When::within) || has(period, hash, When::outside);
}

} // namespace

TEST_CASE("both ends of the period are in it, the days beside them are not")
{
    SignedBook book = site_book();
    std::vector<std::string> seen;
    for (const char* day : {"2026-11-26", "2026-11-27", "2026-11-28", "2026-11-29"})
        seen.push_back(book.add("setting_seen", "cl-02", {{"state", "hole 1"}}, std::string{day} + "T07:00:00Z"));
    const auto period = of(book, "2026-11-27", "2026-11-28");
    CHECK(has(period, seen[1], When::within));
    CHECK(has(period, seen[2], When::within));
    CHECK(has(period, seen[0], When::before)); // it stood so when the period began
    CHECK_FALSE(has(period, seen[3]));
}

TEST_CASE("what is of another unit is not in it")
{
    SignedBook book = site_book();
    const std::string other = book.add("stop_called", "cl-05", {{"why", "x"}});
    const std::string own = book.add("stop_called", "cl-02", {{"why", "x"}});
    const auto period = of(book, "2026-11-25", "2026-11-25");
    CHECK(has(period, own, When::within));
    CHECK_FALSE(has(period, other));
    CHECK(kinds(period, When::within) == Kinds{"stop_called", "coupled", "pre_use_check"}); // by time
}

TEST_CASE("what was in force when the period began is in it and says so")
{
    const auto period = of(site_book(), "2026-11-25", "2026-11-25");
    CHECK(kinds(period, When::before) == Kinds{"unit", "examination_report", "received"});
}

TEST_CASE("a newer report takes an older one's place")
{
    SignedBook book = site_book();
    const std::string newer = book.add(
        "examination_report", "rep-new",
        {{"units", {"cl-02"}}, {"basis", "six_months"}, {"examined", "2026-10-20"}, {"safe", true}, {"full", true}},
        "2026-10-21T07:00:00Z", "quill");
    const auto period = of(book, "2026-11-25", "2026-11-25");
    CHECK(has(period, newer, When::before));
    CHECK(kinds(period, When::before) == Kinds{"unit", "received", "examination_report"});
}

TEST_CASE("an older report whose defect is open stands beside the newer one")
{
    SignedBook book = site_book();
    const std::string older = book.add("examination_report", "rep-defect",
                                       {{"units", {"cl-02"}},
                                        {"basis", "exceptional"},
                                        {"examined", "2026-08-01"},
                                        {"safe", false},
                                        {"full", false},
                                        {"defects", {{{"id", "d-1"}, {"danger", "present"}, {"part", "keeper"}}}}},
                                       "2026-10-03T07:00:00Z", "quill");
    CHECK(has(of(book, "2026-11-25", "2026-11-25"), older, When::before));
    book.add("defect_cleared", "cl-02", {{"defect", "d-1"}, {"remedy", "renewed"}}, "2026-10-04T07:00:00Z", "penrose",
             {"competent"});
    CHECK_FALSE(has(of(book, "2026-11-25", "2026-11-25"), older));
}

TEST_CASE("a stop that was open at its beginning is in it, one that was lifted before is not")
{
    SignedBook book = site_book();
    const std::string lifted = book.add("stop_called", "cl-02", {{"why", "a"}}, "2026-10-03T07:00:00Z");
    book.add("stop_lifted", "cl-02", {{"stop", lifted}, {"why", "b"}}, "2026-10-04T07:00:00Z", "hallam",
             {"supervisor"});
    const std::string open = book.add("stop_called", "cl-02", {{"why", "c"}}, "2026-10-05T07:00:00Z");
    const auto period = of(book, "2026-11-25", "2026-11-25");
    CHECK(has(period, open, When::before));
    CHECK_FALSE(has(period, lifted));
}

TEST_CASE("a lift is the unit's by the gear it was asked with, and so is what became of it")
{
    SignedBook book = site_book();
    const auto ask = [&](const std::string& id, const std::string& tag) {
        return book.add("lift_asked", id,
                        {{"question", {{"id", "lift"}, {"items", {{{"tag", tag}}}}}},
                         {"outcome", "may_lift"},
                         {"findings", Json::array()},
                         {"edition", 1}});
    };
    const std::string own = ask("lift-1", "CL-02"), other = ask("lift-2", "CL-05");
    const std::string made = book.add("lift_done", "lift-1", Json::object()),
                      others = book.add("lift_done", "lift-2", Json::object());
    const auto period = of(book, "2026-11-25", "2026-11-25");
    CHECK(has(period, own, When::within));
    CHECK(has(period, made, When::within));
    CHECK_FALSE(has(period, other));
    CHECK_FALSE(has(period, others));
}

TEST_CASE("an event is looked at and assessed about itself, and both are the unit's")
{
    SignedBook book = site_book();
    const std::string event =
        book.add("event", "ev-1", {{"kind", "knock"}, {"units", {"ex-21", "cl-02"}}}, "2026-10-05T07:00:00Z");
    const std::string assessed =
        book.add("event_assessed", "ev-1", {{"fit", true}, {"words", "straight"}}, "2026-11-25T09:00:00Z", "penrose");
    const auto period = of(book, "2026-11-25", "2026-11-25");
    CHECK(has(period, event, When::before)); // open when it began
    CHECK(has(period, assessed, When::within));
}

TEST_CASE("of a correction both are shown, whenever they were written")
{
    SignedBook book = site_book();
    const std::string old = book.add("setting_seen", "cl-02", {{"state", "hole 1"}}, "2026-11-26T07:00:00Z");
    const std::string correction =
        book.add("correction", "cl-02", {{"corrects", old}, {"why", "misread"}, {"body", {{"state", "hole 2"}}}},
                 "2026-11-28T07:00:00Z", "hallam");
    CHECK(has(of(book, "2026-11-26", "2026-11-26"), correction, When::outside));
    CHECK(has(of(book, "2026-11-28", "2026-11-28"), correction, When::within));
    CHECK(has(of(book, "2026-11-28", "2026-11-28"), old));
    CHECK_FALSE(has(of(book, "2026-11-28", "2026-11-28", "cl-05"), correction));
}

TEST_SUITE_END();
