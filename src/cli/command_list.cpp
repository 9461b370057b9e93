// cotter list: the records of a book, newest first.

#include "command.hpp"
#include "kinds.hpp"
#include "local_time.hpp"
#include "private_data.hpp"
#include "session.hpp"

#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    std::string store, kind, about;
    Given newest{"--newest", ""};
    bool json = false;
};

// Names and other private values stand in the record as hashes; here as they read, or "removed".
Json readable_body(const records::Record& record, const records::Book& book)
{
    Json body = record.entry.body;
    const records::Kind* kind = records::find_kind(record.entry.kind);
    const auto fields = kind ? records::private_fields(*kind) : std::vector<std::string>{};
    for (const std::string& field : fields)
        if (body.contains(field) && body[field].is_string())
            body[field] = record.entry.kind == "pin_set" // to be guessed at by nobody
                              ? "kept apart"
                              : book.private_value(records::private_subject(record.entry), field).value_or("removed");
    return body;
}

Json to_json(const records::Record& record, const records::Book& book)
{
    const records::Entry& entry = record.entry;
    return {{"device", record.device},
            {"seq", record.seq},
            {"hash", record.hash},
            {"kind", entry.kind},
            {"about", entry.about},
            {"at", desk::to_string(entry.at)},
            {"day", rules::to_string(entry.day)},
            {"who", entry.who},
            {"by", entry.by},
            {"how", entry.how},
            {"after", entry.after},
            {"body", readable_body(record, book)}};
}

int run(const Options& options)
{
    if (!options.kind.empty() && !records::find_kind(options.kind))
        throw BadInput{"KIND: \"" + options.kind + "\" is not a kind of record; `cotter help record` lists them"};
    const std::int64_t most =
        options.newest.is_given() ? whole_between(options.newest, 1, 1'000'000'000) : std::int64_t{1'000'000'000};
    Reading reading{store_or_own(options.store)};
    const auto store = reading.take();
    std::int64_t printed = 0;
    for (const auto& record : store->newest(options.kind, 1'000'000'000))
        if ((options.about.empty() || record.entry.about == options.about) && printed++ < most)
            print(to_json(record, *store), true);
    return shown_from(*store);
}

} // namespace

void add_list(Command app, Chosen& chosen)
{
    auto options = std::make_shared<Options>();
    auto command = app.subcommand("list", "The records of a book, newest first, an object a line");
    command.option("kind", options->kind, "kind of record (default all)");
    command.option("--store", options->store, "the book (default your own)");
    command.option("--about", options->about, "only those about this id");
    command.option("--newest", options->newest.text, "so many at most");
    command.flag("--json", options->json, "as always: a JSON object a line");
    command.callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

} // namespace cotter::cli
