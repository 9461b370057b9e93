// What screens read is derived from the records, can be rebuilt, and is told apart from what the records say.

#include "books.hpp"
#include "raw.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <chrono>
#include <random>

using namespace cotter;
using namespace cotter::tests;

TEST_SUITE_BEGIN("derived tables");

namespace {

// Everything that is written twice, corrected and stood down is in it too.
void write_a_lot(db::Store& store)
{
    store.append(one_of_each_kind());
    const auto twice = store.append(
        {pipe("sk-450", 700, 7000), pipe("sk-600", 1290, 7060), person("hallam", "O. Hallam, once more", 7120)});
    store.append(
        {entry(
             "correction", "sk-450",
             {{"corrects", twice[0].hash}, {"why", "typed wrong"}, {"body", {{"name", "DN 450"}, {"stated_kg", 680}}}},
             7180),
         entry("correction", "sk-600", {{"corrects", twice[1].hash}, {"why", "never delivered"}, {"void", true}},
               7240)});
    const auto stop = store.append({entry("stop_called", "fenwold-og-1107", {{"why", "Jaw looks bent"}}, 7300)});
    store.append(
        {entry("stop_lifted", "fenwold-og-1107", {{"stop", stop[0].hash}, {"why", "Looked at, straight"}}, 7360)});
}

const std::vector<std::string> tamperings{"UPDATE fact SET doc = replace(doc, '1290', '1190') WHERE kind = 'pipe'",
                                          "UPDATE fact SET open = 1 - open WHERE kind = 'stop'",
                                          "UPDATE fact SET at = at + 1 WHERE kind = 'model'",
                                          "UPDATE fact SET heads = '[]' WHERE kind = 'pipe'",
                                          "DELETE FROM fact WHERE kind = 'stop'",
                                          "DELETE FROM fact_about WHERE kind = 'stop'",
                                          "DELETE FROM fact_record WHERE kind = 'stop'",
                                          "INSERT INTO fact VALUES ('pipe', 'made-up', 0, 1, '[]', '{}')",
                                          "INSERT INTO fact_about VALUES ('made-up', 'stop', 'x')",
                                          "DELETE FROM fact"};

} // namespace

TEST_CASE("the tables made as records came equal those rebuilt from all of them")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    write_a_lot(*store);
    const std::string before = store->derived_tables();
    CHECK(before.size() > 1000);
    store->rebuild();
    CHECK(store->derived_tables() == before);
}

TEST_CASE("the tables are the same however the entries are cut into transactions")
{
    const Scratch scratch;
    const auto one_by_one = make_book(scratch.folder() / "one.db"), together = make_book(scratch.folder() / "all.db");
    for (const Entry& each : one_of_each_kind())
        one_by_one->append({each});
    together->append(one_of_each_kind());
    for (const std::string kind : {"pipe", "model", "person", "report", "plan", "setting", "trench", "lift"}) {
        CAPTURE(kind);
        REQUIRE(one_by_one->facts(kind).size() == together->facts(kind).size());
        CHECK(one_by_one->facts(kind).size() > 0);
    }
    CHECK(one_by_one->fact("pipe", "sk-450")->doc == together->fact("pipe", "sk-450")->doc);
    CHECK(one_by_one->verify().damaged.empty());
    CHECK(together->verify().damaged.empty());
}

TEST_CASE("whatever is changed in a derived table, verify says so and rebuild mends it")
{
    const Scratch scratch;
    std::string good;
    {
        const auto store = make_book(scratch.book());
        write_a_lot(*store);
        store->append({pipe("sk-900", 1290)});
        good = store->derived_tables();
    }
    for (const std::string& tampering : tamperings) {
        CAPTURE(tampering);
        Raw{scratch.book()}.run(tampering);
        const auto store = db::Store::open(scratch.book());
        REQUIRE(store->derived_tables() != good);
        const auto found = store->verify();
        REQUIRE(found.damaged.size() == 1);
        CHECK(contains(found.damaged[0].what, "a derived table differs from what the records say"));
        store->rebuild();
        CHECK(store->derived_tables() == good);
        CHECK(store->verify().damaged.empty());
    }
}

