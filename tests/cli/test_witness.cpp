// witness and verify --against: what another device remembers. backup --daily: a copy each day at a second place.

#include "sample_book.hpp"

#include <doctest/doctest.h>

using namespace cotter::tests;

TEST_SUITE_BEGIN("witness");

namespace {

std::string receipt_of(const SampleBook& book)
{
    return call({"receipt", "--store", book.path(), "--as", "hallam", "--to", "the other tablet", "--at",
                 "2026-11-25T08:00:00Z"})
        .out;
}

Ran witness(const SampleBook& book, const std::string& receipt)
{
    return call({"witness", "--store", book.path(), "--as", "hallam", "--at", "2026-11-25T08:01:00Z", "--json"},
                receipt);
}

Ran against(const std::string& book, const SampleBook& other)
{
    return call({"verify", "--store", book, "--against", other.path(), "--json"});
}

// The whole book as it is now, in another folder.
std::string copy_of(const SampleBook& book, const fs::path& folder)
{
    for (const char* ending : {"", ".key"})
        fs::copy_file(book.path() + ending, folder / (std::string{"copy.db"} + ending));
    return (folder / "copy.db").string();
}

} // namespace

TEST_CASE("a book whose end was cut off is found by what another device remembers")
{
    const SampleBook tablet, other;
    const Scratch before;
    const std::string earlier = copy_of(tablet, before.folder());
    receipt_of(tablet); // a record more than the copy has
    const Ran seen = witness(other, receipt_of(tablet));
    CHECK(seen.code == 0);
    CHECK(against(tablet.path(), other).code == 0);
    CHECK(call({"verify", "--store", earlier}).code == 0); // the chain alone does not show it
    const Ran cut = against(earlier, other);
    CHECK(cut.code == 1);
    CHECK(contains(cut.out, "cut off"));
}

TEST_CASE("a book that remembers nothing of this one, and a line that is no receipt, are said in one line")
{
    const SampleBook tablet, other;
    const Ran none = against(tablet.path(), other);
    CHECK(none.code == 2);
    CHECK(contains(none.err, "remembers no receipt"));
    const Ran bad = witness(other, "COTTER-RECEIPT 1 x");
    CHECK(bad.code == 2);
    CHECK(contains(bad.err, "line 1: "));
    CHECK(witness(other, "").code == 2);
}

TEST_CASE("a copy is made each day where the book says, the oldest go, and others' files stay")
{
    const SampleBook book;
    const Scratch stick;
    const auto daily = [&](const std::string& day) {
        return call({"backup", "--store", book.path(), "--daily", "--at", day + "T16:00:00Z"});
    };
    CHECK(daily("2026-11-25").code == 2); // no place is named yet
    const std::string device = call({"list", "device", "--store", book.path(), "--json"}).lines().at(0)["device"];
    REQUIRE(
        call({"record", "backup_place", "--store", book.path(), "--as", "quill", "--at", "2026-11-25T08:00:00Z"},
             R"({"about": ")" + device + R"(", "body": {"folder": ")" + stick.folder().string() + R"(", "keep": 2}})")
            .code == 0);
    write_bytes(stick.folder() / "cotter-other.backup", "another's");
    for (const char* day : {"2026-11-25", "2026-11-26", "2026-11-26", "2026-11-27"})
        CHECK(daily(day).code == 0);
    std::vector<std::string> names;
    for (const auto& each : fs::directory_iterator{stick.folder()})
        if (each.is_regular_file())
            names.push_back(each.path().filename().string());
    std::sort(names.begin(), names.end());
    REQUIRE(names.size() == 3);
    CHECK(contains(names[0], "2026-11-26.backup"));
    CHECK(contains(names[1], "2026-11-27.backup"));
    CHECK(call({"verify", "--store", (stick.folder() / names[1]).string()}).code == 0);
    fs::remove_all(stick.folder());
    const Ran gone = daily("2026-11-28");
    CHECK(gone.code == 2);
    CHECK(contains(gone.err, "is not there"));
}

TEST_SUITE_END();
