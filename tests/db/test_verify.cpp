// Verify names the first record that is not as it was written.

#include "books.hpp"
#include "raw.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using namespace cotter::tests;

TEST_SUITE_BEGIN("verify");

namespace {

// A closed book of records 1 to 4, then SQL by somebody who took the triggers away.
db::Verified after(const std::string& sql)
{
    const Scratch scratch;
    make_small_book(scratch.book());
    {
        Raw raw{scratch.book()};
        raw.drop_triggers();
        raw.run(sql);
    }
    return db::Store::open(scratch.book())->verify();
}

struct Row {
    std::string sql;
    std::int64_t seq;
    const char* what;
};

// Sets another hex digit in a text column, at a place from its end.
std::string flipped(const std::string& column, int from_end, std::int64_t seq)
{
    const std::string at = "length(" + column + ") - " + std::to_string(from_end);
    return "UPDATE record SET " + column + " = substr(" + column + ", 1, " + at + " - 1) || CASE substr(" + column +
           ", " + at + ", 1) WHEN 'a' THEN 'b' ELSE 'a' END || substr(" + column + ", " + at +
           " + 1) WHERE seq = " + std::to_string(seq);
}

const std::vector<Row> damages{
    {"UPDATE record SET bytes = CAST(replace(CAST(bytes AS TEXT), '690', '790') AS BLOB) WHERE seq = 2", 2,
     "its bytes are not those that were hashed"},
    {"UPDATE record SET bytes = CAST(replace(CAST(bytes AS TEXT), 'quill', 'quilt') AS BLOB) WHERE seq = 3", 3,
     "its bytes are not those that were hashed"},
    {"UPDATE record SET bytes = CAST(CAST(bytes AS TEXT) || ' ' AS BLOB) WHERE seq = 1", 1,
     "its bytes are not those that were hashed"},
    {"UPDATE record SET bytes = x'7b7d' WHERE seq = 2", 2, "not a record"},
    {"UPDATE record SET bytes = x'' WHERE seq = 4", 4, "not a record"},
    {"UPDATE record SET bytes = x'ff00ff' WHERE seq = 4", 4, "not a record"},
    {flipped("sig", 0, 3), 3, "its signature does not fit"},
    {flipped("sig", 100, 1), 1, "its signature does not fit"},
    {"UPDATE record SET sig = '' WHERE seq = 2", 2, "its signature does not fit"},
    {"UPDATE record SET sig = (SELECT sig FROM record WHERE seq = 3) WHERE seq = 2", 2, "its signature does not fit"},
    {flipped("hash", 5, 4), 4, "its bytes are not those that were hashed"},
    {"UPDATE record SET kind = 'model' WHERE seq = 2", 2, "a column differs from its bytes"},
    {"UPDATE record SET about = 'sk-600' WHERE seq = 2", 2, "a column differs from its bytes"},
    {"UPDATE record SET at = at + 1 WHERE seq = 4", 4, "a column differs from its bytes"},
    {"UPDATE record SET device = '' WHERE seq = 1", 1, "a column differs from its bytes"},
    {"UPDATE record SET seq = 9 WHERE seq = 4", 9, "a column differs from its bytes"},
    {"DELETE FROM record WHERE seq = 3", 4, "a record before it is missing"},
    {"DELETE FROM record WHERE seq = 1", 2, "a record before it is missing"},
    {"DELETE FROM record WHERE seq IN (2, 3)", 4, "a record before it is missing"},
    {"UPDATE record SET seq = 99 WHERE seq = 2; UPDATE record SET seq = 2 WHERE seq = 3; UPDATE record SET seq = 3 "
     "WHERE seq = 99",
     2, "a column differs from its bytes"},
    {"UPDATE record SET sig = '' WHERE seq > 2", 3, "its signature does not fit"}};

// Signed anew by somebody with a key of his own, in the place of record `seq`.
db::Verified after_forging(std::int64_t seq)
{
    const Scratch scratch;
    const auto key = records::DeviceKey::make();
    make_small_book(scratch.book());
    {
        Raw raw{scratch.book()};
        raw.drop_triggers();
        auto forged =
            records::sign(pipe("sk-450", 500), key,
                          {seq - 1, raw.text("SELECT hash FROM record WHERE seq = " + std::to_string(seq - 1))});
        const std::string device = raw.text("SELECT device FROM record LIMIT 1");
        forged.bytes.replace(forged.bytes.find(forged.device), forged.device.size(), device);
        raw.run("DELETE FROM record WHERE seq >= " + std::to_string(seq));
        raw.run("INSERT INTO record VALUES ('" + device + "', " + std::to_string(seq) + ", '" +
                records::record_hash(forged.bytes) + "', 'pipe', 'sk-450', " + std::to_string(forged.entry.at.count()) +
                ", x'" + records::to_hex(forged.bytes) + "', '" + key.sign(forged.bytes) + "')");
    }
    const auto store = db::Store::open(scratch.book());
    store->rebuild();
    return store->verify();
}

} // namespace

TEST_CASE("a good book has no damage, counts its records and gives its head")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    const auto written = store->append({pipe("sk-450", 690), person("hallam", "O. Hallam")});
    const auto found = store->verify();
    CHECK(found.damaged.empty());
    CHECK(found.records == 3);
    CHECK(found.head.seq == 3);
    CHECK(found.head.hash == written.back().hash);
}

TEST_CASE("the first damaged record is named, with what is wrong with it")
{
    for (const Row& row : damages) {
        CAPTURE(row.sql);
        const auto found = after(row.sql);
        REQUIRE(found.damaged.size() == 1);
        CHECK(found.damaged[0].seq == row.seq);
        CHECK(contains(found.damaged[0].what, row.what));
    }
}

