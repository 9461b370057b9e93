// cotter pin: sets a person's PIN.

#include "command.hpp"
#include "pins.hpp"
#include "writer.hpp"
#include "written.hpp"

#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    Writer writer;
    std::string of, new_pin_file;
};

int run(const Options& options)
{
    const std::string pin = read_pin("--new-pin-file", options.new_pin_file);
    Session session = open_to_write(options.writer);
    const std::string of = options.of.empty() ? options.writer.as : options.of;
    const auto written = desk::write(session.store(), {desk::set_pin(session.hand(options.writer.as), of, pin)});
    print({{"pin_of", of}, {"record", written.back().seq}}, options.writer.json);
    return done;
}

} // namespace

void add_pin(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("pin", "Sets a person's PIN");
    add_writer_options(command, options->writer, "who sets it: the person, or who may admit people");
    command.option("--of", options->of, "whose it is (default: of who sets it)");
    command.option("--new-pin-file", options->new_pin_file, "file with the new PIN, yours alone to read").required();
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
