// The tables come step by step, each step whole or not at all.

#include "books.hpp"
#include "migrate.hpp"
#include "raw.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using namespace cotter::tests;

TEST_SUITE_BEGIN("migrations");

namespace {

SQLite::Database empty_database() { return {":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE}; }

// The tables up to a version, as a program of then made them.
void make_version(SQLite::Database& database, int version)
{
    for (int i = 0; i < version; ++i)
        database.exec(db::embedded_migrations()[static_cast<std::size_t>(i)].second);
    database.exec("PRAGMA user_version = " + std::to_string(version));
}

std::string schema_of(SQLite::Database& database)
{
    return database
        .execAndGet(
            "SELECT group_concat(sql, ';') FROM (SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY name)")
        .getString();
}

std::int64_t count(SQLite::Database& database, const std::string& table)
{
    return database.execAndGet("SELECT count(*) FROM sqlite_schema WHERE name = '" + table + "'").getInt64();
}

} // namespace

TEST_CASE("their numbers run from one without a gap")
{
    int expected = 0;
    for (const auto& each : db::embedded_migrations()) {
        const auto& name = each.first;
        CAPTURE(name);
        CHECK(std::stoi(name.substr(0, 4)) == ++expected);
        CHECK(name.size() > 5);
        CHECK(name[4] == '_');
        CHECK_FALSE(each.second.empty());
    }
    CHECK(db::newest_version() == expected);
}

TEST_CASE("those built in are those of the sources")
{
    for (const auto& [name, sql] : db::embedded_migrations())
        CHECK(bytes_of(fs::path{COTTER_SOURCE} / "db" / "migrations" / (name + ".sql")) == sql);
}

TEST_CASE("migrating twice is migrating once")
{
    auto database = empty_database();
    db::migrate(database);
    const std::string once = schema_of(database);
    CHECK(db::version_of(database) == db::newest_version());
    db::migrate(database);
    CHECK(schema_of(database) == once);
    CHECK(db::version_of(database) == db::newest_version());
}

TEST_CASE("every older version comes to the same tables")
{
    auto fresh = empty_database();
    db::migrate(fresh);
    for (int version = 0; version <= db::newest_version(); ++version) {
        CAPTURE(version);
        auto old = empty_database();
        make_version(old, version);
        db::migrate(old);
        CHECK(schema_of(old) == schema_of(fresh));
    }
}

TEST_CASE("a migration that fails leaves the version before it")
{
    auto database = empty_database();
    make_version(database, 1);
    database.exec("CREATE TABLE fact_record(in_the_way)"); // the last thing that the third makes
    CHECK_THROWS_AS(db::migrate(database), SQLite::Exception);
    CHECK(db::version_of(database) == 2);
    CHECK(count(database, "private") == 1);
    CHECK(count(database, "fact") == 0); // made by the third before it failed
    database.exec("DROP TABLE fact_record");
    db::migrate(database);
    CHECK(db::version_of(database) == db::newest_version());
}

TEST_CASE("every table of a book is strict, and none but those are there")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    Raw raw{scratch.book()};
    CHECK(
        raw.text("SELECT count(*) FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND strict AND wr") ==
        "5");
    CHECK(raw.text("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name") ==
          "fact\nfact_about\nfact_record\nprivate\nrecord\nseal");
    CHECK(raw.text("PRAGMA integrity_check") == "ok");
    CHECK(raw.text("PRAGMA foreign_key_check") == "");
}

TEST_SUITE_END();
