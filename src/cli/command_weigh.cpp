// cotter weigh: the mass of a pipe from its dimensions, beside the stated one.

#include "command.hpp"
#include "mass.hpp"
#include "numbers.hpp"

#include <algorithm>
#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    Given bore{"--bore", ""}, wall{"--wall", ""}, length{"--length", ""};
    Given socket_outside{"--socket-outside", ""}, socket_length{"--socket-length", ""};
    Given density{"--density", "2500"}, allowance{"--allowance", "0"}, stated{"--stated", ""};
    bool json = false;
};

rules::PipeShape shape_of(const Options& options)
{
    if (options.socket_outside.is_given() != options.socket_length.is_given())
        throw BadInput{"--socket-outside and --socket-length: one alone is not accepted; both or neither are"};
    rules::PipeShape shape;
    shape.bore_mm = positive(options.bore);
    shape.barrel_mm = shape.bore_mm + 2 * positive(options.wall);
    shape.length_mm = positive(options.length);
    if (options.socket_outside.is_given()) {
        shape.socket_mm = positive(options.socket_outside);
        shape.socket_length_mm = positive(options.socket_length);
    }
    return shape;
}

Json warning(std::optional<double> stated, double computed)
{
    if (!stated || *stated * 100 >= computed * rules::doubted_percent)
        return {};
    return "stated mass is under 85 % of the computed one; read the pipe and the delivery note again";
}

int run(const Options& options)
{
    const double bare = cylinder_kg(shape_of(options), positive(options.density));
    const double computed = bare * (100 + at_least_zero(options.allowance)) / 100;
    const auto stated = optional_positive(options.stated);
    print({{"computed_kg", computed},
           {"stated_kg", stated ? Json(*stated) : Json{}},
           {"used_kg", std::max(computed, stated.value_or(0))},
           {"warning", warning(stated, bare)}},
          options.json);
    return done;
}

} // namespace

void add_weigh(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("weigh", "The mass of a pipe from its dimensions");
    command.option("--bore", options->bore.text, "inside, mm").required();
    command.option("--wall", options->wall.text, "wall, mm").required();
    command.option("--length", options->length.text, "overall length, mm").required();
    command.option("--socket-outside", options->socket_outside.text, "socket outside, mm");
    command.option("--socket-length", options->socket_length.text, "socket length, mm");
    command.option("--density", options->density.text, "kg/m3 (default 2500)");
    command.option("--allowance", options->allowance.text, "percent added to the computed mass (default 0)");
    command.option("--stated", options->stated.text, "mass stated by the maker, kg");
    command.flag("--json", options->json, "print one JSON object");
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
