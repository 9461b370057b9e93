// cotter due: the last day of use after an examination.

#include "command.hpp"
#include "numbers.hpp"

#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    Given examined{"--examined", ""}, interval{"--interval", "6m"}, on{"--on", ""};
    bool json = false;
};

rules::Day after(rules::Day from, const Given& interval)
{
    const char unit = interval.text.empty() ? ' ' : interval.text.back();
    const std::string digits = interval.text.substr(0, interval.text.empty() ? 0 : interval.text.size() - 1);
    if (digits.empty() || digits.size() > 4 || digits.find_first_not_of("0123456789") != std::string::npos ||
        std::stoi(digits) == 0)
        throw BadInput{"--interval: \"" + interval.text + "\" is not accepted; 1 to 9999 followed by d, w, m or y is"};
    const int count = std::stoi(digits);
    switch (unit) {
    case 'd': return rules::add_days(from, rules::Days{count});
    case 'w': return rules::add_days(from, rules::Days{count * 7});
    case 'm': return rules::add_months(from, rules::Months{count});
    case 'y': return rules::add_months(from, rules::Months{count * 12});
    default:
        throw BadInput{"--interval: \"" + interval.text + "\" is not accepted; a number followed by d, w, m or y is"};
    }
}

int run(const Options& options)
{
    const rules::Day examined = day(options.examined);
    const rules::Day on = options.on.is_given() ? day(options.on) : today();
    if (examined > on)
        throw BadInput{"--examined: \"" + options.examined.text + "\" is after " + rules::to_string(on) +
                       "; a day up to --on is accepted"};
    const rules::Day latest = after(examined, options.interval);
    if (date::year_month_day{latest}.year() > date::year{9999})
        throw BadInput{"--interval: \"" + options.interval.text +
                       "\" goes past the year 9999; a shorter one is accepted"};
    const bool in_date = on <= latest;
    print({{"latest", rules::to_string(latest)},
           {"days_left", rules::days_between(on, latest).count()},
           {"in_date", in_date}},
          options.json);
    return in_date ? done : negative;
}

} // namespace

void add_due(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("due", "The last day of use after an examination");
    command.option("--examined", options->examined.text, "day of the examination").required();
    command.option("--interval", options->interval.text, "6m, 12m, 90d, 4w, 1y (default 6m)");
    command.option("--on", options->on.text, "the day asked about (default today)");
    command.flag("--json", options->json, "print one JSON object");
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
