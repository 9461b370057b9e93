#include "amounts.hpp"

#include <doctest/doctest.h>

namespace cotter::words {

using rules::Figure;
using rules::Unit;

namespace {

rules::Day day(const char* text) { return rules::parse_day(text).value(); }

} // namespace

TEST_CASE("a number under five digits has no separator and a longer one is grouped in threes")
{
    CHECK(whole(0) == "0");
    CHECK(whole(999) == "999");
    CHECK(whole(9999) == "9999");
    CHECK(whole(10'000) == "10 000");
    CHECK(whole(123'456) == "123 456");
    CHECK(whole(1'234'567) == "1 234 567");
    CHECK(whole(1'000'000'000) == "1 000 000 000");
}

TEST_CASE("a load is rounded up so that it never looks lighter")
{
    CHECK(whole(1400.0) == "1400");
    CHECK(whole(1400.001) == "1401");
    CHECK(whole(1374.447) == "1375");
    CHECK(whole(9999.5) == "10 000");
}

TEST_CASE("each unit has its sign")
{
    CHECK(amount(Figure{1630.0}, Unit::kilogram) == "1630 kg");
    CHECK(amount(Figure{16'300.0}, Unit::kilogram) == "16 300 kg");
    CHECK(amount(Figure{800.0}, Unit::millimetre) == "800 mm");
    CHECK(amount(Figure{19'620.0}, Unit::newton_metre) == "19 620 N m");
    CHECK(amount(Figure{45'000.0}, Unit::millidegree) == "45.0\u00b0");
    CHECK(amount(Figure{52'340.0}, Unit::millidegree) == "52.4\u00b0");
    CHECK(amount(Figure{60'001.0}, Unit::millidegree) == "60.1\u00b0");
    CHECK(amount(Figure{2062.5}, Unit::kilogram) == "2063 kg");
    CHECK(amount(Figure{2062.5}, Unit::kilogram, cotter::words::Rounding::down) == "2062 kg");
    CHECK(amount(Figure{2.0}, Unit::none) == "2");
    CHECK(amount(Figure{2.0}, Unit::person) == "2");
}

TEST_CASE("what is not known says so")
{
    CHECK(amount(Figure{}, Unit::kilogram) == "not known");
    CHECK(amount(Figure{}, Unit::day) == "not known");
}

TEST_CASE("a day is written with its weekday")
{
    CHECK(amount(Figure{day("2026-12-04")}, Unit::day) == "Fri 4 Dec 2026");
    CHECK(long_day(day("2026-11-25")) == "Wed 25 Nov 2026");
    CHECK(short_day(day("2026-11-25")) == "Wed 25 Nov");
    CHECK(short_day(day("2027-01-01")) == "Fri 1 Jan");
    CHECK(short_day(day("2028-02-29")) == "Tue 29 Feb");
    CHECK(long_day(day("2026-11-29")) == "Sun 29 Nov 2026");
}

TEST_CASE("metres have one decimal")
{
    CHECK(metres(6200) == "6.2 m");
    CHECK(metres(6000) == "6.0 m");
    CHECK(metres(0) == "0.0 m");
    CHECK(metres(12'340) == "12.3 m");
    CHECK(metres(-1500) == "-1.5 m");
}

TEST_CASE("a time of day has two digits each")
{
    CHECK(clock_time(0) == "00:00");
    CHECK(clock_time(7 * 60 + 42) == "07:42");
    CHECK(clock_time(24 * 60 - 1) == "23:59");
}

} // namespace cotter::words