TEST_CASE("whatever was changed in a derived table, the opening check derives it anew")
{
    const Scratch scratch;
    std::string good;
    {
        const auto store = make_book(scratch.book());
        write_a_lot(*store);
        store->append({pipe("sk-900", 1290)});
        good = store->derived_tables();
    }
    const std::string its_own_seal = Raw{scratch.book()}.text("SELECT sum FROM seal");
    for (const std::string& tampering : tamperings) {
        CAPTURE(tampering);
        Raw{scratch.book()}.run(tampering + "; UPDATE seal SET sum = '" + its_own_seal + "'");
        const auto store = db::Store::open(scratch.book());
        REQUIRE(store->derived_tables() != good);
        store->check_on_opening();
        CHECK(store->derived_tables() == good);
        CHECK_FALSE(store->state().damaged);
    }
}

TEST_CASE("derived tables put back from an older copy of the book, seal and all, are derived anew")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    fs::copy_file(scratch.book(), scratch.folder() / "older.db");
    db::Store::open(scratch.book())->append({entry("stop_called", "cl-02", {{"why", "bent"}}, 240)});
    {
        Raw raw{scratch.book()};
        raw.run("ATTACH '" + (scratch.folder() / "older.db").string() + "' AS older");
        for (const std::string table : {"fact", "fact_about", "fact_record", "seal"})
            raw.run("DELETE FROM " + table + "; INSERT INTO " + table + " SELECT * FROM older." + table);
    }
    const auto store = db::Store::open(scratch.book());
    REQUIRE(store->facts("stop").empty());
    store->check_on_opening();
    CHECK(store->facts("stop").size() == 1);
    CHECK_FALSE(store->state().damaged);
}

TEST_CASE("a book without its key believes no seal")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    db::Store::open(scratch.book())->append({entry("stop_called", "cl-02", {{"why", "bent"}}, 240)});
    fs::remove(scratch.book().string() + ".key");
    {
        const auto store = db::Store::open(scratch.book()); // its rows sealed with no key, as anybody could
        store->rebuild();
    }
    Raw{scratch.book()}.run("DELETE FROM fact WHERE kind = 'stop'");
    const auto store = db::Store::open(scratch.book());
    store->check_on_opening();
    CHECK(store->facts("stop").size() == 1);
}

TEST_CASE("tables are not derived anew from records that nobody signed")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    {
        Raw raw{scratch.book()};
        raw.drop_triggers();
        raw.run("UPDATE record SET sig = '' WHERE seq = 4; DELETE FROM seal");
    }
    const auto store = db::Store::open(scratch.book());
    store->check_on_opening();
    CHECK(store->state().damaged);
}

TEST_CASE("a book without a seal, as an older Cotter left it, is sealed by the opening check")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    Raw{scratch.book()}.run("DELETE FROM seal; UPDATE fact SET doc = '{}' WHERE kind = 'pipe'");
    const auto store = db::Store::open(scratch.book());
    store->check_on_opening();
    CHECK(store->fact("pipe", "sk-450")->doc["stated_kg"] == 690);
    CHECK(Raw{scratch.book()}.refusal("SELECT 1 FROM seal") != ""); // held by the store
}

TEST_CASE("a good book's opening check writes nothing")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    const std::string before = bytes_of(scratch.book());
    {
        const auto store = db::Store::open(scratch.book());
        store->check_on_opening();
    }
    CHECK(bytes_of(scratch.book()) == before);
}

TEST_CASE("verify changes nothing, not even a derived table that is wrong")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    Raw{scratch.book()}.run("DELETE FROM fact WHERE kind = 'pipe'");
    const auto store = db::Store::open(scratch.book());
    const std::string before = store->derived_tables();
    CHECK(store->verify().damaged.size() == 1);
    CHECK(store->derived_tables() == before);
}

