// cotter reach: what a rated lift chart allows at a point.

#include "chart_csv.hpp"
#include "command.hpp"
#include "numbers.hpp"

#include <cmath>
#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    std::string chart, over;
    Given radius{"--radius", ""}, height{"--height", ""}, load{"--load", ""};
    bool json = false;
};

// A radius is rounded up, a height to the nearest millimetre.
rules::ChartPoint point_of(const Options& options)
{
    const double radius = radius_metres(options.radius), height = metres(options.height);
    return {rules::Millimetres{static_cast<std::int64_t>(std::ceil(radius * 1000 - 1e-6))},
            rules::Millimetres{static_cast<std::int64_t>(std::llround(height * 1000))}};
}

int run(const Options& options)
{
    if (options.over != "front" && options.over != "side")
        throw BadInput{"--over: \"" + options.over + "\" is not accepted; front or side is"};
    const rules::Sector over = options.over == "front" ? rules::Sector::front : rules::Sector::side;
    const rules::Chart chart = read_chart_file(options.chart);
    const auto rated = lowest_corner(chart, over, point_of(options));
    const auto between = bilinear_kg(chart, over, point_of(options));
    const auto load = optional_positive(options.load);
    const bool ok = rated && (!load || *load <= static_cast<double>(rated->count()));
    print({{"on_chart", rated.has_value()},
           {"rated_kg", rated ? Json(rated->count()) : Json{}},
           {"interpolated_kg", between ? Json(*between) : Json{}},
           {"ok", !rated ? Json(false)
                  : load ? Json(ok)
                         : Json{}}},
          options.json);
    return ok ? done : negative;
}

} // namespace

void add_reach(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("reach", "What a rated lift chart allows at a point");
    command.option("--chart", options->chart, "CSV over,height_m,radius_m,rated_kg").required();
    command.option("--over", options->over, "front or side").required();
    command.option("--radius", options->radius.text, "m").required();
    command.option("--height", options->height.text, "m").required();
    command.option("--load", options->load.text, "kg");
    command.flag("--json", options->json, "print one JSON object");
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
