// every_flip [--step N] [--from BYTE] [--to BYTE]: flips a bit of each N-th byte (default 1) of a small sample store in
// which a stop is called, and opens it. Each flip is reported, on opening or by verify, or everything reads as before;
// none crashes, and none turns DO NOT LIFT into MAY LIFT. Exit 0: so it was; 1: not so; 2: bad arguments.

#include "cli/sample_book.hpp"
#include "folder.hpp"
#include "lift_question.hpp"
#include "store.hpp"
#include "store_error.hpp"

#include "decide.hpp"

#include <cstdlib>
#include <iostream>
#include <map>

using namespace cotter;
using namespace cotter::tests;

namespace {

desk::LiftAsked the_lift()
{
    desk::LiftAsked asked;
    asked.unit = "cl-02";
    asked.machine = "ex-21";
    asked.pipe = "sk-450";
    asked.on_the_levers = "farrow";
    asked.now = rules::Instant{1795593600}; // 2026-11-25T08:00:00Z
    return asked;
}

std::string read_all(const db::Store& store)
{
    std::string text = store.derived_tables();
    for (const auto& record : store.newest("", 1000))
        text += record.device + std::to_string(record.seq) + record.hash + record.bytes + record.sig + '\n';
    for (const char* person : {"quill", "hallam", "iqbal", "farrow", "penrose"})
        text += store.private_value(std::string{"person "} + person, "name").value_or("removed");
    return text + store.state().head.hash;
}

struct Tally {
    long flips = 0, reported = 0, as_before = 0, wrong = 0;
    void say(std::size_t at, const std::string& what)
    {
        if (++wrong <= 20)
            std::cout << "byte " << at << ": " << what << '\n';
    }
};

void look(const fs::path& book, const std::string& before, std::size_t at, Tally& tally)
try {
    ++tally.flips;
    const auto store = db::Store::open(book);
    const bool good = store->verify().damaged.empty();
    if (good && read_all(*store) != before)
        return tally.say(at, "not reported, and something reads otherwise");
    ++(good ? tally.as_before : tally.reported);
    store->check_on_opening();
    if (decide(lift_question(*store, the_lift())).may_lift())
        tally.say(at, "MAY LIFT");
} catch (const db::StoreError&) {
    ++tally.reported;
} catch (const std::exception& e) {
    tally.say(at, std::string{"not a StoreError: "} + e.what());
}

void flip_all(const Folder& folder, long step, long from, long to, Tally& tally)
{
    const std::string good = bytes_of(folder.book());
    const std::string before = read_all(*db::Store::open(folder.book()));
    for (std::size_t i = static_cast<std::size_t>(from); i < std::min(good.size(), static_cast<std::size_t>(to));
         i += static_cast<std::size_t>(step)) {
        std::string bad = good;
        bad[i] = static_cast<char>(bad[i] ^ (1 << (i % 8)));
        for (const char* ending : {"-wal", "-shm", "-journal"})
            fs::remove(folder.book().string() + ending);
        write_bytes(folder.book(), bad);
        look(folder.book(), before, i, tally);
    }
}

} // namespace

int main(int count, char** words)
{
    std::map<std::string, long> given{{"--step", 1}, {"--from", 0}, {"--to", 1'000'000'000}};
    for (int i = 1; i < count; i += 2) {
        if (i + 1 == count || !given.contains(words[i]))
            return 2;
        given[words[i]] = std::max(0L, std::atol(words[i + 1]));
    }
    const Folder folder{"flips"};
    make_sample_book(folder.book());
    const std::string stop = record_line("stop_called", "cl-02", {{"why", "Jaw looks bent"}});
    if (call({"record", "any", "--store", folder.book().string(), "--as", "iqbal"}, stop).code != 0)
        return 2;
    Tally tally;
    flip_all(folder, std::max(1L, given["--step"]), given["--from"], given["--to"], tally);
    std::cout << tally.flips << " flips, " << tally.reported << " reported, " << tally.as_before << " read as before, "
              << tally.wrong << " wrong\n";
    return tally.wrong == 0 ? 0 : 1;
}
