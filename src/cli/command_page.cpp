// cotter page: keeps the picture of a plate, page or card beside the book, and records what it shows.

#include "command.hpp"
#include "files.hpp"
#include "writer.hpp"
#include "written.hpp"

#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    Writer writer;
    std::string what, about, says, file;
};

int run(const Options& options)
{
    Session session = open_to_write(options.writer);
    const std::string name = db::Files{options.writer.store}.keep(options.file);
    const auto written = desk::write(session.store(), {desk::show_page(session.hand(options.writer.as), options.what,
                                                                       options.about, name, options.says)});
    print({{"sha256", name}, {"record", written.back().seq}}, options.writer.json);
    return done;
}

} // namespace

void add_page(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("page", "Keeps the picture of a plate, page or card that typed data come from");
    add_writer_options(command, options->writer, "who took it");
    command.option("--what", options->what, "model, chart, pipe, report or person").required();
    command.option("--about", options->about, "its id").required();
    command.option("--says", options->says, "which page: plate, delivery note, card");
    command.option("file", options->file, "JPEG or PNG").required();
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
