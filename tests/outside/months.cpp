// Counting months, against decided cases. The comparison with python3-dateutil is in month_counting.py.

#include "asking.hpp"
#include "table.hpp"

#include <doctest/doctest.h>

using namespace outside;
using rules::Months;

namespace {

std::string after(const std::string& start, std::int64_t months)
{
    return rules::to_string(rules::add_months(rules::parse_day(start).value(), Months{months}));
}

} // namespace

// Source: Dodds v Walker [1981] 1 WLR 1027 (HL), [1981] UKHL J0618-1: the day of the event is left out and the period
// ends with the same-numbered day. Notice of 30 September 1978, four months: an application on 31 January was a day
// late.
TEST_CASE("Four months from 30 September end on 30 January and not on the last day of the month")
{
    CHECK(after("1978-09-30", 4) == "1979-01-30");
    CHECK(day("1979-01-31") > rules::add_months(day("1978-09-30"), Months{4}));
}

// Source: E J Riley Investments Ltd v Eurostile Holdings Ltd (reported in the Estates Gazette): no
// "corresponding date plus one".
TEST_CASE("Two months from 23 March end on 23 May and not a day later")
{
    CHECK(after("1983-03-23", 2) == "1983-05-23");
}

// Source: the Court of Appeal, as a public page quotes it: where the last month has no such day, its last day.
TEST_CASE("A month from 31 March ends on 30 April") { CHECK(after("2025-03-31", 1) == "2025-04-30"); }

// Source: each row's own column "source"; the rows without a case are derived from the rule of Dodds v Walker.
TEST_CASE("Every row of the table of cases ends where the law says")
{
    const auto cases = read_table("month_counting_cases");
    REQUIRE(cases.size() == 10);
    for (const Record& each : cases) {
        INFO(each.at("start_date"), " + ", each.at("months"), ": ", each.at("why"));
        CHECK(after(each.at("start_date"), std::stoll(each.at("months"))) == each.at("corresponding_date_result"));
    }
}

// Source: the same table: ADD_MONTHS of some databases keeps the end of a month, a day late under Dodds v Walker.
TEST_CASE("No answer is one that a month-end keeping or overflowing calendar gets wrong")
{
    int wrong = 0;
    for (const Record& each : read_table("month_counting_cases"))
        for (const std::string engine : {"sqlite3.40", "gnu_date9.1", "js_setUTCMonth", "eom_sticky_ADD_MONTHS"}) {
            const std::string& answer = each.at(engine);
            if (answer.find("WRONG") == std::string::npos)
                continue;
            ++wrong;
            INFO(engine, ": ", answer);
            CHECK(after(each.at("start_date"), std::stoll(each.at("months"))) < answer.substr(0, 10));
        }
    CHECK(wrong == 6);
}
