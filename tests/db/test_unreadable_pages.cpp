// A book with pages overwritten and bits wrong, wherever: what is salvaged of it.

#include "salvaging.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using namespace cotter::tests;

TEST_SUITE_BEGIN("salvage of unreadable pages");

namespace {

// Salvages the book with these bytes; how often it was refused, lost something and lost nothing.
struct Tally {
    int refused = 0, lost = 0, whole = 0;
    std::string wrong;

    void look(const Made& made, const std::string& bad, const std::vector<records::Record>& before, std::size_t at)
    {
        write_bytes(made.book, bad);
        for (const char* ending : {"", ".key", "-wal"})
            fs::remove(made.again.string() + ending);
        try {
            const db::Salvaged salvaged = made.salvage();
            ++(salvaged.is_whole() ? whole : lost);
            if (const std::string why = wrong_with(made, salvaged, before); !why.empty())
                wrong += std::to_string(at) + ": " + why + "\n";
        } catch (const db::StoreError&) {
            ++refused;
            if (fs::exists(made.again))
                wrong += std::to_string(at) + ": refused, and a book is there\n";
        }
        if (bytes_of(made.book) != bad)
            wrong += std::to_string(at) + ": the damaged file is another now\n";
    }
};

void overwrite(std::string& bytes, std::size_t at) { bytes.replace(at, page, std::string(page, '\x5a')); }

// Overwrites the leaf with the record of a pipe from `number` on; gives that pipe. What stands further up in the tree
// holds records too.
std::string overwrite_leaf_from(std::string& bytes, int number)
{
    for (;; ++number) {
        const std::string pipe = "sk-" + std::to_string(number);
        const std::size_t at = bytes.find("{\"about\":\"" + pipe + "\"") / page * page;
        if (bytes.at(at) == '\x0a') {
            overwrite(bytes, at);
            return pipe;
        }
    }
}

} // namespace

TEST_CASE("whichever page is overwritten, each record is kept or named as lost, and then every unit is stopped")
{
    const Long made;
    const auto before = all_of(made.book);
    const std::string good = bytes_of(made.book);
    Tally tally;
    for (std::size_t at = 0; at < good.size(); at += page) {
        std::string bad = good;
        overwrite(bad, at);
        tally.look(made, bad, before, at / page);
    }
    CHECK(tally.wrong == "");
    CHECK(tally.refused >= 1); // the page of the schema, and that at the root of the records
    CHECK(tally.lost >= 8);    // those of the records
    CHECK(tally.whole >= 1);
}

TEST_CASE("whichever bit is wrong, each record is kept or named as lost, and then every unit is stopped")
{
    const Long made;
    const auto before = all_of(made.book);
    const std::string good = bytes_of(made.book);
    Tally tally;
    for (std::size_t at = 0; at < good.size(); at += 1499) {
        std::string bad = good;
        bad[at] = static_cast<char>(bad[at] ^ (1 << at % 8));
        tally.look(made, bad, before, at);
    }
    for (std::size_t at = 0; at < 100; at += 3) { // the heading
        std::string bad = good;
        bad[at] = static_cast<char>(bad[at] ^ (1 << at % 8));
        tally.look(made, bad, before, at);
    }
    CHECK(tally.wrong == "");
    CHECK(tally.lost >= 5);
    CHECK(tally.whole >= 20);
}

TEST_CASE("what lies between two unreadable pages is found place by place")
{
    const Long made;
    const auto before = all_of(made.book);
    std::string bytes = bytes_of(made.book);
    const std::string first = overwrite_leaf_from(bytes, 8), second = overwrite_leaf_from(bytes, 26);
    write_bytes(made.book, bytes);
    const auto salvaged = made.salvage();
    CHECK(salvaged.lost.size() >= 2);
    CHECK(wrong_with(made, salvaged, before) == "");
    const auto store = db::Store::open(made.again);
    CHECK_FALSE(store->fact("pipe", first).has_value());
    CHECK(store->fact("pipe", "sk-20").has_value());
    CHECK_FALSE(store->fact("pipe", second).has_value());
    CHECK(store->fact("pipe", "sk-39").has_value());
}

TEST_CASE("what lies behind an unreadable page is found from the other end where no index can be read")
{
    const Long made;
    const auto before = all_of(made.book);
    std::string bytes = bytes_of(made.book);
    const std::string lost = overwrite_leaf_from(bytes, 20);
    for (std::size_t at = page; at < bytes.size(); at += page)
        if (bytes[at] == '\x0a' && !contains(bytes.substr(at, page), "{\"")) // of an index
            overwrite(bytes, at);
    write_bytes(made.book, bytes);
    const auto salvaged = made.salvage();
    CHECK(wrong_with(made, salvaged, before) == "");
    const auto store = db::Store::open(made.again);
    CHECK(store->fact("pipe", "sk-1").has_value());
    CHECK_FALSE(store->fact("pipe", lost).has_value());
    CHECK(store->fact("pipe", "sk-39").has_value());
}

TEST_SUITE_END();
