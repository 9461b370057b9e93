// What can still be read of a damaged book is carried on, what cannot is named, and nothing that was lost lets a lift
// through.

#include "child.hpp"
#include "salvaging.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using namespace cotter::tests;

TEST_SUITE_BEGIN("salvage");

TEST_CASE("a sound book is carried whole, and nothing is stopped that was not")
{
    const Long made;
    const auto before = made.scratch.files();
    const auto old = all_of(made.book);
    const auto salvaged = made.salvage();
    CHECK(salvaged.is_whole());
    CHECK(salvaged.records == records_made);
    CHECK(salvaged.private_values == 1);
    CHECK(salvaged.stopped.empty());
    CHECK(wrong_with(made, salvaged, old) == "");
    const auto store = db::Store::open(made.again);
    CHECK(store->private_value("person hallam", "name") == "O. Hallam (invented)");
    CHECK(store->facts_about("stop", "cl-02").size() == 1);
    CHECK(store->facts_about("stop", "ex-21").empty());
    CHECK(store->state().sample);
    const auto first = store->find(store->state().head.hash);
    REQUIRE(first.has_value());
    CHECK(first->entry.kind == "device");
    CHECK(first->entry.body["replaces"] == old[0].device);
    CHECK_FALSE(first->entry.body.contains("lost"));
    store->append({pipe("sk-450", 700)});
    auto after = made.scratch.files();
    for (const auto& [name, bytes] : before)
        CHECK(after[name] == bytes);
}

TEST_CASE("what is missing is named with the times between which it lies, and what came after it is kept")
{
    const Long made;
    const auto old = all_of(made.book);
    made.damage("DELETE FROM record WHERE seq BETWEEN 24 AND 25");
    const auto salvaged = made.salvage();
    REQUIRE(salvaged.lost.size() == 1);
    CHECK(salvaged.lost[0].first == 24);
    CHECK(salvaged.lost[0].last == 25);
    CHECK(salvaged.lost[0].after == (morning + rules::Instant{120 + 60 * 17}).count());
    CHECK(salvaged.lost[0].before == (morning + rules::Instant{120 + 60 * 19}).count());
    CHECK(salvaged.records == records_made - 2);
    CHECK(salvaged.stopped == std::vector<std::string>{"cl-02", "ex-21"});
    CHECK(wrong_with(made, salvaged, old) == "");
    const auto store = db::Store::open(made.again);
    CHECK(store->facts_about("stop", "cl-02").at(0).doc["lifted"].empty());
    CHECK(store->fact("pipe", "sk-39").has_value());
    CHECK(store->newest("device", 1)[0].entry.body["lost"][0]["first"] == 24);
}

TEST_CASE("a gap that no device names, or that is wider than named, is damage in a salvaged book too")
{
    for (const char* seq : {"30", "24", "26"}) { // 25 is the one that is named
        const Long made;
        made.damage("DELETE FROM record WHERE seq = 25");
        made.salvage();
        {
            Raw raw{made.again};
            raw.drop_triggers();
            raw.run(std::string{"DELETE FROM record WHERE seq = "} + seq);
        }
        const auto store = db::Store::open(made.again);
        store->check_on_opening();
        CHECK(store->state().damaged);
        CHECK(contains(store->verify().damaged.at(0).what, "missing"));
    }
}

TEST_CASE("an end that the seal knows of is named as lost, and every unit is stopped")
{
    const Long made;
    made.damage("DELETE FROM record WHERE seq > 44");
    const auto salvaged = made.salvage();
    REQUIRE(salvaged.lost.size() == 1);
    CHECK(salvaged.lost[0].first == 45);
    CHECK(salvaged.lost[0].last == 0);
    CHECK(salvaged.stopped.size() == 2);
    CHECK(db::Store::open(made.again)->verify().damaged.empty());
}

