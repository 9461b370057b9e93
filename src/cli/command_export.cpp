// cotter export: a list of units, people, pipes, charts or plans as CSV, as `cotter import` reads it.

#include "command.hpp"
#include "export.hpp"
#include "import_help.hpp"
#include "session.hpp"

#include <filesystem>
#include <fstream>
#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    std::string what, store, to;
};

void write_file(const std::string& path, const std::string& text)
{
    if (std::filesystem::exists(path))
        throw BadInput{"--to: " + path + " is there already; a new name is accepted"};
    std::ofstream out{path, std::ios::binary};
    out << text;
    if (!out.flush()) {
        const bool made = out.is_open();
        out.close();
        if (made)
            std::filesystem::remove(path);
        throw BadInput{"--to: " + path + " cannot be written; a new file in a folder that you may write is accepted"};
    }
}

int run(const Options& options)
{
    const auto what = desk::what_named(options.what);
    if (!what)
        throw BadInput{"WHAT: \"" + options.what + "\" is not accepted; " + names_of_lists() + " is"};
    Reading reading{store_or_own(options.store)};
    const auto store = reading.take();
    const std::string table = desk::export_table(*store, *what);
    if (options.to.empty())
        std::cout << table;
    else
        write_file(options.to, table);
    return shown_from(*store);
}

} // namespace

void add_export(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("export", "A list of units, people, pipes, charts or plans as CSV");
    command.option("what", options->what, "units, people, pipes, charts or plans").required();
    command.option("--store", options->store, "the book (default your own)");
    command.option("--to", options->to, "a new file (default standard output)");
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
