#include "number_text.hpp"

#include <algorithm>

namespace cotter::desk {

namespace {

constexpr std::size_t most_digits = 15;

bool is_digit(char c) { return c >= '0' && c <= '9'; }

std::int64_t ten_to(std::size_t power)
{
    std::int64_t value = 1;
    while (power-- > 0)
        value *= 10;
    return value;
}

struct Decimal {
    std::int64_t digits = 0; // with its sign
    std::size_t places = 0;  // of the digits after the point
};

std::optional<Decimal> decimal(const std::string& text)
{
    const bool is_signed = !text.empty() && (text[0] == '-' || text[0] == '+');
    std::string digits = text.substr(is_signed ? 1 : 0);
    Decimal read;
    if (const auto point = digits.find('.'); point != std::string::npos) {
        read.places = digits.size() - point - 1;
        digits.erase(point, 1);
    }
    if (digits.empty() || digits.size() > most_digits || !std::all_of(digits.begin(), digits.end(), is_digit))
        return std::nullopt;
    read.digits = std::stoll(digits) * (text[0] == '-' ? -1 : 1);
    return read;
}

std::optional<std::int64_t> divided(std::int64_t value, std::int64_t by, Rounding rounding)
{
    const std::int64_t down = value / by - (value % by < 0 ? 1 : 0);
    if (value % by == 0)
        return value / by;
    if (rounding == Rounding::none)
        return std::nullopt;
    return rounding == Rounding::up ? down + 1 : down;
}

std::string in_whole(const Column& column, const Unit& unit)
{
    if (column.rounding != Rounding::none || unit.measure == Measure::none)
        return "";
    return unit.measure == Measure::length  ? ", in whole mm"
           : unit.measure == Measure::angle ? ", to a thousandth"
                                            : ", whole";
}

} // namespace

std::optional<std::int64_t> whole(const std::string& text, int power, Rounding rounding)
{
    const auto read = decimal(text);
    if (!read)
        return std::nullopt;
    const auto up = static_cast<std::size_t>(power);
    if (up >= read->places)
        return read->digits * ten_to(up - read->places);
    return divided(read->digits, ten_to(read->places - up), rounding);
}

std::string number_text(std::int64_t value, int power)
{
    const std::int64_t by = ten_to(static_cast<std::size_t>(power)), size = value < 0 ? -value : value;
    std::string text = (value < 0 ? "-" : "") + std::to_string(size / by);
    if (size % by == 0)
        return text;
    text += "." + std::to_string(by + size % by).substr(1); // with its leading zeros
    return text.substr(0, text.find_last_not_of('0') + 1);
}

std::string accepted_numbers(const Column& column, const Unit& unit)
{
    const Plausible& it = column.plausible;
    const std::string greatest = number_text(it.greatest, unit.power);
    std::string text = number_text(it.least, unit.power) + " to " + greatest;
    if (it.negative)
        text += ", -" + greatest + " to -" + number_text(it.least, unit.power);
    if (it.zero)
        text = "0 or " + text;
    return text + (unit.name.empty() ? "" : " " + std::string{unit.name}) + in_whole(column, unit);
}

} // namespace cotter::desk
