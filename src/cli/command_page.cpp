// cotter page: keeps the picture of a plate, page or card beside the book, and records what it shows.

#include "command.hpp"
#include "files.hpp"
#include "session.hpp"
#include "written.hpp"

#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    std::string store, as, pin_file, what, about, says, file;
    Given at{"--at", ""};
    bool json = false;
};

int run(const Options& options)
{
    Session session{open_store(options.store), options.at, true};
    session.sign_in(options.as, options.pin_file);
    session.watch_the_clock_now();
    const std::string name = db::Files{options.store}.keep(options.file);
    const auto written = desk::write(
        session.store(), {desk::show_page(session.hand(options.as), options.what, options.about, name, options.says)});
    print({{"sha256", name}, {"record", written.back().seq}}, options.json);
    return done;
}

} // namespace

void add_page(CLI::App& app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("page", "Keeps the picture of a plate, page or card that typed data come from");
    command->add_option("--store", options->store, "the book")->required();
    command->add_option("--as", options->as, "who took it")->required();
    command->add_option("--pin-file", options->pin_file, "file with the PIN of who took it");
    command->add_option("--what", options->what, "model, chart, pipe, report or person")->required();
    command->add_option("--about", options->about, "its id")->required();
    command->add_option("--says", options->says, "which page: plate, delivery note, card");
    command->add_option("--at", options->at.text, "the clock of a sample book, YYYY-MM-DDThh:mm:ssZ");
    command->add_option("file", options->file, "JPEG or PNG")->required();
    command->add_flag("--json", options->json, "print one JSON object");
    command->callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
