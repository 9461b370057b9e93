// A book is made, opened, written and opened again.

#include "books.hpp"
#include "key_file.hpp"

#include <doctest/doctest.h>

#include <sys/stat.h>

using namespace cotter;
using namespace cotter::tests;

TEST_SUITE_BEGIN("making a book");

TEST_CASE("a new book holds its device as first record and is good")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    const auto newest = store->newest("", 10);
    REQUIRE(newest.size() == 1);
    CHECK(newest[0].seq == 1);
    CHECK(newest[0].prev == "");
    CHECK(newest[0].entry.kind == "device");
    CHECK(newest[0].device ==
          records::sha256(records::from_hex(newest[0].entry.body.at("public_key").get<std::string>())));
    CHECK(store->verify().damaged.empty());
}

TEST_CASE("only its owner may read the key, which stands beside the book")
{
    const Scratch scratch;
    make_book(scratch.book());
    struct stat facts {};
    REQUIRE(::stat((scratch.folder() / "book.db.key").c_str(), &facts) == 0);
    CHECK((facts.st_mode & 07777) == 0600);
}

TEST_CASE("a closed book is one file and its key")
{
    const Scratch scratch;
    make_book(scratch.book());
    std::vector<std::string> names;
    for (const auto& [name, unused] : scratch.files())
        names.push_back(name);
    CHECK(names == std::vector<std::string>{"book.db", "book.db.key"});
}

TEST_CASE("what was written is there after opening again")
{
    const Scratch scratch;
    const auto written = make_book(scratch.book())->append({pipe("sk-450", 690), pipe("sk-600", 1290)});
    const auto store = db::Store::open(scratch.book());
    CHECK(store->fact("pipe", "sk-450")->doc.at("stated_kg") == 690);
    CHECK(store->state().head.seq == 3);
    CHECK(store->state().head.hash == written.back().hash);
    CHECK(store->newest("pipe", 1)[0].bytes == written.back().bytes);
}

TEST_CASE("a book that was opened again goes on where it stopped")
{
    const Scratch scratch;
    const auto first = make_book(scratch.book())->append({pipe("sk-450", 690)});
    const auto store = db::Store::open(scratch.book());
    const auto second = store->append({pipe("sk-600", 1290)});
    CHECK(second[0].seq == 3);
    CHECK(second[0].prev == first[0].hash);
    CHECK(store->verify().records == 3);
    CHECK(store->verify().damaged.empty());
}

TEST_CASE("the example of every kind can be written, and the book is good with all of them")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    CHECK(store->append(one_of_each_kind()).size() == records::kinds().size() - 1);
    CHECK(store->verify().damaged.empty());
}

TEST_CASE("a sample book says so, any other does not")
{
    const Scratch scratch;
    CHECK(make_book(scratch.folder() / "sample.db", true)->state().sample);
    CHECK_FALSE(make_book(scratch.folder() / "real.db", false)->state().sample);
    CHECK(db::Store::open(scratch.folder() / "sample.db")->state().sample);
}

TEST_CASE("a book is not made over a file that is there")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    const auto before = scratch.files();
    CHECK(contains(store_error_of([&] { make_book(scratch.book()); }), "is there already"));
    CHECK(scratch.files() == before);
}

TEST_CASE("a key without its book is not written over")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    fs::remove(scratch.book());
    const auto before = scratch.files();
    CHECK(contains(store_error_of([&] { make_book(scratch.book()); }), "stands without its book"));
    CHECK(scratch.files() == before);
}

TEST_CASE("a making that was cut off does not stand in the way")
{
    const Scratch scratch;
    write_bytes(scratch.book().string() + ".new", "half a file");
    write_bytes(scratch.book().string() + ".key", "half a key");
    CHECK(make_book(scratch.book())->verify().damaged.empty());
}

TEST_CASE("a book without its key can be read and not written")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    fs::remove(db::key_path(scratch.book()));
    const auto store = db::Store::open(scratch.book());
    CHECK(store->verify().damaged.empty());
    CHECK(store->verify().records == 4);
    CHECK(contains(store_error_of([&] { store->append({pipe("sk-900", 2900)}); }), "no device key"));
}

TEST_CASE("a key that others may read is refused")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    fs::permissions(db::key_path(scratch.book()), fs::perms::group_read, fs::perm_options::add);
    CHECK(contains(store_error_of([&] { db::Store::open(scratch.book()); }), "others may read it"));
}

TEST_CASE("a key file with anything else in it is refused")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    write_bytes(db::key_path(scratch.book()), "not a key\n");
    CHECK(contains(store_error_of([&] { db::Store::open(scratch.book()); }), "not a device key"));
}

TEST_CASE("another device's key does not make a book that cannot be written on look good")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    make_book(scratch.folder() / "other.db");
    fs::rename(scratch.folder() / "other.db.key", db::key_path(scratch.book()));
    std::string said;
    try {
        const auto store = db::Store::open(scratch.book());
        store->append({pipe("sk-900", 2900)});
        for (const auto& damage : store->verify().damaged)
            said += damage.what;
    } catch (const db::StoreError& e) {
        said = e.what();
    }
    CHECK(said != "");
}

TEST_CASE("a link to the book opens the book itself")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    fs::create_symlink(scratch.book(), scratch.folder() / "link.db");
    CHECK(db::Store::open(scratch.folder() / "link.db")->append({pipe("sk-900", 2900)})[0].seq == 5);
}

TEST_SUITE_END();
