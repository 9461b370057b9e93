// Every setting that a book needs is in force once it is open.

#include "books.hpp"
#include "migrate.hpp"
#include "opening.hpp"
#include "raw.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using namespace cotter::tests;

TEST_SUITE_BEGIN("settings");

namespace {

void check_settings(SQLite::Database& database)
{
    const auto reads = [&](const std::string& pragma) { return database.execAndGet("PRAGMA " + pragma).getString(); };
    CHECK(reads("locking_mode") == "exclusive");
    CHECK(reads("journal_mode") == "wal");
    CHECK(reads("synchronous") == "2"); // FULL: each commit is synced
    CHECK(reads("foreign_keys") == "1");
    CHECK(reads("recursive_triggers") == "1");
    CHECK(reads("trusted_schema") == "0");
    CHECK(reads("cell_size_check") == "1");
    CHECK(reads("mmap_size") == "0");
    CHECK(reads("application_id") == std::to_string(db::application_id));
    CHECK(reads("user_version") == std::to_string(db::newest_version()));
}

int configured(SQLite::Database& database, int option)
{
    int value = -1;
    sqlite3_db_config(database.getHandle(), option, -1, &value);
    return value;
}

} // namespace

TEST_CASE("a new book has every setting")
{
    const Scratch scratch;
    check_settings(make_book(scratch.book())->database());
}

TEST_CASE("a book that was opened again has every setting")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    check_settings(db::Store::open(scratch.book())->database());
}

TEST_CASE("settings that other programs left in the file do not count")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    Raw{scratch.book()}.run("PRAGMA synchronous = OFF; PRAGMA recursive_triggers = OFF; PRAGMA locking_mode = NORMAL; "
                            "PRAGMA mmap_size = 1000000");
    check_settings(db::Store::open(scratch.book())->database());
}

TEST_CASE("the connection defends itself, and the log goes into the file on closing")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    CHECK(configured(store->database(), SQLITE_DBCONFIG_DEFENSIVE) == 1);
    CHECK(configured(store->database(), SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION) == 0);
    CHECK(configured(store->database(), SQLITE_DBCONFIG_ENABLE_FTS3_TOKENIZER) == 0);
    CHECK(configured(store->database(), SQLITE_DBCONFIG_DQS_DML) == 0);
    CHECK(configured(store->database(), SQLITE_DBCONFIG_DQS_DDL) == 0);
    CHECK(configured(store->database(), SQLITE_DBCONFIG_TRUSTED_SCHEMA) == 0);
    CHECK(configured(store->database(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE) == 0);
}

TEST_CASE("no other database can be attached")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    CHECK_THROWS_AS(store->database().exec("ATTACH ':memory:' AS other"), SQLite::Exception);
}

TEST_SUITE_END();
