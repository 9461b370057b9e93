// every_failure STORES [--step N]: each signing of a shift, making, opening, verifying, rebuilding and backing up a
// store, restoring and salvaging from one, and migrating the oldest of the folder STORES, with the n-th thing asked of
// the disk, or the n-th allocation, failing: once, or that and all after it; n from 0 on until nothing fails any more,
// in steps of N (default 1). Afterwards the store opens, is whole and holds all that was acknowledged. Exit 0: so it
// was, and every failure was told in one line; 1: not so; 2: bad arguments.

#include "a_shift.hpp"
#include "allocator.hpp"
#include "db/stores/load.hpp"
#include "folder.hpp"
#include "io_log.hpp"
#include "salvage.hpp"
#include "store.hpp"
#include "store_error.hpp"

#include <cstdlib>
#include <functional>
#include <iostream>
#include <string>

using namespace cotter;
using namespace cotter::tests;
namespace fs = std::filesystem;

namespace {

enum class Failing { disk_once, disk_for_good, memory };

void fail_at(Failing what, long n)
{
    if (what == Failing::memory)
        return Allocator::fail_at(n);
    IoLog::install().fail_at(n, what == Failing::disk_for_good);
}

bool has_failed(Failing what)
{
    return what == Failing::memory ? Allocator::has_failed() : IoLog::install().has_failed();
}

void stop_failing()
{
    IoLog::install().fail_at(-1, false);
    IoLog::install().take();
    Allocator::fail_at(-1);
}

struct Tally {
    long failures = 0, wrong = 0;
    void say(const std::string& doing, Failing what, long n, const std::string& wrong_with)
    {
        if (++wrong <= 20)
            std::cout << doing << ", " << (what == Failing::memory ? "allocation " : "operation ") << n << ": "
                      << wrong_with << '\n';
    }
};

// What a user does with a store; it may fail with a StoreError, and says whether it was done.
using Doing = std::function<void(const fs::path&)>;

struct Operation {
    std::string name;
    Doing doing;
    std::int64_t adds = 0; // records, if it is done
};

void copy(const Folder& from, const Folder& to)
{
    to.clear();
    for (const auto& each : fs::directory_iterator{from.path()})
        fs::copy_file(each.path(), to.path() / each.path().filename());
}

// What is made of a store: a backup, a book that carries on. It is whole, or it is not there.
const db::NewBook spare{"spare tablet", true, rules::Instant{1795600000}, rules::Day{}};

fs::path beside(const fs::path& book) { return book.parent_path() / "other.db"; }

// "" if the store is as it should be.
std::string wrong_after(const fs::path& book, std::int64_t before, std::int64_t adds, bool was_done)
try {
    auto store = db::Store::open(book);
    store->check_on_opening();
    const auto seq = store->state().head.seq;
    if (store->state().damaged || !store->verify().damaged.empty())
        return "the store is damaged";
    if (fs::exists(beside(book)) && !db::Store::open(beside(book))->verify().damaged.empty())
        return "half a book stands beside it";
    if (was_done && seq != before + adds)
        return "what was acknowledged is not there";
    if (seq != before && seq != before + adds)
        return "a part of one signing is there";
    return "";
} catch (const std::exception& e) {
    return e.what();
}

// False when n was beyond the last thing that could fail.
bool try_one(const Operation& operation, Failing what, long n, const Folder& prepared, std::int64_t before,
             const Folder& used, Tally& tally)
{
    copy(prepared, used);
    bool was_done = false;
    std::string said;
    fail_at(what, n);
    try {
        operation.doing(used.book());
        was_done = true;
    } catch (const db::StoreError& e) {
        said = e.what();
        if (std::string{e.what()}.find('\n') != std::string::npos)
            tally.say(operation.name, what, n, "more than one line");
    } catch (const std::exception& e) {
        tally.say(operation.name, what, n, std::string{"not a StoreError: "} + e.what());
    }
    const bool failed = has_failed(what);
    stop_failing();
    if (!failed && !was_done)
        tally.say(operation.name, what, n, "not done, and nothing failed: " + said);
    if (!failed)
        return false;
    ++tally.failures;
    if (const std::string wrong = wrong_after(used.book(), before, operation.adds, was_done); !wrong.empty())
        tally.say(operation.name, what, n, wrong);
    return true;
}

void try_all(const Operation& operation, const Folder& prepared, std::int64_t before, const Folder& used, long step,
             Tally& tally)
{
    for (const Failing what : {Failing::disk_once, Failing::disk_for_good, Failing::memory})
        for (long n = 0; try_one(operation, what, n, prepared, before, used, tally); n += step)
            ;
}

Operation signing(const std::vector<records::Entry>& entries)
{
    return {"signing " + entries.front().kind,
            [entries](const fs::path& book) { db::Store::open(book)->append(entries); },
            static_cast<std::int64_t>(entries.size())};
}

std::vector<Operation> readings()
{
    return {{"opening and its check", [](const fs::path& book) { db::Store::open(book)->check_on_opening(); }},
            {"verify", [](const fs::path& book) { (void)db::Store::open(book)->verify(); }},
            {"rebuild", [](const fs::path& book) { db::Store::open(book)->rebuild(); }},
            {"backup", [](const fs::path& book) { db::Store::open(book)->back_up(beside(book)); }},
            {"restoring", [](const fs::path& book) { db::Store::restore(book, beside(book), spare); }},
            {"salvage", [](const fs::path& book) { db::Store::salvage(book, beside(book), spare); }}};
}

// A store that could not be made leaves nothing in the way of making it.
void try_making(const Folder& used, long step, Tally& tally)
{
    const db::NewBook facts{"cab tablet", true, rules::Instant{1795589000}, rules::Day{}};
    for (const Failing what : {Failing::disk_once, Failing::disk_for_good, Failing::memory})
        for (long n = 0;; n += step) {
            used.clear();
            fail_at(what, n);
            std::string said;
            try {
                db::Store::make(used.book(), facts);
            } catch (const std::exception& e) {
                said = e.what();
            }
            const bool failed = has_failed(what);
            stop_failing();
            if (!failed)
                break;
            ++tally.failures;
            try {
                if (!fs::exists(used.book()))
                    db::Store::make(used.book(), facts);
                if (const std::string wrong = wrong_after(used.book(), 1, 0, true); !wrong.empty())
                    tally.say("making", what, n, wrong);
            } catch (const std::exception& e) {
                tally.say("making", what, n, said + " and then " + e.what());
            }
        }
}

void try_migrating(const fs::path& stores, const Folder& prepared, const Folder& used, long step, Tally& tally)
{
    constexpr std::int64_t records = 18;
    prepared.clear();
    load_store(stores, 1, prepared.book());
    const Operation migrating{"migrating", [](const fs::path& book) { db::Store::open(book)->check_on_opening(); }, 0};
    try_all(migrating, prepared, records, used, step, tally);
}

} // namespace

int main(int count, char** words)
{
    long step = 1;
    if (count == 4 && std::string{words[2]} == "--step")
        step = std::max(1L, std::atol(words[3]));
    else if (count != 2)
        return 2;
    Allocator::install();
    IoLog::install();
    const Folder prepared{"prepared"}, used{"used"};
    Tally tally;
    try_making(used, step, tally);
    db::Store::make(prepared.book(), {"cab tablet", true, rules::Instant{1795589000}, rules::Day{}});
    std::int64_t before = 1;
    for (const auto& entries : a_shift(1)) {
        try_all(signing(entries), prepared, before, used, step, tally);
        before += static_cast<std::int64_t>(db::Store::open(prepared.book())->append(entries).size());
    }
    for (const Operation& operation : readings())
        try_all(operation, prepared, before, used, step, tally);
    try_migrating(words[1], prepared, used, step, tally);
    std::cout << tally.failures << " failures, " << tally.wrong << " wrong\n";
    return tally.wrong == 0 ? 0 : 1;
}
