// The site's own day and clock come from its zone, never from the system's.

#include "local_time.hpp"

#include <doctest/doctest.h>

#include <cstdlib>
#include <ctime>

using namespace cotter;
using namespace cotter::desk;

TEST_SUITE_BEGIN("local time");

namespace {

std::string day_at(const char* instant, const char* zone)
{
    return rules::to_string(local_day(*parse_instant(instant), zone));
}

} // namespace

TEST_CASE("the site's day begins at its own midnight")
{
    CHECK(day_at("2026-11-24T23:59:59Z", "Europe/London") == "2026-11-24");
    CHECK(day_at("2026-11-25T00:00:00Z", "Europe/London") == "2026-11-25");
    CHECK(day_at("2026-06-24T22:59:59Z", "Europe/London") == "2026-06-24"); // summer time
    CHECK(day_at("2026-06-24T23:00:00Z", "Europe/London") == "2026-06-25");
    CHECK(day_at("2026-06-24T09:59:59Z", "Pacific/Auckland") == "2026-06-24");
    CHECK(day_at("2026-06-24T12:00:00Z", "Pacific/Auckland") == "2026-06-25");
}

// Source: The Summer Time Order 2002 (SI 2002/262): 01:00 GMT on the last Sundays of March and October.
TEST_CASE("the clock goes forward and back when the law says")
{
    CHECK(local_minutes(*parse_instant("2026-03-29T00:59:00Z"), "Europe/London") == 59);
    CHECK(local_minutes(*parse_instant("2026-03-29T01:00:00Z"), "Europe/London") == 120);
    CHECK(local_minutes(*parse_instant("2026-10-25T00:59:00Z"), "Europe/London") == 119);
    CHECK(local_minutes(*parse_instant("2026-10-25T01:00:00Z"), "Europe/London") == 60);
}

TEST_CASE("from day and clock to an instant and back, the first of two where the clock goes back")
{
    const auto day = *rules::parse_day("2026-10-25");
    CHECK(to_string(local_instant(day, 90, "Europe/London")) == "2026-10-25T00:30:00Z");
    CHECK(to_string(local_instant(day, 12 * 60, "Europe/London")) == "2026-10-25T12:00:00Z");
    for (const char* zone : {"Europe/London", "Pacific/Auckland", "America/St_Johns"}) {
        const auto at = local_instant(day, 12 * 60, zone);
        CHECK(local_day(at, zone) == day);
        CHECK(local_minutes(at, zone) == 12 * 60);
    }
}

TEST_CASE("a zone that is none is UTC, and said to be none")
{
    CHECK(is_zone("Europe/London"));
    CHECK(is_zone("UTC"));
    for (const char* zone : {"", "Mars/Lane", "../etc/passwd", "Europe/"})
        CHECK_FALSE(is_zone(zone));
    CHECK(day_at("2026-06-24T23:30:00Z", "Mars/Lane") == "2026-06-24");
}

TEST_CASE("the system's own zone changes nothing")
{
    const std::string before = day_at("2026-06-24T23:30:00Z", "Europe/London");
    for (const char* zone : {"Pacific/Auckland", "America/Los_Angeles"}) {
        ::setenv("TZ", zone, 1);
        ::tzset();
        CHECK(day_at("2026-06-24T23:30:00Z", "Europe/London") == before);
        CHECK(rules::to_string(rules::utc_day(*parse_instant("2026-06-24T23:30:00Z"))) == "2026-06-24");
    }
    ::unsetenv("TZ");
    ::tzset();
}

TEST_CASE("an instant is read as it is written, to the second, and before 2038")
{
    for (const char* text :
         {"2026-11-25T07:42:00Z", "1970-01-01T00:00:00Z", "2028-02-29T23:59:59Z", "2037-12-31T23:59:59Z"}) {
        REQUIRE(parse_instant(text).has_value());
        CHECK(to_string(*parse_instant(text)) == text);
    }
    CHECK(parse_instant("1970-01-02T00:00:01Z") == rules::Instant{86'401});
}

TEST_CASE("anything else is no instant")
{
    for (const char* text :
         {"", "2026-11-25", "2026-11-25T07:42Z", "2026-11-25T07:42:00", "2026-11-25 07:42:00Z", "2026-11-25T07:42:00z",
          "2026-11-25T24:00:00Z", "2026-11-25T07:60:00Z", "2026-11-25T07:42:60Z", "2026-02-29T07:42:00Z",
          "2026-11-25T 7:42:00Z", "2026-11-25T+7:42:00Z", "2026-11-25T-1:42:00Z", "2026-11-25T07:42:00+",
          "2038-01-01T00:00:00Z", "9999-12-31T23:59:59Z"}) {
        CAPTURE(std::string{text});
        CHECK_FALSE(parse_instant(text).has_value());
    }
}

TEST_SUITE_END();
