// cotter sling: what a grade 8 chain sling may carry at its angle.

#include "command.hpp"
#include "numbers.hpp"
#include "sling.hpp"

#include <algorithm>
#include <cmath>
#include <memory>
#include <numbers>

namespace cotter::cli {

namespace {

struct Options {
    Given chain{"--chain", ""}, legs{"--legs", ""}, angle{"--angle", ""}, spread{"--spread", ""};
    Given leg_length{"--leg-length", ""}, tag{"--tag", ""}, load{"--load", ""};
    bool symmetric = false, json = false;
};

// "800" for two legs, "800x600" for four: half the distance, or half the diagonal, in mm.
double half_spread(const Given& spread, std::int64_t legs)
{
    const auto cross = spread.text.find('x');
    if (legs == 2 && cross == std::string::npos)
        return positive(spread) / 2;
    if (legs == 4 && cross != std::string::npos)
        return std::hypot(positive({spread.option, spread.text.substr(0, cross)}),
                          positive({spread.option, spread.text.substr(cross + 1)})) /
               2;
    throw BadInput{"--spread: \"" + spread.text + "\" is not accepted with " + std::to_string(legs) +
                   " legs; MM with two legs and MMxMM with four are"};
}

double angle_of(const Options& options, std::int64_t legs)
{
    if (options.angle.is_given() == options.spread.is_given() ||
        options.spread.is_given() != options.leg_length.is_given())
        throw BadInput{"--angle, --spread, --leg-length: accepted is either --angle, or --spread with --leg-length"};
    if (options.angle.is_given())
        return at_least_zero(options.angle);
    const double half = half_spread(options.spread, legs), leg = positive(options.leg_length);
    if (half > leg)
        throw BadInput{"--leg-length: \"" + options.leg_length.text +
                       "\" is shorter than half the spread; longer legs are accepted"};
    return rules::spread_angle_degrees(half, leg);
}

rules::Band band_of(double degrees, std::int64_t legs)
{
    constexpr double slack = 1e-9; // an angle worked out from a spread
    if (legs == 1 && degrees > slack)
        throw BadInput{"--angle: one leg hangs vertical; 0 is accepted"};
    if (degrees > 60 + slack)
        throw BadInput{"--angle: " + std::to_string(degrees) + " degrees to the vertical is not accepted; up to 60 is"};
    return degrees <= 45 + slack ? rules::Band::to_45 : rules::Band::to_60;
}

double limit_kg(const Options& options, rules::Kilograms table)
{
    const double lowest =
        std::min(static_cast<double>(table.count()), options.tag.is_given() ? positive(options.tag) : 1e12);
    return lowest;
}

// Two legs opposite each other carry alone: the tension in each.
double two_leg_tension(double load, double degrees) { return load / 2 / std::cos(degrees * std::numbers::pi / 180); }

int run(const Options& options)
{
    const auto legs = whole_between(options.legs, 1, 4);
    const rules::Millimetres chain{whole_between(options.chain, 1, 1000)};
    const double angle = angle_of(options, legs);
    const auto table = rules::grade8_wll(chain, legs, band_of(angle, legs));
    if (!table)
        throw BadInput{"--chain: \"" + options.chain.text +
                       "\" is not in EN 818-4; 6, 7, 8, 10, 13, 16, 20, 22, 26 and 32 are accepted"};
    const auto load = optional_positive(options.load);
    double wll = limit_kg(options, *table);
    if (load && legs >= 2 && !options.symmetric && *load * 100 >= wll * rules::symmetry_percent)
        wll /= 2;
    const bool ok = !load || *load <= wll;
    const Json tension = load && legs >= 2 ? Json(two_leg_tension(*load, angle)) : load ? Json(*load) : Json{};
    print({{"wll_kg", wll}, {"angle_deg", angle}, {"two_leg_tension_kg", tension}, {"ok", load ? Json(ok) : Json{}}},
          options.json);
    return ok ? done : negative;
}

} // namespace

void add_sling(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("sling", "What a grade 8 chain sling may carry at its angle (EN 818-4)");
    command.option("--chain", options->chain.text, "chain size, mm").required();
    command.option("--legs", options->legs.text, "1 to 4").required();
    command.option("--angle", options->angle.text, "leg to the vertical, degrees");
    command.option("--spread", options->spread.text, "lug distance MM (2 legs), rectangle MMxMM (4 legs)");
    command.option("--leg-length", options->leg_length.text, "mm");
    command.option("--tag", options->tag.text, "limit on the tag, kg");
    command.option("--load", options->load.text, "kg");
    command.flag("--symmetric", options->symmetric, "symmetry of the load is confirmed");
    command.flag("--json", options->json, "print one JSON object");
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
