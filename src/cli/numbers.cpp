#include "numbers.hpp"

#include "bad_input.hpp"
#include "local_time.hpp"

#include <algorithm>
#include <chrono>
#include <cstdlib>

namespace cotter::cli {

namespace {

constexpr std::size_t longest = 18; // digits that a double holds without doubt, and then some

[[noreturn]] void refuse(const Given& given, const std::string& accepted)
{
    throw BadInput{given.option + ": \"" + given.text + "\" is not accepted; " + accepted + " is"};
}

bool is_decimal(const std::string& text)
{
    const auto from = text.begin() + (text[0] == '-' || text[0] == '+' ? 1 : 0);
    const auto points = std::count(from, text.end(), '.');
    const auto digits = std::count_if(from, text.end(), [](char c) { return c >= '0' && c <= '9'; });
    return digits > 0 && points <= 1 && digits + points == text.end() - from && text.size() <= longest;
}

} // namespace

double number(const Given& given)
{
    if (given.text.empty() || !is_decimal(given.text))
        refuse(given, "a number in decimal digits");
    return std::strtod(given.text.c_str(), nullptr);
}

double positive(const Given& given)
{
    const double value = number(given);
    if (value <= 0)
        refuse(given, "a number over 0");
    return value;
}

double at_least_zero(const Given& given)
{
    const double value = number(given);
    if (value < 0)
        refuse(given, "a number of at least 0");
    return value;
}

std::optional<double> optional_positive(const Given& given)
{
    return given.is_given() ? std::optional{positive(given)} : std::nullopt;
}

double metres(const Given& given)
{
    const double value = number(given);
    if (value < -1000 || value > 1000)
        refuse(given, "metres, from -1000 to 1000");
    return value;
}

double radius_metres(const Given& given)
{
    (void)at_least_zero(given);
    return metres(given);
}

std::int64_t whole_between(const Given& given, std::int64_t least, std::int64_t greatest)
{
    const double value = number(given);
    const auto whole = static_cast<std::int64_t>(value);
    if (static_cast<double>(whole) != value || whole < least || whole > greatest)
        refuse(given, "a whole number from " + std::to_string(least) + " to " + std::to_string(greatest));
    return whole;
}

rules::Day day(const Given& given)
{
    const auto parsed = rules::parse_day(given.text);
    if (!parsed)
        refuse(given, "a day YYYY-MM-DD");
    return *parsed;
}

rules::Instant instant(const Given& given)
{
    const auto parsed = desk::parse_instant(given.text);
    if (!parsed)
        refuse(given, "an instant YYYY-MM-DDThh:mm:ssZ before 2038");
    return *parsed;
}

rules::Instant now()
{
    const auto since = std::chrono::system_clock::now().time_since_epoch();
    return rules::Instant{std::chrono::duration_cast<std::chrono::seconds>(since).count()};
}

rules::Day today() { return rules::utc_day(now()); }

} // namespace cotter::cli
