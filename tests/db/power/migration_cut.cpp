// migration_cut STORES [--seed S]: opens the oldest store of the folder STORES, which migrates it, cuts the power at
// each thing that SQLite did to its files, kept, dropped and torn, and opens what is left.
// Exit 0: every store opened, was whole, of today's version and held every record; 1: not so; 2: bad arguments.

#include "cut_disk.hpp"
#include "db/stores/load.hpp"
#include "folder.hpp"
#include "migrate.hpp"
#include "store.hpp"

#include <cstdlib>
#include <iostream>
#include <string>

using namespace cotter;
using namespace cotter::tests;

namespace {

constexpr int oldest = 1;
constexpr int torn_times = 8; // other pieces get through each time

struct Migrated {
    std::string before, key; // the file as it lay there, and its key
    std::vector<Io> ios;
    std::string head, tables;
};

Migrated migrate_the_oldest(IoLog& log, const fs::path& stores, const Folder& folder)
{
    load_store(stores, oldest, folder.book());
    Migrated migrated{bytes_of(folder.book()), bytes_of(folder.book().string() + ".key"), {}, "", ""};
    log.take();
    {
        const auto store = db::Store::open(folder.book());
        store->check_on_opening();
        migrated.head = store->state().head.hash;
        migrated.tables = store->derived_tables();
    }
    migrated.ios = log.take();
    return migrated;
}

// "" if all is well.
std::string wrong_after_a_cut(const Migrated& migrated, const Folder& folder, const CutDisk& disk, Unsynced unsynced,
                              std::mt19937_64& random)
try {
    folder.clear();
    disk.write_to(folder.path(), unsynced, random);
    const fs::path key = folder.book().string() + ".key";
    write_bytes(key, migrated.key);
    fs::permissions(key, fs::perms::owner_read | fs::perms::owner_write);
    const auto store = db::Store::open(folder.book());
    store->check_on_opening();
    if (store->state().damaged || !store->verify().damaged.empty())
        return "damaged";
    if (db::version_of(store->database()) != db::newest_version())
        return "not migrated";
    if (store->state().head.hash != migrated.head || store->derived_tables() != migrated.tables)
        return "it holds something else";
    return "";
} catch (const std::exception& e) {
    return e.what();
}

struct Tally {
    long cuts = 0, losses = 0;
    void add(const std::string& said, std::size_t at)
    {
        ++cuts;
        if (!said.empty() && ++losses <= 10)
            std::cout << "cut at " << at << ": " << said << '\n';
    }
};

void cut_everywhere(const Migrated& migrated, const std::string& book, std::mt19937_64& random, Tally& tally)
{
    const Folder folder{"cut"};
    CutDisk disk;
    disk.add({Io::What::write, book, 0, migrated.before});
    disk.add({Io::What::sync, book, 0, ""});
    for (std::size_t at = 0; at <= migrated.ios.size(); ++at) {
        tally.add(wrong_after_a_cut(migrated, folder, disk, Unsynced::kept, random), at);
        tally.add(wrong_after_a_cut(migrated, folder, disk, Unsynced::dropped, random), at);
        for (int i = 0; i < torn_times; ++i)
            tally.add(wrong_after_a_cut(migrated, folder, disk, Unsynced::torn, random), at);
        if (at < migrated.ios.size())
            disk.add(migrated.ios[at]);
    }
}

} // namespace

int main(int count, char** words)
{
    std::mt19937_64 random{1};
    if (count == 4 && std::string{words[2]} == "--seed")
        random.seed(std::strtoull(words[3], nullptr, 10));
    else if (count != 2)
        return 2;
    IoLog& log = IoLog::install();
    const Folder folder{"migration"};
    const Migrated migrated = migrate_the_oldest(log, words[1], folder);
    log.notes = false;
    Tally tally;
    cut_everywhere(migrated, folder.book().string(), random, tally);
    std::cout << migrated.ios.size() << " operations, " << tally.cuts << " cuts, " << tally.losses << " losses\n";
    return tally.losses == 0 ? 0 : 1;
}
