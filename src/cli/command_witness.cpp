// cotter witness: remembers the receipt of another device's book.

#include "command.hpp"
#include "lines.hpp"
#include "writer.hpp"
#include "written.hpp"

#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    Writer writer;
    std::string file;
};

int run(const Options& options)
{
    Session session = open_to_write(options.writer);
    std::vector<desk::Entry> entries;
    for_each_line(options.file, "a file with a receipt", [&](std::size_t number, const std::string& line) {
        try {
            entries.push_back(desk::witness(session.hand(options.writer.as), line));
        } catch (const records::FormError& e) {
            throw BadInput{"line " + std::to_string(number) + ": " + e.what()};
        }
    });
    if (entries.empty())
        throw BadInput{"nothing to remember; a line with a receipt is accepted"};
    for (const auto& each : desk::write(session.store(), std::move(entries)))
        print({{"device", each.entry.about}, {"records", each.entry.body["records"]}, {"record", each.seq}},
              options.writer.json);
    return done;
}

} // namespace

void add_witness(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("witness", "Remembers the receipt of another device's book");
    add_writer_options(command, options->writer, "who saw it");
    command.option("file", options->file, "the receipt (default standard input)");
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
