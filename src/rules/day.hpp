#pragma once

#include "quantity.hpp"

#include <date/date.h>

#include <optional>
#include <string>
#include <string_view>

namespace cotter::rules {

// A calendar day at the site, without a zone or a clock.
using Day = date::local_days;

// Reads "YYYY-MM-DD" exactly as it would be written; anything else is nothing.
std::optional<Day> parse_day(std::string_view text);
std::string to_string(Day day);

// The corresponding date, or the last day of the month where there is none.
// Source: Dodds v Walker [1981] UKHL J0618-1; Interpretation Act 1978 Sch 1 ("month").
Day add_months(Day day, Months count);
Day add_days(Day day, Days count);
Days days_between(Day from, Day to);

// The UTC day of an instant.
Day utc_day(Instant instant);

} // namespace cotter::rules
