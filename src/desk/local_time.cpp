#include "local_time.hpp"

#include <date/tz.h>

#include <cstdio>

namespace cotter::desk {

namespace {

const date::time_zone* zone_named(const std::string& zone)
try {
    return date::locate_zone(zone);
} catch (const std::exception&) {
    return nullptr;
}

date::local_seconds local(rules::Instant at, const std::string& zone)
{
    const date::sys_seconds utc{std::chrono::seconds{at.count()}};
    const date::time_zone* found = zone_named(zone);
    return found ? found->to_local(utc) : date::local_seconds{utc.time_since_epoch()};
}

} // namespace

bool is_zone(const std::string& zone) { return zone_named(zone) != nullptr; }

rules::Day local_day(rules::Instant at, const std::string& zone) { return date::floor<date::days>(local(at, zone)); }

int local_minutes(rules::Instant at, const std::string& zone)
{
    const auto since = local(at, zone) - local_day(at, zone);
    return static_cast<int>(std::chrono::duration_cast<std::chrono::minutes>(since).count());
}

rules::Instant local_instant(rules::Day day, int minutes, const std::string& zone)
{
    const date::local_seconds wanted = day + std::chrono::minutes{minutes};
    const date::time_zone* found = zone_named(zone);
    const auto utc =
        found ? found->to_sys(wanted, date::choose::earliest).time_since_epoch() : wanted.time_since_epoch();
    return rules::Instant{std::chrono::duration_cast<std::chrono::seconds>(utc).count()};
}

std::optional<rules::Instant> parse_instant(std::string_view text)
{
    if (text.size() != 20 || text[10] != 'T' || text[19] != 'Z')
        return std::nullopt;
    const auto day = rules::parse_day(text.substr(0, 10));
    int hour = 0, minute = 0, second = 0;
    if (!day || std::sscanf(std::string{text}.c_str() + 11, "%2d:%2d:%2d", &hour, &minute, &second) != 3)
        return std::nullopt;
    const rules::Instant at{day->time_since_epoch().count() * 86'400LL + hour * 3600 + minute * 60 + second};
    return to_string(at) == text && at < end_of_zone_data ? std::optional{at} : std::nullopt;
}

std::string to_string(rules::Instant at)
{
    const auto in_day = ((at.count() % 86'400) + 86'400) % 86'400;
    char clock[16];
    std::snprintf(clock, sizeof clock, "T%02d:%02d:%02dZ", static_cast<int>(in_day / 3600),
                  static_cast<int>(in_day / 60 % 60), static_cast<int>(in_day % 60));
    return rules::to_string(rules::utc_day(at)) + clock;
}

std::string zone_here()
try {
    return date::current_zone()->name();
} catch (const std::exception&) {
    return "UTC";
}

} // namespace cotter::desk
