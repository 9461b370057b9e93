// Every byte of a small store, one wrong bit at a time: it is reported, or everything reads as before.

#include "books.hpp"
#include "raw.hpp"

#include <doctest/doctest.h>

#include <SQLiteCpp/Statement.h>

using namespace cotter;
using namespace cotter::tests;

TEST_SUITE_BEGIN("damaged bytes");

namespace {

constexpr std::size_t every = 7; // a whole run takes seven times as long and finds the same

void make_corrected_book(const fs::path& path)
{
    const auto store = make_book(path);
    const auto written = store->append({pipe("sk-450", 690), person("hallam", "O. Hallam (invented)")});
    store->append({entry(
        "correction", "sk-450",
        {{"corrects", written[0].hash}, {"why", "typed wrong"}, {"body", {{"name", "DN 450"}, {"stated_kg", 680}}}})});
}

// All that can be read of a book.
std::string read_all(db::Store& store)
{
    std::string text = store.derived_tables();
    for (const auto& record : store.newest("", 100))
        text += record.device + std::to_string(record.seq) + record.hash + record.bytes + record.sig + '\n';
    text += store.private_value("person hallam", "name").value_or("removed");
    return text + store.state().head.hash + (store.state().sample ? " sample" : "");
}

struct Outcome {
    std::string reported; // what opening or verify said
    bool as_before = false;
    bool own_error = true; // no exception but StoreError
};

Outcome look_at(const fs::path& path, const std::string& before)
try {
    const auto store = db::Store::open(path);
    if (const auto found = store->verify(); !found.damaged.empty())
        return {found.damaged[0].what, false};
    return {"", read_all(*store) == before};
} catch (const db::StoreError& e) {
    return {e.what(), false};
} catch (const std::exception& e) {
    return {e.what(), false, false};
}

struct Tally {
    int looked_at = 0, reported = 0, as_before = 0, missed = 0, other_errors = 0;
    std::string first_other, missed_at;

    void add(const Outcome& outcome, std::size_t offset)
    {
        ++looked_at;
        outcome.reported.empty() ? ++(outcome.as_before ? as_before : missed) : ++reported;
        if (outcome.reported.empty() && !outcome.as_before)
            missed_at += " " + std::to_string(offset);
        if (!outcome.own_error && ++other_errors == 1)
            first_other = std::to_string(offset) + ": " + outcome.reported;
    }
};

Tally flip_each(const fs::path& path)
{
    const std::string good = bytes_of(path);
    const std::string before = read_all(*db::Store::open(path));
    Tally tally;
    for (std::size_t i = 0; i < good.size(); i += every) {
        std::string bad = good;
        bad[i] = static_cast<char>(bad[i] ^ (1 << (i / every % 8)));
        write_bytes(path, bad);
        tally.add(look_at(path, before), i);
        for (const char* ending : {"-wal", "-shm", "-journal"})
            fs::remove(path.string() + ending);
    }
    return tally;
}

void flip_in(const fs::path& path, const std::string& column, std::string value, std::size_t i)
{
    value[i] = static_cast<char>(value[i] ^ (1 << (i % 7)));
    Raw raw{path};
    raw.drop_triggers();
    raw.run("UPDATE record SET " + column + " = CAST(x'" + records::to_hex(value) + "' AS " +
            (column == "bytes" ? "BLOB" : "TEXT") + ") WHERE seq = 2");
}

} // namespace

TEST_CASE("each wrong bit of a small book is reported, or everything reads as before")
{
    const Scratch scratch;
    make_corrected_book(scratch.book());
    const Tally tally = flip_each(scratch.book());
    CAPTURE(tally.missed_at);
    CHECK(tally.missed == 0);
    CAPTURE(tally.first_other);
    CHECK(tally.other_errors == 0);
    CHECK(tally.reported > tally.looked_at / 20);
    CHECK(tally.as_before > 0); // free space, which nothing reads
    CHECK(tally.reported + tally.as_before == tally.looked_at);
}

TEST_CASE("each wrong bit of a record's bytes, hash and signature is reported")
{
    const Scratch scratch;
    make_corrected_book(scratch.book());
    const std::string good = bytes_of(scratch.book());
    for (const std::string column : {"bytes", "hash", "sig"}) {
        const std::string value =
            records::from_hex(Raw{scratch.book()}.text("SELECT lower(hex(" + column + ")) FROM record WHERE seq = 2"));
        for (std::size_t i = 0; i < value.size(); i += 11) {
            write_bytes(scratch.book(), good);
            flip_in(scratch.book(), column, value, i);
            CAPTURE(column);
            CAPTURE(i);
            CHECK(look_at(scratch.book(), "").reported != "");
        }
        write_bytes(scratch.book(), good);
    }
}

TEST_SUITE_END();
