// cotter pin: sets a person's PIN.

#include "command.hpp"
#include "pins.hpp"
#include "session.hpp"
#include "written.hpp"

#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    std::string store, as, of, pin_file, new_pin_file;
    bool json = false;
};

int run(const Options& options)
{
    const std::string pin = read_pin("--new-pin-file", options.new_pin_file);
    Session session{open_store(options.store), {"--at", ""}, true};
    session.watch_the_clock_now();
    session.sign_in(options.as, options.pin_file);
    const std::string of = options.of.empty() ? options.as : options.of;
    const auto written = desk::write(session.store(), {desk::set_pin(session.hand(options.as), of, pin)});
    print({{"pin_of", of}, {"record", written.back().seq}}, options.json);
    return done;
}

} // namespace

void add_pin(CLI::App& app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("pin", "Sets a person's PIN");
    command->add_option("--store", options->store, "the book")->required();
    command->add_option("--as", options->as, "who sets it: the person, or who may admit people")->required();
    command->add_option("--pin-file", options->pin_file,
                        "file with the PIN of who sets it; none for the first in a book");
    command->add_option("--of", options->of, "whose it is (default: of who sets it)");
    command->add_option("--new-pin-file", options->new_pin_file, "file with the new PIN, yours alone to read")
        ->required();
    command->add_flag("--json", options->json, "print one JSON object");
    command->callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
