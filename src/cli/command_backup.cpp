// cotter backup and cotter restore.

#include "command.hpp"
#include "files.hpp"
#include "session.hpp"

#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    std::string store, other, name;
    Given at{"--at", ""};
    bool json = false;
};

int back_up(const Options& options)
{
    const auto head = db::Store::open(options.store)->back_up(options.other);
    db::Files{options.store}.copy_to(options.other);
    print({{"backup", options.other}, {"records", head.seq}, {"head", head.hash}, {"verified", true}}, options.json);
    return done;
}

int restore(const Options& options)
{
    const rules::Instant at = options.at.is_given() ? instant(options.at) : now();
    const auto store = db::Store::restore(options.other, options.store, {options.name, false, at, rules::utc_day(at)});
    db::Files{options.other}.copy_to(options.store);
    print({{"book", options.store}, {"device", store->state().device}, {"verified", true}}, options.json);
    return done;
}

} // namespace

void add_backup(CLI::App& app, Chosen& chosen)
{
    const auto to = std::make_shared<Options>();
    auto* backup = app.add_subcommand("backup", "A verified copy of the whole book, without its key");
    backup->add_option("--store", to->store, "the book")->required();
    backup->add_option("--to", to->other, "a new file")->required();
    backup->add_flag("--json", to->json, "print one JSON object");
    backup->callback([to, &chosen] { chosen = [to] { return back_up(*to); }; });

    const auto from = std::make_shared<Options>();
    auto* again = app.add_subcommand("restore", "A book that carries on from a backup, as a new device");
    again->add_option("--store", from->store, "a new file")->required();
    again->add_option("--from", from->other, "the backup")->required();
    again->add_option("--name", from->name, "what people call the new device")->required();
    again->add_option("--at", from->at.text, "the clock of a sample book, YYYY-MM-DDThh:mm:ssZ");
    again->add_flag("--json", from->json, "print one JSON object");
    again->callback([from, &chosen] { chosen = [from] { return restore(*from); }; });
}

} // namespace cotter::cli
