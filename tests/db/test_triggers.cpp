// The file itself refuses that a record is changed, removed or written over, whoever asks.

#include "books.hpp"
#include "raw.hpp"

#include <doctest/doctest.h>

using namespace cotter::tests;

TEST_SUITE_BEGIN("records are never changed");

namespace {

const std::string all_rows =
    "SELECT device || seq || hash || kind || about || at || hex(bytes) || sig FROM record ORDER BY device, seq";

// Another program at a closed book.
struct Other {
    explicit Other(bool recursive) : raw{(make_small_book(scratch.book()), scratch.book())}
    {
        raw.run(recursive ? "PRAGMA recursive_triggers = ON" : "PRAGMA recursive_triggers = OFF");
        before = raw.text(all_rows);
    }

    void check_refused(const std::string& sql, const std::string& says)
    {
        CAPTURE(sql);
        CHECK(contains(raw.refusal(sql), says));
        CHECK(raw.text(all_rows) == before);
    }

    Scratch scratch;
    Raw raw;
    std::string before;
};

const std::string other_bytes =
    "INTO record SELECT device, seq, hash, kind, about, at, CAST(bytes || ' ' AS BLOB), sig FROM record WHERE seq = 2";
const std::string other_hash =
    "INTO record SELECT device, seq, substr(hash, 2) || 'f', kind, about, at, bytes, sig FROM record WHERE seq = 2";
const std::string other_place =
    "INTO record SELECT device, seq + 90, hash, kind, about, at, bytes, sig FROM record WHERE seq = 2";
const std::string other_device =
    "INTO record SELECT 'f' || device, seq, hash, kind, about, at, bytes, sig FROM record WHERE seq = 2";

} // namespace

TEST_CASE("an update is refused, with recursive triggers on or off")
{
    for (const bool recursive : {true, false}) {
        Other other{recursive};
        for (const std::string sql :
             {"UPDATE record SET sig = 'x'", "UPDATE record SET bytes = x'00' WHERE seq = 2",
              "UPDATE OR REPLACE record SET seq = 3 WHERE seq = 2", "UPDATE OR IGNORE record SET seq = 9 WHERE seq = 2",
              "UPDATE record SET seq = seq"})
            other.check_refused(sql, "a record is never changed");
    }
}

TEST_CASE("a removal is refused, with recursive triggers on or off")
{
    for (const bool recursive : {true, false}) {
        Other other{recursive};
        for (const std::string sql : {"DELETE FROM record", "DELETE FROM record WHERE seq = 4"})
            other.check_refused(sql, "a record is never removed");
    }
}

TEST_CASE("insert or replace is refused, with recursive triggers on or off")
{
    for (const bool recursive : {true, false}) {
        Other other{recursive};
        for (const auto& rows : {other_bytes, other_hash, other_place, other_device})
            other.check_refused("INSERT OR REPLACE " + rows, "this place in the book is taken");
    }
}

TEST_CASE("other bytes for a known place or hash stop the insert, whatever its conflict clause")
{
    Other other{false};
    for (const auto& rows : {other_bytes, other_hash, other_place, other_device})
        for (const char* verb : {"INSERT ", "INSERT OR IGNORE ", "INSERT OR FAIL ", "INSERT OR ROLLBACK "})
            other.check_refused(verb + rows, "this place in the book is taken");
}

TEST_CASE("the same record again is ignored without a word")
{
    Other other{false};
    const std::string same =
        "INTO record SELECT device, seq, hash, kind, about, at, bytes, sig FROM record WHERE seq = 2";
    for (const char* verb : {"INSERT ", "INSERT OR REPLACE "}) {
        CHECK(other.raw.refusal(verb + same) == "");
        CHECK(other.raw.text(all_rows) == other.before);
    }
}

TEST_CASE("a record has no row number that could be replaced")
{
    Other other{false};
    CHECK(contains(other.raw.refusal("SELECT rowid FROM record"), "no such column"));
}

TEST_CASE("a row that is not of a record's form is refused")
{
    Other other{false};
    for (const std::string values :
         {"'d', 0, '%', 'k', 'a', 1, x'00', 's'", "'d', 1, 'short', 'k', 'a', 1, x'00', 's'",
          "'d', 1, '%', 'k', 'a', 'noon', x'00', 's'", "'d', 1, '%', 'k', 'a', 1, 'text', 's'",
          "'d', 1, '%', 'k', 'a', 1, x'00', NULL"}) {
        std::string row = values;
        if (const auto at = row.find('%'); at != std::string::npos)
            row.replace(at, 1, std::string(64, 'a'));
        CAPTURE(row);
        CHECK(other.raw.refusal("INSERT INTO record VALUES (" + row + ")") != "");
        CHECK(other.raw.text(all_rows) == other.before);
    }
}

TEST_CASE("the program's own connection cannot do it either, nor change the triggers' text")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    for (const std::string sql : {"UPDATE record SET sig = 'x'", "DELETE FROM record",
                                  "INSERT OR REPLACE INTO record SELECT device, seq, hash, kind, about, at, CAST(bytes "
                                  "|| ' ' AS BLOB), sig FROM record",
                                  "PRAGMA writable_schema = ON; DELETE FROM sqlite_schema WHERE type = 'trigger'"}) {
        CAPTURE(sql);
        CHECK_THROWS_AS(store->database().exec(sql), SQLite::Exception);
    }
    CHECK(store->verify().damaged.empty());
}

TEST_SUITE_END();
