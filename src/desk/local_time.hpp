#pragma once

// From an instant to the site's own day and clock, by the zone in the site's record; the system's zone is never asked.

#include "day.hpp"
#include "quantity.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace cotter::desk {

std::string zone_here(); // this device's time zone, "Europe/London"; "UTC" where it has none

// The first instant of 2038: Debian's zone data end before it.
inline constexpr rules::Instant end_of_zone_data{2145916800};

bool is_zone(const std::string& zone);
rules::Day local_day(rules::Instant at, const std::string& zone); // UTC where the zone is not known
int local_minutes(rules::Instant at, const std::string& zone);    // since midnight
rules::Instant local_instant(rules::Day day, int minutes, const std::string& zone);

// "2026-11-25T07:42:00Z", exactly; nothing for anything else or after 2037.
std::optional<rules::Instant> parse_instant(std::string_view text);
std::string to_string(rules::Instant at);

} // namespace cotter::desk
