// A store of every past version is kept in stores/: each comes to the tables of today with all that it holds.

#include "books.hpp"
#include "migrate.hpp"
#include "opening.hpp"
#include "stores/load.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using namespace cotter::tests;

TEST_SUITE_BEGIN("old stores");

namespace {

const fs::path stores = fs::path{COTTER_TESTS} / "db" / "stores";

constexpr const char* all_records = "SELECT device || seq || hash || kind || about || at || lower(hex(bytes)) || sig "
                                    "FROM record ORDER BY device, seq";

// What a book says that has only just been given the same records.
std::string tables_of_a_fresh_book(const fs::path& path, const db::Store& store)
{
    const auto database = db::make_file(path);
    db::RecordTable table{*database};
    for (const records::Record& each : store.newest("", 1000))
        table.insert(each);
    db::Projection projection{*database, table, ""};
    projection.rebuild();
    return projection.dump();
}

} // namespace

TEST_CASE("there is one of each version up to today's, of a book in which a stop is called")
{
    for (int version = 1; version <= db::newest_version(); ++version) {
        CAPTURE(version);
        const Scratch scratch;
        load_store(stores, version, scratch.book());
        Raw raw{scratch.book()};
        CHECK(raw.text("PRAGMA user_version") == std::to_string(version));
        CHECK(raw.text("SELECT count(*) FROM record WHERE kind = 'stop_called'") == "1");
        CHECK((raw.text("SELECT count(*) FROM sqlite_schema WHERE name = 'private'") == "1") == (version >= 2));
        CHECK((raw.text("SELECT count(*) FROM sqlite_schema WHERE name = 'fact'") == "1") == (version >= 3));
        CHECK((raw.text("SELECT count(*) FROM sqlite_schema WHERE name = 'seal'") == "1") == (version >= 4));
    }
}

TEST_CASE("each opens with every record, verifies, and says what a fresh book of its records says")
{
    for (int version = 1; version <= db::newest_version(); ++version) {
        CAPTURE(version);
        const Scratch scratch;
        load_store(stores, version, scratch.book());
        const std::string before = Raw{scratch.book()}.text(all_records);
        {
            const auto store = db::Store::open(scratch.book());
            CHECK(db::version_of(store->database()) == db::newest_version());
            CHECK(store->verify().damaged.empty());
            CHECK(store->verify().records == 18);
            store->check_on_opening();
            CHECK_FALSE(store->state().damaged);
            CHECK(store->derived_tables() == tables_of_a_fresh_book(scratch.folder() / "fresh.db", *store));
            CHECK(store->facts_about("stop", "cl-02").size() == 1);
            CHECK(store->private_value("person hallam", "name").value_or("removed") ==
                  (version >= 2 ? "O. Hallam (invented)" : "removed"));
            store->append({pipe("sk-600", 1290)});
        }
        CHECK(Raw{scratch.book()}.text(all_records).substr(0, before.size()) == before);
        CHECK(db::Store::open(scratch.book())->verify().records == 19);
    }
}

TEST_CASE("a store whose tables are not yet derived is derived anew only from records that are signed")
{
    for (const bool has_key : {true, false}) {
        const Scratch scratch;
        load_store(stores, 2, scratch.book());
        if (!has_key)
            fs::remove(scratch.book().string() + ".key");
        {
            Raw raw{scratch.book()};
            raw.drop_triggers();
            raw.run("UPDATE record SET sig = replace(sig, substr(sig, 1, 8), '00000000') WHERE seq = 15");
        }
        const auto store = db::Store::open(scratch.book());
        CHECK(store->state().damaged);
        store->check_on_opening();
        CHECK(store->state().damaged);
        CHECK(store->facts("pipe").empty());
        CHECK(contains(store->verify().damaged.at(0).what, "signature"));
    }
}

TEST_SUITE_END();
