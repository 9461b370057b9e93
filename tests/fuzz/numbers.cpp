// Numbers, days and instants as typed on the command line: finite and in their range, equal to what the standard
// library reads, and, where there is one way of writing, written the same.

#include "numbers.hpp"
#include "bad_input.hpp"
#include "fuzzing.hpp"
#include "local_time.hpp"

#include <charconv>
#include <cmath>

using namespace cotter;
using namespace cotter::tests;

namespace {

// What `read` gives for the text; nothing if it is refused.
template <class Read> auto taken(Read read) -> std::optional<decltype(read())>
try {
    return read();
} catch (const cli::BadInput& e) {
    must_be_a_line(e.what());
    return std::nullopt;
}

double by_the_library(std::string_view text)
{
    if (text[0] == '+')
        text.remove_prefix(1);
    double value = NAN;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    must(error == std::errc{} && end == text.data() + text.size(), "the library takes all of it");
    return value;
}

void numbers(const cli::Given& given)
{
    const auto number = taken([&] { return cli::number(given); });
    if (number)
        must(std::isfinite(*number) && *number == by_the_library(given.text), "a number is what was typed");
    if (const auto value = taken([&] { return cli::positive(given); }))
        must(*value > 0 && value == number, "a number over 0");
    if (const auto value = taken([&] { return cli::at_least_zero(given); }))
        must(*value >= 0 && value == number, "a number of at least 0");
    if (const auto value = taken([&] { return cli::whole_between(given, -1000, 1000); }))
        must(*value >= -1000 && *value <= 1000 && static_cast<double>(*value) == *number, "a whole number between");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const cli::Given given{"--option", text_of(data, size)};
    numbers(given);
    if (const auto day = taken([&] { return cli::day(given); }))
        must(rules::to_string(*day) == given.text, "a day is written as it was typed");
    if (const auto at = taken([&] { return cli::instant(given); }))
        must(desk::to_string(*at) == given.text && *at < desk::end_of_zone_data, "an instant is written as typed");
    return 0;
}
