// cotter backup and cotter restore.

#include "command.hpp"
#include "daily_backup.hpp"
#include "files.hpp"
#include "register.hpp"
#include "session.hpp"

#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    std::string store, other, name;
    Given at{"--at", ""};
    bool json = false, daily = false;
};

// Today's copy at the place that the book names.
int copy_today(const Options& options)
{
    Session session{open_store(options.store), options.at, true};
    if (desk::doc(session.store(), "backup_place", session.store().state().device).value("folder", "").empty())
        throw BadInput{"--daily: the book names no place; `cotter help record backup_place` says how it is named"};
    const NotCopied wrong = back_up_today(session, session.store(), options.store);
    if (!wrong.why.empty())
        throw BadInput{"--daily: " + wrong.why + "; a folder that can be written is accepted"};
    print({{"copied", true}}, options.json);
    return done;
}

int back_up(const Options& options)
{
    if (options.daily == !options.other.empty())
        throw BadInput{"--to: a new file is needed, or --daily in its place"};
    if (options.daily)
        return copy_today(options);
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

void add_backup(Command app, Chosen& chosen)
{
    const auto to = std::make_shared<Options>();
    auto backup = app.subcommand("backup", "A verified copy of the whole book, without its key");
    backup.option("--store", to->store, "the book").required();
    backup.option("--to", to->other, "a new file");
    backup.flag("--daily", to->daily, "today's copy, at the place that the book names (record backup_place)");
    backup.option("--at", to->at.text, "the clock of a sample book, YYYY-MM-DDThh:mm:ssZ");
    backup.flag("--json", to->json, "print one JSON object");
    backup.callback([to, &chosen] { chosen = [to] { return back_up(*to); }; });

    const auto from = std::make_shared<Options>();
    auto again = app.subcommand("restore", "A book that carries on from a backup, as a new device");
    again.option("--store", from->store, "a new file").required();
    again.option("--from", from->other, "the backup").required();
    again.option("--name", from->name, "what people call the new device").required();
    again.option("--at", from->at.text, "the clock of a sample book, YYYY-MM-DDThh:mm:ssZ");
    again.flag("--json", from->json, "print one JSON object");
    again.callback([from, &chosen] { chosen = [from] { return restore(*from); }; });
}

} // namespace cotter::cli
