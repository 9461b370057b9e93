// A copy made while the book is in use, and a book that carries on from it.

#include "books.hpp"
#include "raw.hpp"
#include "salvage.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace cotter;
using namespace cotter::tests;

TEST_SUITE_BEGIN("backup");

namespace {

const db::NewBook spare{"spare tablet", false, morning + rules::Instant{3600}, rules::utc_day(morning)};

Entry unit(const std::string& id)
{
    Entry entry = pipe(id, 1);
    entry.kind = "unit";
    entry.body = {{"tag", id},
                  {"owner_firm", "Oldroyd Gear (invented)"},
                  {"serial", "1"},
                  {"role", "attachment"},
                  {"class", "accessory"}};
    return entry;
}

} // namespace

TEST_CASE("a backup of a book in use holds all of it, without its key, and the book goes on")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    store->append({pipe("sk-450", 690), person("hallam", "O. Hallam (invented)")});
    const auto head = store->back_up(scratch.folder() / "copy.db");
    store->append({pipe("sk-600", 1290)});
    const auto copy = db::Store::open(scratch.folder() / "copy.db");
    CHECK(copy->verify().damaged.empty());
    CHECK(copy->verify().head.hash == head.hash);
    CHECK(copy->private_value("person hallam", "name") == "O. Hallam (invented)");
    CHECK_FALSE(copy->fact("pipe", "sk-600").has_value());
    CHECK(contains(store_error_of([&] { copy->append({pipe("x", 1)}); }), "no device key"));
    CHECK(store->verify().records == 4);
}

TEST_CASE("a backup that is stopped, while it copies, reads the copy or derives its tables, leaves nothing")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    std::vector<Entry> pipes;
    for (int i = 0; i < 6'000; ++i)
        pipes.push_back(pipe("p" + std::to_string(i), 1));
    store->append(pipes);
    const auto before = scratch.files();
    for (const std::int64_t until : {1, 600, 900}) { // in thousandths: copied, its records read, its tables derived
        std::int64_t last = 0;
        CHECK(contains(store_error_of([&] {
                           store->back_up(scratch.folder() / "copy.db", [&](std::int64_t done, std::int64_t of) {
                               CHECK(last <= done); // never back
                               CHECK(of == 1000);
                               last = done;
                               return done < until;
                           });
                       }),
                       "ended"));
        CHECK(last >= until);
        CHECK(scratch.files() == before);
    }
    CHECK(store->back_up(scratch.folder() / "copy.db", [](auto...) { return true; }).seq == 6'001);
}

TEST_CASE("a backup never takes the place of a file, and leaves nothing half made")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    store->back_up(scratch.folder() / "copy.db");
    const auto before = scratch.files();
    CHECK(contains(store_error_of([&] { store->back_up(scratch.folder() / "copy.db"); }), "is there already"));
    CHECK(contains(store_error_of([&] { store->back_up(scratch.folder() / "nowhere" / "copy.db"); }), "nowhere"));
    CHECK(scratch.files() == before);
}

TEST_CASE("a restored book holds the old records, says whom it replaces, and writes as a device of its own")
{
    const Scratch scratch;
    const auto old = make_book(scratch.book());
    old->append({pipe("sk-450", 690)});
    old->back_up(scratch.folder() / "copy.db");
    const auto again = db::Store::restore(scratch.folder() / "copy.db", scratch.folder() / "again.db", spare);
    CHECK(again->state().sample);
    CHECK(again->state().device != old->state().device);
    CHECK(again->newest("device", 1)[0].entry.body["replaces"] == old->state().device);
    again->append({pipe("sk-450", 700)});
    CHECK(again->fact("pipe", "sk-450")->doc["stated_kg"] == 700);
    CHECK_FALSE(again->fact("pipe", "sk-450")->doc.contains("disputed"));
    again->check_on_opening();
    CHECK_FALSE(again->state().damaged);
    CHECK(again->verify().damaged.empty());
    CHECK(again->verify().records == 4);
}

TEST_CASE("what was recorded after the copy may have been a stop: a restored book stops every unit")
{
    const Scratch scratch;
    const auto old = make_book(scratch.book());
    old->append({unit("cl-02")});
    old->back_up(scratch.folder() / "copy.db");
    const auto again = db::Store::restore(scratch.folder() / "copy.db", scratch.folder() / "again.db", spare);
    const auto stops = again->facts_about("stop", "cl-02");
    REQUIRE(stops.size() == 1);
    CHECK(contains(stops[0].doc["why"].get<std::string>(), "restored from a copy"));
    CHECK(again->verify().damaged.empty());
}

TEST_CASE("the end of the old device's records cannot be cut off once a book has been restored from them")
{
    const Scratch scratch;
    const auto old = make_book(scratch.book());
    old->append({pipe("sk-450", 690), pipe("sk-600", 1290)});
    old->back_up(scratch.folder() / "copy.db");
    const std::string device = old->state().device;
    db::Store::restore(scratch.folder() / "copy.db", scratch.folder() / "again.db", spare);
    {
        Raw raw{scratch.folder() / "again.db"};
        raw.drop_triggers();
        raw.run("DELETE FROM record WHERE seq = 3 AND device = '" + device + "'");
    }
    const auto cut = db::Store::open(scratch.folder() / "again.db");
    const auto damaged = cut->verify().damaged;
    REQUIRE(damaged.size() == 1);
    CHECK(damaged[0].device == device);
    CHECK(damaged[0].seq == 3);
    cut->check_on_opening();
    CHECK(cut->state().damaged);
}

TEST_CASE("a restored book whose old end is damaged is salvaged all the same, and the end named as lost")
{
    const Scratch scratch;
    const auto old = make_book(scratch.book());
    old->append({pipe("sk-450", 690), pipe("sk-600", 1290)});
    old->back_up(scratch.folder() / "copy.db");
    db::Store::restore(scratch.folder() / "copy.db", scratch.folder() / "again.db", spare);
    {
        Raw raw{scratch.folder() / "again.db"};
        raw.drop_triggers();
        raw.run("UPDATE record SET sig = '' WHERE seq = 3 AND device = '" + old->state().device + "'");
    }
    const auto salvaged = db::Store::salvage(scratch.folder() / "again.db", scratch.folder() / "saved.db", spare);
    CHECK(std::any_of(salvaged.lost.begin(), salvaged.lost.end(),
                      [&](const db::Lost& each) { return each.device == old->state().device && each.first == 3; }));
    CHECK(db::Store::open(scratch.folder() / "saved.db")->verify().damaged.empty());
}

TEST_CASE("restoring only reads the copy: nothing of it changes, and it may be write-protected")
{
    const Scratch scratch;
    make_book(scratch.book())->back_up(scratch.folder() / "copy.db");
    const auto path = scratch.folder() / "copy.db";
    fs::permissions(path, fs::perms::owner_read);
    const auto before = scratch.files();
    db::Store::restore(path, scratch.folder() / "again.db", spare);
    for (const auto& [name, bytes] : before)
        CHECK(scratch.files().at(name) == bytes);
}

TEST_CASE("a backup that is damaged is not carried on from")
{
    const Scratch scratch;
    make_book(scratch.book())->back_up(scratch.folder() / "copy.db");
    {
        Raw raw{scratch.folder() / "copy.db"};
        raw.drop_triggers();
        raw.run("UPDATE record SET sig = ''");
    }
    const auto before = scratch.files();
    CHECK(contains(
        store_error_of([&] { db::Store::restore(scratch.folder() / "copy.db", scratch.folder() / "again.db", spare); }),
        "its signature does not fit"));
    CHECK(scratch.files() == before);
}

TEST_SUITE_END();
