// A transaction is whole or not at all: a bad entry, a full disk, a program that ends in the middle.

#include "books.hpp"
#include "child.hpp"

#include <doctest/doctest.h>
#include <sqlite3.h>

using namespace cotter;
using namespace cotter::tests;

TEST_SUITE_BEGIN("writing");

namespace {

std::string form_error_of(db::Store& store, const std::vector<Entry>& entries)
try {
    store.append(entries);
    return "";
} catch (const records::EntryError& e) {
    CHECK(e.index + 1 == (entries.size() + 1) / 2);
    return e.what();
}

std::int64_t records_in(const db::Store& store) { return store.state().head.seq; }

// One pipe a time until there is no more room for it; gives how many got in.
int fill_up(db::Store& store)
{
    for (int written = 0; written < 2000; ++written) {
        const std::string id = "p" + std::to_string(written);
        if (!store_error_of([&] { store.append({pipe(id, 690)}); }).empty())
            return written;
    }
    return -1;
}

void allow_pages(db::Store& store, int more)
{
    auto& database = store.database();
    const int pages = database.execAndGet("PRAGMA page_count").getInt();
    database.exec("PRAGMA max_page_count = " + std::to_string(pages + more));
}

} // namespace

TEST_CASE("of several entries with a bad one none is written, and its place is named")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    const std::string before = store->derived_tables();
    const Entry good = pipe("sk-450", 690);
    struct Row {
        Entry bad;
        const char* says;
    };
    for (const Row& row :
         {Row{entry("pipe", "sk-600", {{"name", "DN 600"}, {"stated_kg", "heavy"}}),
              "stated_kg: \"heavy\" is not accepted"},
          Row{entry("pipe", "sk-600", Json::object()), "name is missing"},
          Row{entry("pipe", "", {{"name", "DN 600"}}), "about: the id of what the record is about is needed"},
          Row{entry("pipes", "sk-600", {{"name", "DN 600"}}), "kind: \"pipes\" is not a kind of record"}}) {
        CHECK(contains(form_error_of(*store, {good, row.bad, good}), row.says));
        CHECK(records_in(*store) == 1);
        CHECK(store->derived_tables() == before);
    }
}

TEST_CASE("the new body in a correction is checked as the old record's own was")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    const auto old = store->append({pipe("sk-450", 690)});
    for (const Json& body :
         {Json{{"name", "DN 450"}, {"stated_kg", "heavy"}}, Json{{"name", "DN 450"}, {"stated_kg", 690.5}},
          Json{{"stated_kg", 690}}, Json{{"name", "DN 450"}, {"colour", "red"}}}) {
        CAPTURE(body.dump());
        CHECK(form_error_of(*store, {entry("correction", "sk-450",
                                           {{"corrects", old[0].hash}, {"why", "typed wrong"}, {"body", body}})}) !=
              "");
        CHECK(records_in(*store) == 2);
    }
}

TEST_CASE("a private value in a correction is kept apart like any other")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    const auto old = store->append({person("hallam", "O. Halam")});
    const auto now =
        store->append({entry("correction", "hallam",
                             {{"corrects", old[0].hash}, {"why", "typed wrong"}, {"body", {{"name", "O. Hallam"}}}})});
    CHECK_FALSE(contains(now[0].bytes, "Hallam"));
    CHECK(store->private_value("person hallam", "name") == "O. Hallam");
    CHECK(store->verify().damaged.empty());
}

TEST_CASE("an entry that fails while it is written takes those before it along")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    const std::string before = store->derived_tables();
    CHECK_THROWS(store->append({person("hallam", "O. Hallam"), pipe("\xff", 690)})); // not UTF-8
    CHECK(records_in(*store) == 1);
    CHECK(store->derived_tables() == before);
    CHECK_FALSE(store->private_value("person hallam", "name").has_value());
    CHECK(store->append({pipe("sk-450", 690)})[0].seq == 2);
    CHECK(store->verify().damaged.empty());
}

TEST_CASE("nothing to write is nothing written")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    CHECK(store->append({}).empty());
    CHECK(records_in(*store) == 1);
}

TEST_CASE("a full disk loses the new record and nothing else")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    allow_pages(*store, 2);
    const int written = fill_up(*store);
    REQUIRE(written > 0);
    CHECK(store->database().execAndGet("PRAGMA integrity_check").getString() == "ok");
    CHECK(records_in(*store) == written + 1);
    CHECK(store->facts("pipe").size() == static_cast<std::size_t>(written));
    allow_pages(*store, 1000);
    CHECK(store->verify().damaged.empty());
    CHECK(store->append({pipe("once more", 690)})[0].seq == written + 2);
}

TEST_CASE("a full disk says so in one line")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    allow_pages(*store, 0);
    const std::string said = store_error_of([&] { store->append(one_of_each_kind()); });
    CHECK(contains(said, "the record is not written"));
    CHECK(contains(said, "full"));
    CHECK(records_in(*store) == 1);
}

TEST_CASE("a full disk in the middle of many entries writes none of them")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    const std::string before = store->derived_tables();
    allow_pages(*store, 6);
    CHECK(store_error_of([&] { store->append(one_of_each_kind()); }) != "");
    CHECK(records_in(*store) == 1);
    CHECK(store->derived_tables() == before);
}

TEST_CASE("a program that ends before the commit leaves the old records and nothing of the new")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    const int code = in_child([&] {
        const auto store = db::Store::open(scratch.book());
        sqlite3_commit_hook(
            store->database().getHandle(), [](void*) -> int { ::_exit(5); }, nullptr);
        store->append({person("iqbal", "S. Iqbal"), pipe("sk-900", 2900)});
    });
    REQUIRE(code == 5);
    const auto store = db::Store::open(scratch.book());
    CHECK(records_in(*store) == 4);
    CHECK_FALSE(store->private_value("person iqbal", "name").has_value());
    CHECK(store->verify().damaged.empty());
}

TEST_CASE("a program that ends anywhere while writing leaves all of it or nothing")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    for (int steps = 50; steps < 2000; steps += 100) {
        CAPTURE(steps);
        const auto before = db::Store::open(scratch.book())->state().head.seq;
        in_child([&] {
            const auto store = db::Store::open(scratch.book());
            sqlite3_progress_handler(
                store->database().getHandle(), steps, [](void*) -> int { ::_exit(5); }, nullptr);
            store->append({person("iqbal", "S. Iqbal"), pipe("sk-900", 2900)});
        });
        const auto store = db::Store::open(scratch.book());
        const auto more = records_in(*store) - before;
        CHECK((more == 0 || more == 2));
        CHECK(store->verify().damaged.empty());
    }
}

TEST_CASE("what was acknowledged is there although the program ended without closing the book")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    const int code = in_child([&] {
        const auto store = db::Store::open(scratch.book());
        store->append({pipe("sk-900", 2900)});
        ::_exit(6);
    });
    REQUIRE(code == 6);
    REQUIRE(scratch.files().contains("book.db-wal"));
    const auto store = db::Store::open(scratch.book());
    CHECK(store->fact("pipe", "sk-900")->doc.at("stated_kg") == 2900);
    CHECK(records_in(*store) == 5);
    CHECK(store->verify().damaged.empty());
}

TEST_SUITE_END();