TEST_CASE("a fact is listed by kind and by the unit that it is about")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    store->append({entry("stop_called", "u-1", {{"why", "bent"}}), entry("stop_called", "u-2", {{"why", "cracked"}})});
    CHECK(store->facts("stop").size() == 2);
    REQUIRE(store->facts_about("stop", "u-2").size() == 1);
    CHECK(store->facts_about("stop", "u-2")[0].doc.at("why") == "cracked");
    CHECK(store->facts_about("stop", "u-3").empty());
    CHECK_FALSE(store->fact("stop", "u-1").has_value());
}

TEST_CASE("the newest records come newest first, of one kind or of all")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    store->append({pipe("a", 1, 300), pipe("b", 2, 100), person("c", "C", 200)});
    const auto abouts = [&](const char* kind, std::size_t count) {
        std::string text;
        for (const auto& each : store->newest(kind, count))
            text += each.entry.about + " ";
        return text;
    };
    CHECK(abouts("pipe", 9) == "a b ");
    CHECK(abouts("", 2) == "a c ");
    CHECK(store->state().newest_record_at == morning + rules::Instant{300});
}

TEST_CASE("a fact that is written again names its old head, and has one head")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    const auto first = store->append({pipe("sk-450", 690)});
    const auto second = store->append({pipe("sk-450", 700, 120)});
    CHECK(second[0].entry.after == std::vector<std::string>{first[0].hash});
    CHECK(store->fact("pipe", "sk-450")->heads == std::vector<std::string>{second[0].hash});
    CHECK_FALSE(store->fact("pipe", "sk-450")->doc.contains("disputed"));
}

TEST_CASE("the same fact twice in one transaction is in order, not disputed")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    store->append({pipe("sk-450", 690), pipe("sk-450", 650, 60)});
    CHECK(store->fact("pipe", "sk-450")->doc.at("stated_kg") == 650);
    CHECK_FALSE(store->fact("pipe", "sk-450")->doc.contains("disputed"));
}

namespace {

template <class What> double quickest_ms(const What& what)
{
    using Clock = std::chrono::steady_clock;
    double best = 1e9;
    for (int i = 0; i < 5; ++i) {
        const auto began = Clock::now();
        what();
        best = std::min(best, std::chrono::duration<double, std::milli>(Clock::now() - began).count());
    }
    return best;
}

std::string keys_of(const std::vector<records::Fact>& facts)
{
    std::string all;
    for (const auto& each : facts)
        all += each.key.key + " ";
    return all;
}

} // namespace

TEST_CASE("facts about one thing are found without reading all of their kind")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    std::vector<Entry> stops;
    for (int i = 0; i < 1500; ++i)
        stops.push_back(entry("stop_called", "unit-" + std::to_string(i), {{"why", "Jaw looks bent"}}, 60 + i));
    store->append(std::move(stops));
    REQUIRE(store->facts_about("stop", "unit-700").size() == 1);
    const double all = quickest_ms([&] { CHECK(store->facts("stop").size() == 1500); });
    const double one = quickest_ms([&] { CHECK(store->facts_about("stop", "unit-700").size() == 1); });
    CHECK(one * 200 < all);
}

TEST_CASE("open facts, and those since an instant, are those of all that are so")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    write_a_lot(*store);
    for (const char* kind : {"stop", "call", "lift", "check", "pipe", "unit"}) {
        CAPTURE(kind);
        CHECK(keys_of(store->open_facts(kind)) == keys_of(store->Book::open_facts(kind)));
        for (const int after : {0, 1000, 2000, 7000, 7240, 7400})
            CHECK(keys_of(store->facts_since(kind, morning + rules::Instant{after})) ==
                  keys_of(store->Book::facts_since(kind, morning + rules::Instant{after})));
    }
    CHECK(keys_of(store->facts_since("pipe", morning + rules::Instant{7000})) == "sk-450 "); // the other is void
    CHECK_FALSE(store->open_facts("stop").empty());
}

TEST_SUITE_END();
