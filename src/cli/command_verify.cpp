// cotter verify and cotter rebuild.

#include "bundle_form.hpp"
#include "command.hpp"
#include "files.hpp"
#include "lines.hpp"
#include "local_time.hpp"
#include "lost_json.hpp"
#include "papers_out.hpp"
#include "receipt.hpp"
#include "session.hpp"
#include "store_error.hpp"
#include "to_compare.hpp"

#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    std::string store, receipt, against, bundle;
    bool json = false;
};

Json damage_json(const db::Damage& damage)
{
    return {{"device", damage.device},
            {"seq", damage.seq},
            {"unit", damage.unit},
            {"at", damage.at == 0 ? Json{} : Json(desk::to_string(rules::Instant{damage.at}))},
            {"what", damage.what}};
}

// A receipt that does not fit is damage: the first record that is missing or another.
void compare(const db::Store& store, const std::string& file, db::Verified& found)
{
    for_each_line(file, "a file with a receipt", [&](std::size_t number, const std::string& line) {
        try {
            const records::Receipt receipt = records::read_receipt(line);
            if (const std::string what = store.compare(receipt); !what.empty())
                found.damaged.push_back({receipt.device, receipt.head.seq, "", receipt.at.count(), what});
        } catch (const records::FormError& e) {
            throw BadInput{"--receipt line " + std::to_string(number) + ": " + e.what()};
        }
    });
}

// What another book remembers of this one's devices.
void compare_with_book(const db::Store& store, const std::string& path, db::Verified& found)
{
    Reading reading{path};
    const auto other = reading.take();
    std::size_t compared = 0;
    for (const auto& seen : other->facts("head_seen"))
        if (store.has_records_of(seen.key.key) && ++compared > 0)
            if (const std::string what = store.compare(records::read_receipt(seen.doc.value("receipt", "")));
                !what.empty())
                found.damaged.push_back({seen.key.key, seen.doc.value("records", std::int64_t{0}), "", seen.at, what});
    if (compared == 0)
        throw BadInput{"--against: " + path +
                       " remembers no receipt of this book's devices; a book in which `cotter witness` wrote one is "
                       "accepted"};
}

// Pictures that the book names: one that is another is damage, one that is not here is said.
Json look_at_pages(const db::Store& store, const std::string& path, db::Verified& found)
{
    const db::Files::Wrong wrong = db::Files{path}.look_at(desk::pages_of(store));
    for (const std::string& name : wrong.changed)
        found.damaged.push_back({"", 0, name, 0, "the picture beside the book is not the one that was recorded"});
    return wrong.missing;
}

// What does not fit in a bundle is damage of it.
records::BundleCheck compare_bundle(const records::Book* book, const std::string& folder, db::Verified& found)
{
    const auto check = records::check_bundle(read_folder(folder, "--bundle"), book);
    if (!check.wrong.empty())
        found.damaged.push_back({"", 0, "", 0, "bundle: " + check.wrong});
    return check;
}

db::Verified verified(const Options& options, Json& missing)
try {
    const std::string path = store_or_own(options.store);
    const bool from_copy = std::filesystem::is_regular_file(path) && !db::is_writable(path);
    const auto copy = from_copy ? std::make_unique<db::PrivateCopy>(path) : nullptr;
    const auto store = db::Store::open(copy ? copy->path() : std::filesystem::path{path});
    db::Verified found = store->verify();
    if (!options.receipt.empty())
        compare(*store, options.receipt, found);
    if (!options.against.empty())
        compare_with_book(*store, options.against, found);
    if (!options.bundle.empty())
        compare_bundle(store.get(), options.bundle, found);
    missing = look_at_pages(*store, path, found);
    return found;
} catch (const db::DamagedError& e) {
    return {0, {}, {{"", 0, "", 0, e.what()}}, {}};
}

Json damages_json(const db::Verified& found)
{
    Json damaged = Json::array();
    for (const db::Damage& each : found.damaged)
        damaged.push_back(damage_json(each));
    return damaged;
}

// Without the book: its files, and the records' own hashes and signatures. Whose key signed is said, not judged.
int verify_alone(const Options& options)
{
    db::Verified found;
    const auto check = compare_bundle(nullptr, options.bundle, found);
    print({{"ok", found.damaged.empty()},
           {"files", check.files},
           {"records", check.records},
           {"device", check.receipt.device},
           {"head", check.receipt.head.hash},
           {"damaged", damages_json(found)}},
          options.json);
    return found.damaged.empty() ? done : negative;
}

int verify(const Options& options)
{
    if (!options.bundle.empty() && options.store.empty() && options.receipt.empty())
        return verify_alone(options);
    Json missing = Json::array();
    const db::Verified found = verified(options, missing);
    const Json damaged = damages_json(found);
    Json said{{"ok", damaged.empty()}, {"records", found.records}, {"head", found.head.hash}, {"damaged", damaged}};
    if (!missing.empty())
        said["pages_missing"] = missing;
    for (const db::Lost& each : found.lost)
        said["lost"].push_back(lost_json(each));
    print(said, options.json);
    return damaged.empty() ? done : negative;
}

int rebuild(const Options& options)
{
    const auto store = db::Store::open(store_or_own(options.store));
    for (const db::Damage& each : store->verify().damaged)
        if (each.seq > 0)
            throw BadInput{"record " + std::to_string(each.seq) + " is damaged (" + each.what +
                           "); a book whose records are good is accepted"};
    store->rebuild();
    print({{"rebuilt", true}}, options.json);
    return done;
}

Command add(Command app, Chosen& chosen, const char* name, const char* says, std::shared_ptr<Options> options,
            int (*act)(const Options&))
{
    auto command = app.subcommand(name, says);
    command.option("--store", options->store, "the book (default your own)");
    command.flag("--json", options->json, "print one JSON object");
    command.callback([options, act, &chosen] { chosen = [options, act] { return act(*options); }; });
    return command;
}

} // namespace

void add_verify(Command app, Chosen& chosen)
{
    const auto options = std::make_shared<Options>();
    auto command =
        add(app, chosen, "verify", "Checks every hash, link, signature, body and derived table", options, verify);
    command.option("--receipt", options->receipt, "file with receipts, a line each, or -: was the book cut since?");
    command.option("--against", options->against, "another device's book, and the receipts that it remembers");
    command.option("--bundle", options->bundle, "an inspector's bundle; without --store that alone is checked");
    add(app, chosen, "rebuild", "Derives the tables anew from the records", std::make_shared<Options>(), rebuild);
}

} // namespace cotter::cli
