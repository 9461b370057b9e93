// A book that was cut or written anew since somebody had a receipt of it.

#include "books.hpp"
#include "raw.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using namespace cotter::tests;

TEST_SUITE_BEGIN("receipts");

TEST_CASE("a book that only grew fits every receipt of it")
{
    const Scratch scratch;
    const auto store = make_book(scratch.book());
    const auto first = store->receipt(morning);
    store->append({pipe("sk-450", 690)});
    const auto second = store->receipt(morning);
    store->append({pipe("sk-600", 1290)});
    CHECK(store->compare(first) == "");
    CHECK(store->compare(second) == "");
    CHECK(second.head.seq == 2);
}

TEST_CASE("a tail that was cut off is found by a receipt")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    const auto receipt = db::Store::open(scratch.book())->receipt(morning);
    {
        Raw raw{scratch.book()};
        raw.drop_triggers();
        raw.run("DELETE FROM record WHERE seq = 4; DELETE FROM private");
    }
    const auto store = db::Store::open(scratch.book());
    store->rebuild();
    REQUIRE(store->verify().damaged.empty());
    CHECK(store->compare(receipt) == "the end is cut off: the book had 4 records of this device, now 3");
}

TEST_CASE("a chain that the key's owner wrote anew is found by a receipt")
{
    const Scratch scratch;
    make_small_book(scratch.book());
    const auto receipt = db::Store::open(scratch.book())->receipt(morning);
    {
        Raw raw{scratch.book()};
        raw.drop_triggers();
        raw.run("DELETE FROM record WHERE seq = 4; DELETE FROM private");
    }
    const auto store = db::Store::open(scratch.book());
    store->rebuild();
    store->append({pipe("sk-900", 2500)});
    REQUIRE(store->verify().damaged.empty());
    CHECK(contains(store->compare(receipt), "the chain was written anew"));
}

TEST_CASE("a receipt of another device, or that nobody signed, fits nothing")
{
    const Scratch scratch;
    const auto one = make_book(scratch.folder() / "one.db"), other = make_book(scratch.folder() / "other.db");
    CHECK(contains(one->compare(other->receipt(morning)), "does not know"));
    auto forged = one->receipt(morning);
    forged.head.seq = 1;
    forged.head.hash = records::sha256("x");
    CHECK(contains(one->compare(forged), "not signed"));
}

TEST_SUITE_END();
