// power_cut [--cuts N] [--seed S] [--log-pages P] [--forget-syncs]: works a shift from an empty store on, cuts the
// power at each thing that SQLite did to its files, and opens what is left: kept, dropped, or torn by chance until
// there are N cuts. P: pages of the log from which on it is written back (default as in the program); a short log is
// quicker to read and is written back more often. Every hundredth store is verified with its signatures. Exit 0: every
// store opened, was whole and held every record that was acknowledged; 1: not so; 2: bad arguments.

#include "a_shift.hpp"
#include "cut_disk.hpp"
#include "folder.hpp"
#include "key_file.hpp"
#include "store.hpp"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <string>

using namespace cotter;
using namespace cotter::tests;
namespace fs = std::filesystem;

namespace {

constexpr int pipes = 30; // laid: enough for the log to be written back into the store in the middle of the shift

struct Options {
    long cuts = 3000;
    std::uint64_t seed = 1;
    int log_pages = 0; // as in the program
    bool forget_syncs = false;
};

Options read(int count, char** words)
{
    Options options;
    for (int i = 1; i < count; ++i) {
        const std::string word = words[i];
        const bool has_value = i + 1 < count;
        if (word == "--forget-syncs")
            options.forget_syncs = true;
        else if (word == "--cuts" && has_value)
            options.cuts = std::atol(words[++i]);
        else if (word == "--seed" && has_value)
            options.seed = std::strtoull(words[++i], nullptr, 10);
        else if (word == "--log-pages" && has_value)
            options.log_pages = std::atoi(words[++i]);
        else
            std::exit(2);
    }
    return options;
}

const db::NewBook new_book{"cab tablet", true, rules::Instant{1795589000}, rules::utc_day(rules::Instant{1795589000})};

struct Worked {
    std::vector<Io> ios;
    std::vector<std::string> hashes; // of the records, in order
    std::string key;
};

std::string bytes_of(const fs::path& path)
{
    std::ifstream in{path, std::ios::binary};
    return {std::istreambuf_iterator<char>{in}, {}};
}

// A store is made as "book.db.new" and renamed, which SQLite does not see: it was after the last thing done to that.
void note_the_rename(std::vector<Io>& ios, const std::string& book)
{
    const auto is_of_new = [&](const Io& io) { return io.path.starts_with(book + ".new"); };
    const auto last = std::find_if(ios.rbegin(), ios.rend(), is_of_new);
    ios.insert(last.base(), {Io::What::rename, book + ".new", 0, book});
}

// The same store code that the program runs.
Worked work_a_shift(IoLog& log, const Folder& folder, int log_pages)
{
    auto store = db::Store::make(folder.book(), new_book);
    if (log_pages > 0)
        store->database().exec("PRAGMA wal_autocheckpoint = " + std::to_string(log_pages));
    log.acknowledge(1);
    Worked worked;
    worked.hashes.push_back(store->state().head.hash);
    for (auto& entries : a_shift(pipes)) {
        for (const auto& record : store->append(std::move(entries)))
            worked.hashes.push_back(record.hash);
        log.acknowledge(static_cast<std::int64_t>(worked.hashes.size()));
    }
    store.reset();
    worked.ios = log.take();
    note_the_rename(worked.ios, folder.book().string());
    worked.key = bytes_of(db::key_path(folder.book()));
    return worked;
}

class Looking {
public:
    Looking(const Worked& worked, const Folder& folder) : worked_{worked}, folder_{folder} {}

    // "" if all is well.
    std::string after_a_cut(const CutDisk& disk, Unsynced unsynced, std::mt19937_64& random)
    try {
        folder_.clear();
        disk.write_to(folder_.path(), unsynced, random);
        if (!fs::exists(folder_.book()))
            return disk.acknowledged() == 0 ? can_be_made() : "the store is gone";
        std::ofstream{db::key_path(folder_.book())} << worked_.key;
        fs::permissions(db::key_path(folder_.book()), fs::perms::owner_read | fs::perms::owner_write);
        return can_be_used(*db::Store::open(folder_.book()), disk.acknowledged());
    } catch (const std::exception& e) {
        return e.what();
    }

private:
    std::string can_be_made() const
    {
        return db::Store::make(folder_.book(), new_book)->state().head.seq == 1 ? "" : "no new store";
    }

    std::string can_be_used(db::Store& store, std::int64_t acknowledged)
    {
        store.check_on_opening();
        const auto state = store.state();
        if (state.damaged)
            return "damaged";
        if (state.head.seq < acknowledged)
            return "record " + std::to_string(acknowledged) + " was acknowledged, the last is " +
                   std::to_string(state.head.seq);
        if (state.head.seq < 1 || state.head.hash != worked_.hashes[static_cast<std::size_t>(state.head.seq) - 1])
            return "the last record is another";
        return ++looked_ % 100 != 0 || store.verify().damaged.empty() ? "" : "it does not verify";
    }

    const Worked& worked_;
    const Folder& folder_;
    long looked_ = 0;
};

struct Tally {
    long cuts = 0, losses = 0;
    void add(const std::string& said, std::size_t at, Unsynced way)
    {
        ++cuts;
        const char* how = way == Unsynced::kept ? "kept" : way == Unsynced::dropped ? "dropped" : "torn";
        if (!said.empty() && ++losses <= 10)
            std::cout << "cut at " << at << ", " << how << ": " << said << '\n';
    }
};

// Walks through all places at which the power may go, and looks at every `step`-th in the ways named.
void walk(const Worked& worked, Looking& looking, long step, const std::vector<Unsynced>& ways, long most,
          std::mt19937_64& random, Tally& tally)
{
    CutDisk disk;
    for (std::size_t at = 0; at <= worked.ios.size() && tally.cuts < most; ++at) {
        if (at % static_cast<std::size_t>(step) == 0)
            for (const Unsynced way : ways)
                tally.add(looking.after_a_cut(disk, way, random), at, way);
        if (at < worked.ios.size())
            disk.add(worked.ios[at]);
    }
}

} // namespace

int main(int count, char** words)
{
    const Options options = read(count, words);
    IoLog& log = IoLog::install();
    log.forgets_syncs = options.forget_syncs;
    const Folder worked_in{"shift"}, cut_in{"cut"};
    const Worked worked = work_a_shift(log, worked_in, options.log_pages);
    log.notes = false;
    std::mt19937_64 random{options.seed};
    Looking looking{worked, cut_in};
    Tally tally;
    const long places = static_cast<long>(worked.ios.size()) + 1;
    walk(worked, looking, std::max(1L, places * 3 / options.cuts), {Unsynced::kept, Unsynced::dropped, Unsynced::torn},
         options.cuts, random, tally); // a short run looks at some places
    while (tally.cuts < options.cuts)
        walk(worked, looking, 1, {Unsynced::torn}, options.cuts, random, tally);
    std::cout << worked.hashes.size() << " records, " << worked.ios.size() << " operations, " << tally.cuts << " cuts, "
              << tally.losses << " losses\n";
    return tally.losses == 0 ? 0 : 1;
}
