// cotter witness: remembers the receipt of another device's book.

#include "command.hpp"
#include "lines.hpp"
#include "session.hpp"
#include "written.hpp"

#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    std::string store, as, pin_file, file;
    Given at{"--at", ""};
    bool json = false;
};

int run(const Options& options)
{
    Session session{open_store(options.store), options.at, true};
    session.sign_in(options.as, options.pin_file);
    std::vector<desk::Entry> entries;
    for_each_line(options.file, "a file with a receipt", [&](std::size_t number, const std::string& line) {
        try {
            entries.push_back(desk::witness(session.hand(options.as), line));
        } catch (const records::FormError& e) {
            throw BadInput{"line " + std::to_string(number) + ": " + e.what()};
        }
    });
    if (entries.empty())
        throw BadInput{"nothing to remember; a line with a receipt is accepted"};
    for (const auto& each : desk::write(session.store(), std::move(entries)))
        print({{"device", each.entry.about}, {"records", each.entry.body["records"]}, {"record", each.seq}},
              options.json);
    return done;
}

} // namespace

void add_witness(CLI::App& app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("witness", "Remembers the receipt of another device's book");
    command->add_option("--store", options->store, "the book that remembers")->required();
    command->add_option("--as", options->as, "who saw it")->required();
    command->add_option("--pin-file", options->pin_file, "file with the PIN of who saw it");
    command->add_option("--at", options->at.text, "the clock of a sample book, YYYY-MM-DDThh:mm:ssZ");
    command->add_option("file", options->file, "the receipt (default standard input)");
    command->add_flag("--json", options->json, "print one JSON object");
    command->callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
