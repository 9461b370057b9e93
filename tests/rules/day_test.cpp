#include "good_question.hpp"
#include "zone.hpp"

#include <doctest/doctest.h>

namespace cotter::rules {

TEST_CASE("a day is read as it would be written and nothing else is a day")
{
    CHECK(to_string(day("2026-11-25")) == "2026-11-25");
    CHECK(parse_day("2028-02-29"));
    for (const char* bad : {"2027-02-29", "2026-13-01", "2026-00-10", "2026-11-31", "2026-1-05", "26-11-25",
                            "2026/11/25", "2026-11-25 ", "", "2026-11-2x", "+026-11-25"})
        CHECK_FALSE(parse_day(bad));
}

TEST_CASE("months go to the corresponding date or the last day of the month")
{
    CHECK(add_months(day("2026-08-31"), Months{6}) == day("2027-02-28"));
    CHECK(add_months(day("2027-08-31"), Months{6}) == day("2028-02-29"));
    CHECK(add_months(day("2028-02-29"), Months{12}) == day("2029-02-28"));
    CHECK(add_months(day("2026-11-30"), Months{1}) == day("2026-12-30"));
    CHECK(add_months(day("2026-12-15"), Months{1}) == day("2027-01-15"));
}

TEST_CASE("days are counted across months and years")
{
    CHECK(add_days(day("2026-12-31"), Days{1}) == day("2027-01-01"));
    CHECK(days_between(day("2026-11-25"), day("2026-12-09")) == Days{14});
    CHECK(days_between(day("2026-12-09"), day("2026-11-25")) == Days{-14});
}

TEST_CASE("an instant has its day in UTC")
{
    CHECK(utc_day(Instant{0}) == day("1970-01-01"));
    CHECK(utc_day(Instant{86'399}) == day("1970-01-01"));
    CHECK(utc_day(Instant{86'400}) == day("1970-01-02"));
    CHECK(utc_day(Instant{-1}) == day("1969-12-31"));
}

namespace {

// A load of 3,000 x 4,000 mm has a diagonal of 5,000.
ZoneFacts zone(double tail_swing, double radius)
{
    ZoneFacts facts;
    facts.tail_swing = tail_swing;
    facts.greatest_radius = radius;
    facts.load_length = 4000;
    facts.load_width = 3000;
    facts.margin = 1000;
    return facts;
}

} // namespace

TEST_CASE("the exclusion zone reaches past half the load's diagonal")
{
    CHECK(least_zone_radius(zone(2000, 5000)) == doctest::Approx(5000 + 2500 + 1000));
}

TEST_CASE("the exclusion zone reaches where the load would topple or roll to, if that is further")
{
    ZoneFacts facts = zone(2000, 5000);
    facts.toppling = 4000;
    CHECK(least_zone_radius(facts) == doctest::Approx(5000 + 4000 + 1000));
    facts.roll = 3000;
    CHECK(least_zone_radius(facts) == doctest::Approx(5000 + 2500 + 3000 + 1000));
    facts.toppling = 1000;
    facts.roll = 0;
    CHECK(least_zone_radius(facts) == doctest::Approx(5000 + 2500 + 1000));
}

TEST_CASE("the exclusion zone is never less than the tail swing and its margin")
{
    CHECK(least_zone_radius(zone(8000, 5000)) == doctest::Approx(9000));
}

} // namespace cotter::rules
