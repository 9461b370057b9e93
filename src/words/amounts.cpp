#include "amounts.hpp"

#include "language.hpp"

#include <fmt/format.h>

#include <array>
#include <cmath>

namespace cotter::words {

namespace {

constexpr std::array<const char*, 7> weekdays{"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"};
constexpr std::array<const char*, 12> months{"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                             "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};

std::string grouped(std::string digits)
{
    if (digits.size() < 5)
        return digits;
    for (auto i = static_cast<std::ptrdiff_t>(digits.size()) - 3; i > 0; i -= 3)
        digits.insert(static_cast<std::size_t>(i), " ");
    return digits;
}

// To `step`, up or down, past what a double cannot hold exactly.
double rounded(double value, double step, Rounding to)
{
    const double steps = value / step;
    return step * (to == Rounding::up ? std::ceil(steps - 1e-9) : std::floor(steps + 1e-9)) + 0.0;
}

std::string counted(double value, rules::Unit unit, Rounding to)
{
    const std::string count = whole(value, to);
    switch (unit) {
    case rules::Unit::none:
    case rules::Unit::person:
    case rules::Unit::day: return count;
    case rules::Unit::kilogram: return count + " kg";
    case rules::Unit::millimetre: return count + " mm";
    case rules::Unit::millidegree: return decimal(fmt::format("{:.1f}", rounded(value, 100, to) / 1000)) + "\u00b0";
    case rules::Unit::newton_metre: return count + " N m";
    }
    return count;
}

} // namespace

std::string whole(double value, Rounding to) { return grouped(fmt::format("{:.0f}", rounded(value, 1, to))); }

std::string amount(const rules::Figure& value, rules::Unit unit, Rounding to)
{
    if (const auto* day = std::get_if<rules::Day>(&value))
        return long_day(*day);
    if (const auto* number = std::get_if<double>(&value))
        return counted(*number, unit, to);
    return in_language("not known");
}

std::string short_day(rules::Day day)
{
    const date::year_month_day ymd{day};
    const date::weekday weekday{day};
    return fmt::format("{} {} {}", in_language(weekdays[weekday.c_encoding()]), static_cast<unsigned>(ymd.day()),
                       in_language(months[static_cast<unsigned>(ymd.month()) - 1]));
}

std::string long_day(rules::Day day)
{
    return fmt::format("{} {}", short_day(day), static_cast<int>(date::year_month_day{day}.year()));
}

std::string metres(std::int64_t millimetres)
{
    return decimal(fmt::format("{:.1f} m", static_cast<double>(millimetres) / 1000));
}

std::string from_planned(std::int64_t above)
{
    return above == 0  ? say("as planned")
           : above < 0 ? say("{} mm below planned", -above)
                       : say("{} mm above planned", above);
}

std::string clock_time(int minutes_of_day)
{
    return fmt::format("{:02}:{:02}", minutes_of_day / 60, minutes_of_day % 60);
}

} // namespace cotter::words
