// cotter verify and cotter rebuild.

#include "command.hpp"
#include "local_time.hpp"
#include "session.hpp"
#include "store_error.hpp"

#include <memory>

namespace cotter::cli {

namespace {

struct Options {
    std::string store;
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

db::Verified verified(const std::string& path)
try {
    return db::Store::open(path)->verify();
} catch (const db::DamagedError& e) {
    return {0, {}, {{"", 0, "", 0, e.what()}}};
}

int verify(const Options& options)
{
    const db::Verified found = verified(options.store);
    Json damaged = Json::array();
    for (const db::Damage& each : found.damaged)
        damaged.push_back(damage_json(each));
    print({{"ok", damaged.empty()}, {"records", found.records}, {"head", found.head.hash}, {"damaged", damaged}},
          options.json);
    return damaged.empty() ? done : negative;
}

int rebuild(const Options& options)
{
    const auto store = db::Store::open(options.store);
    store->rebuild();
    print({{"rebuilt", true}}, options.json);
    return done;
}

void add(CLI::App& app, Chosen& chosen, const char* name, const char* says, int (*act)(const Options&))
{
    auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand(name, says);
    command->add_option("--store", options->store, "the book")->required();
    command->add_flag("--json", options->json, "print one JSON object");
    command->callback([options, act, &chosen] { chosen = [options, act] { return act(*options); }; });
}

} // namespace

void add_verify(CLI::App& app, Chosen& chosen)
{
    add(app, chosen, "verify", "Checks every hash, link, signature, body and derived table", verify);
    add(app, chosen, "rebuild", "Derives the tables anew from the records", rebuild);
}

} // namespace cotter::cli