TEST_CASE("the records before the first damage are counted, and the last good one is the head")
{
    const auto found = after("UPDATE record SET sig = '' WHERE seq = 4");
    CHECK(found.records == 3);
    REQUIRE(found.damaged.size() == 1);
    CHECK(found.damaged[0].unit == "hallam");
    CHECK(found.damaged[0].at == morning.count() + 180);
}

TEST_CASE("a record that another key signed is found, hash and chain in order though they are")
{
    for (const std::int64_t seq : {2, 4}) {
        const auto found = after_forging(seq);
        REQUIRE(found.damaged.size() == 1);
        CHECK(found.damaged[0].seq == seq);
        CHECK(contains(found.damaged[0].what, "its signature does not fit"));
    }
}

TEST_CASE("a tail that was cut off, derived tables with it, is not found without a remembered head")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    const auto remembered = db::Store::open(scratch.book())->verify().head;
    {
        Raw raw{scratch.book()};
        raw.drop_triggers();
        raw.run("DELETE FROM record WHERE seq = 4; DELETE FROM private");
    }
    const auto store = db::Store::open(scratch.book());
    CHECK(store->verify().damaged.size() == 1); // the derived tables still know of it
    store->rebuild();
    CHECK(store->verify().damaged.empty());
    CHECK(store->verify().head.hash != remembered.hash);
    CHECK(store->verify().head.seq == remembered.seq - 1);
}

TEST_CASE("a private value that is not the one recorded is found")
{
    for (const std::string sql : {"UPDATE private SET value = 'P. Hallam'",
                                  "UPDATE private SET salt = iif(salt LIKE '00%', '01', '00') || substr(salt, 3)",
                                  "INSERT INTO private VALUES ('person nobody', 'name', '00', 'N. Obody')"}) {
        CAPTURE(sql);
        const auto found = after(sql);
        REQUIRE(found.damaged.size() == 1);
        CHECK(contains(found.damaged[0].what, "private name is not the one that was recorded"));
    }
}

TEST_CASE("a private value that was erased is no damage") { CHECK(after("DELETE FROM private").damaged.empty()); }

TEST_CASE("a trigger, an index or a table that is not as Cotter made it is found, by verify and on opening")
{
    for (const std::string sql :
         {"DROP TRIGGER record_is_never_changed", "DROP INDEX record_by_time", "CREATE TABLE more(a)",
          "DROP TRIGGER record_twice; CREATE TRIGGER record_twice "
          "BEFORE INSERT ON record BEGIN SELECT 1; END"}) {
        CAPTURE(sql);
        const Scratch scratch;
        make_small_book(scratch.book());
        Raw{scratch.book()}.run(sql);
        const auto store = db::Store::open(scratch.book());
        store->check_on_opening();
        CHECK(store->state().damaged);
        REQUIRE(store->verify().damaged.size() == 1);
        CHECK(contains(store->verify().damaged[0].what, "not those that Cotter made"));
    }
}

TEST_CASE("the opening check finds a broken chain, and says nothing against a good book")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    {
        const auto store = db::Store::open(scratch.book());
        CHECK_FALSE(store->state().checked);
        store->check_on_opening();
        CHECK(store->state().checked);
        CHECK_FALSE(store->state().damaged);
    }
    {
        Raw raw{scratch.book()};
        raw.drop_triggers();
        raw.run("DELETE FROM record WHERE seq = 3");
    }
    const auto store = db::Store::open(scratch.book());
    store->check_on_opening();
    CHECK(store->state().damaged);
}

TEST_CASE("an opening check that is stopped leaves the book unchecked, and can be done later")
{
    const Scratch scratch;
    std::vector<Entry> pipes;
    for (int i = 0; i < 200; ++i)
        pipes.push_back(pipe("p" + std::to_string(i), 1));
    make_book(scratch.book())->append(pipes);
    const auto store = db::Store::open(scratch.book());
    for (const std::int64_t until : {0, 100}) {
        std::int64_t last = 0;
        CHECK_FALSE(store->check_on_opening([&](std::int64_t done, std::int64_t) {
            last = done;
            return done < until;
        }));
        CHECK(last == (until == 0 ? 0 : 128));
        CHECK_FALSE(store->state().checked);
        CHECK_FALSE(store->state().damaged);
    }
    CHECK(store->check_on_opening([](auto...) { return true; }));
    CHECK(store->state().checked);
    CHECK_FALSE(store->state().damaged);
}

TEST_CASE("a stranger's key cannot excuse a record that is missing")
{
    const Scratch scratch;
    const std::string device = make_book(scratch.book())->append({pipe("a", 1), pipe("b", 2), pipe("c", 3)})[0].device;
    const auto stranger = records::DeviceKey::from_seed(records::sha256("a stranger"));
    Entry first = pipe("", 1);
    first.kind = "device";
    first.about = first.who = first.by = stranger.device();
    first.body = {{"name", "stranger"},
                  {"public_key", stranger.public_hex()},
                  {"replaces", device},
                  {"lost", {{{"device", device}, {"first", 3}, {"last", 3}}}}};
    {
        Raw raw{scratch.book()};
        raw.drop_triggers();
        raw.run("DELETE FROM record WHERE seq = 3");
    }
    {
        SQLite::Database database{scratch.book().string(), SQLite::OPEN_READWRITE};
        db::RecordTable{database}.insert(records::sign(first, stranger, {}));
    }
    const auto damaged = db::Store::open(scratch.book())->verify().damaged;
    REQUIRE(damaged.size() == 1);
    CHECK(damaged[0].what == "a record before it is missing");
}

TEST_SUITE_END();
