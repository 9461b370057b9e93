// What is not a book of ours, or is newer, or in use, is refused and left byte for byte as it was.

#include "books.hpp"
#include "child.hpp"
#include "migrate.hpp"
#include "opening.hpp"
#include "raw.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using namespace cotter::tests;

TEST_SUITE_BEGIN("a book that is refused");

namespace {

// Name, size and hash of each. An empty log says nothing: SQLite makes one when it looks.
std::string summary(const std::map<std::string, std::string>& files)
{
    std::string text;
    for (const auto& [name, bytes] : files)
        if (!(bytes.empty() && name.ends_with("-wal")))
            text += name + " " + std::to_string(bytes.size()) + " " + records::sha256(bytes).substr(0, 8) + "\n";
    return text;
}

// Opens it, and expects one line that names the file, and every file in the folder as before.
void check_refused(const Scratch& scratch, const std::string& says)
{
    const std::string before = summary(scratch.files());
    const std::string said = store_error_of([&] { db::Store::open(scratch.book()); });
    CAPTURE(said);
    CHECK(contains(said, says));
    CHECK(contains(said, scratch.book().string()));
    CHECK(said.find('\n') == std::string::npos);
    CHECK(summary(scratch.files()) == before);
}

const std::string not_ours = "not a Cotter book; a file that Cotter made is accepted";

// A database of somebody else's, in WAL mode.
void make_foreign(const fs::path& path)
{
    Raw raw{path};
    raw.text("PRAGMA journal_mode = WAL");
    raw.run("CREATE TABLE record(a); INSERT INTO record VALUES (1)");
}

} // namespace

TEST_CASE("a file that is not there is refused and not made")
{
    const Scratch scratch;
    CHECK(contains(store_error_of([&] { db::Store::open(scratch.book()); }), "no such book"));
    CHECK(scratch.files().empty());
}

TEST_CASE("a folder is refused")
{
    const Scratch scratch;
    fs::create_directory(scratch.book());
    check_refused(scratch, not_ours);
}

TEST_CASE("a file that is not SQLite's is refused, whatever is in it")
{
    for (const std::string& bytes :
         {std::string{}, std::string{"SQLite"}, std::string(4096, '\0'), std::string{"SQLite format 3\0", 16},
          std::string(100, 'x'), "SQLite format 3" + std::string(5, '\2') + std::string(4000, 'x')}) {
        const Scratch scratch;
        write_bytes(scratch.book(), bytes);
        check_refused(scratch, scratch.book().string());
    }
}

TEST_CASE("a book of a newer Cotter is refused, also with its last change still in the log")
{
    for (const bool in_log : {false, true}) {
        const Scratch scratch;
        make_small_book(scratch.book());
        {
            Raw raw{scratch.book()};
            if (in_log)
                raw.leave_the_log();
            raw.run("PRAGMA user_version = " + std::to_string(db::newest_version() + 1));
        }
        REQUIRE(scratch.files().contains("book.db-wal") == in_log);
        check_refused(scratch, "written by a newer Cotter");
    }
}

TEST_CASE("another program's database is refused, also with its last change still in the log")
{
    for (const bool in_log : {false, true}) {
        const Scratch scratch;
        make_foreign(scratch.book());
        {
            Raw raw{scratch.book()};
            if (in_log)
                raw.leave_the_log();
            raw.run("INSERT INTO record VALUES (2)");
        }
        REQUIRE(scratch.files().contains("book.db-wal") == in_log);
        check_refused(scratch, not_ours);
    }
}

TEST_CASE("a book whose application id was changed is refused")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    Raw{scratch.book()}.run("PRAGMA application_id = 1");
    check_refused(scratch, not_ours);
}

TEST_CASE("a book in rollback-journal mode is refused")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    REQUIRE(Raw{scratch.book()}.text("PRAGMA journal_mode = DELETE") == "delete");
    check_refused(scratch, not_ours);
}

TEST_CASE("a book beside which a journal stands is refused, and the journal is not rolled into it")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    write_bytes(scratch.book().string() + "-journal", "a journal of some other program");
    check_refused(scratch, "-journal stands beside the book");
}

TEST_CASE("a book that was cut short is refused or found damaged")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    const std::string whole = bytes_of(scratch.book());
    for (const std::size_t size : {std::size_t{19}, std::size_t{20}, std::size_t{100}, std::size_t{4096},
                                   whole.size() / 2, whole.size() - 4096}) {
        CAPTURE(size);
        write_bytes(scratch.book(), whole.substr(0, size));
        bool told = false;
        try {
            told = !db::Store::open(scratch.book())->verify().damaged.empty();
        } catch (const db::StoreError&) {
            told = true;
        }
        CHECK(told);
    }
}

TEST_CASE("a book that another process has open is refused there, and its owner goes on")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    {
        const Holder holder{[&] { return db::Store::open(scratch.book()); }};
        check_refused(scratch, "open in another program");
    }
    CHECK(db::Store::open(scratch.book())->verify().damaged.empty());
}

TEST_CASE("a book that any other program reads from is refused")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    const Holder holder{[&] {
        auto raw = std::make_unique<Raw>(scratch.book());
        raw->run("BEGIN; SELECT count(*) FROM record");
        return raw;
    }};
    CHECK(contains(store_error_of([&] { db::Store::open(scratch.book()); }), "open in another program"));
}

TEST_CASE("a second opening in the same program is refused as well")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    CHECK(contains(store_error_of([&] { db::Store::open(scratch.book()); }), "open in another program"));
    CHECK(store->append({pipe("sk-450", 690)}).size() == 1);
}

TEST_CASE("another program is kept out while a book is open")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    const int code = in_child([&] {
        Raw raw{scratch.book()};
        ::_exit(contains(raw.refusal("INSERT INTO private VALUES ('a', 'b', 'c', 'd')"), "locked") ? 7 : 8);
    });
    CHECK(code == 7);
}

TEST_CASE("a file that may not be read is refused")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    fs::permissions(scratch.book(), fs::perms::none);
    if (std::ifstream{scratch.book()}) // whoever runs this may read everything
        return;
    CHECK(contains(store_error_of([&] { db::Store::open(scratch.book()); }), "cannot be read"));
}

TEST_SUITE_END();