TEST_CASE("an end that was cut off by somebody who made the tables fit is found by the seal's key")
{
    const Long made;
    const fs::path key = made.book.string() + ".key", away = made.scratch.folder() / "away";
    made.damage("DELETE FROM record WHERE seq > 44");
    fs::rename(key, away);
    db::Store::open(made.book)->rebuild();
    CHECK(db::Store::open(made.book)->verify().damaged.empty());
    fs::rename(away, key);
    const auto salvaged = made.salvage();
    REQUIRE(salvaged.lost.size() == 1);
    CHECK(salvaged.lost[0].first == 45);
    CHECK(salvaged.stopped.size() == 2);
}

TEST_CASE("without its first record a device is known by the key beside the book, and else not at all")
{
    for (const bool has_key : {true, false}) {
        const Long made;
        made.damage("DELETE FROM record WHERE seq = 1");
        if (!has_key) {
            fs::remove(made.book.string() + ".key");
            CHECK(contains(store_error_of([&] { made.salvage(); }), "no record"));
            continue;
        }
        const auto salvaged = made.salvage();
        CHECK(salvaged.records == records_made - 1);
        REQUIRE(salvaged.lost.size() == 1);
        CHECK(salvaged.lost[0].last == 1);
        fs::remove(made.book.string() + ".key");
        CHECK(db::Store::open(made.again)->verify().damaged.empty());
    }
}

TEST_CASE("a record that is not as it was signed is lost, not carried")
{
    const Long made;
    made.damage("UPDATE record SET bytes = CAST(replace(CAST(bytes AS TEXT), '695', '965') AS BLOB) WHERE seq = 11");
    const auto salvaged = made.salvage();
    REQUIRE(salvaged.lost.size() == 1);
    CHECK(salvaged.lost[0].first == 11);
    CHECK(salvaged.lost[0].last == 11);
}

TEST_CASE("a private value that is not the one recorded is left behind and counted; one that was erased is not lost")
{
    const Long made;
    made.damage("UPDATE private SET value = 'A. Nother (invented)'");
    CHECK(made.salvage().private_lost == 1);
    CHECK_FALSE(db::Store::open(made.again)->private_value("person hallam", "name").has_value());
    const Long erased;
    Raw{erased.book}.run("DELETE FROM private");
    CHECK(erased.salvage().is_whole());
}

TEST_CASE("a salvaged book that is damaged again loses only what is newly lost")
{
    const Long made;
    made.damage("DELETE FROM record WHERE seq = 25");
    made.salvage();
    {
        Raw raw{made.again};
        raw.drop_triggers();
        raw.run("DELETE FROM record WHERE seq = 30");
    }
    const auto salvaged = db::Store::salvage(made.again, made.scratch.folder() / "third.db", spare);
    REQUIRE(salvaged.lost.size() == 1);
    CHECK(salvaged.lost[0].first == 30);
    CHECK(db::Store::open(made.scratch.folder() / "third.db")->verify().damaged.empty());
}

TEST_CASE("what is no book, a newer Cotter's, in use, or would take a place is refused, and nothing changes")
{
    const Long made;
    const auto refused = [&](const std::string& part) {
        const auto before = made.scratch.files();
        const std::string said = store_error_of([&] { made.salvage(); });
        CAPTURE(said);
        CHECK(contains(said, part));
        CHECK(made.scratch.files() == before);
    };
    const std::string good = bytes_of(made.book);
    {
        const Holder holder{[&] { return db::Store::open(made.book); }};
        refused("open in another program");
    }
    write_bytes(made.again, "taken");
    refused("is there already");
    fs::remove(made.again);
    write_bytes(made.book, "a letter, and no book");
    refused("not a Cotter book");
    write_bytes(made.book, std::string(20 * page, '\0'));
    refused("book.db: ");
    write_bytes(made.book, good);
    Raw{made.book}.run("PRAGMA user_version = 9999");
    refused("newer Cotter");
}

TEST_SUITE_END();
