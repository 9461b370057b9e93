#include "day.hpp"

#include <array>
#include <cstdio>

namespace cotter::rules {

namespace {

std::optional<int> digits(std::string_view text)
{
    int value = 0;
    for (const char c : text) {
        if (c < '0' || c > '9')
            return std::nullopt;
        value = value * 10 + (c - '0');
    }
    return value;
}

} // namespace

std::optional<Day> parse_day(std::string_view text)
{
    if (text.size() != 10 || text[4] != '-' || text[7] != '-')
        return std::nullopt;
    const auto year = digits(text.substr(0, 4));
    const auto month = digits(text.substr(5, 2));
    const auto day = digits(text.substr(8, 2));
    if (!year || !month || !day)
        return std::nullopt;
    const date::year_month_day ymd{date::year{*year}, date::month{static_cast<unsigned>(*month)},
                                   date::day{static_cast<unsigned>(*day)}};
    return ymd.ok() ? std::optional{Day{ymd}} : std::nullopt;
}

std::string to_string(Day day)
{
    const date::year_month_day ymd{day};
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", static_cast<int>(ymd.year()),
                  static_cast<unsigned>(ymd.month()), static_cast<unsigned>(ymd.day()));
    return text.data();
}

Day add_months(Day day, Months count)
{
    const date::year_month_day moved = date::year_month_day{day} + date::months{static_cast<int>(count.count())};
    if (moved.ok())
        return Day{moved};
    return Day{moved.year() / moved.month() / date::last};
}

Day add_days(Day day, Days count) { return day + date::days{static_cast<int>(count.count())}; }

Days days_between(Day from, Day to) { return Days{(to - from).count()}; }

Day utc_day(Instant instant) { return Day{date::floor<date::days>(std::chrono::seconds{instant.count()})}; }

} // namespace cotter::rules
