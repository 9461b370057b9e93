// page: the picture of a plate or note is kept beside the book, verified, backed up and restored.

#include "sample_book.hpp"

#include <doctest/doctest.h>

using namespace cotter::tests;

TEST_SUITE_BEGIN("page");

namespace {

// The smallest grey PNG: one pixel. Source: ISO/IEC 15948, clauses 5 and 11 (signature, IHDR, IDAT, IEND).
const std::string one_pixel{"\x89PNG\r\n\x1A\n\0\0\0\x0DIHDR\0\0\0\x01\0\0\0\x01\x08\0\0\0\0\x3A\x7E\x9B\x55\0\0\0\x0A"
                            "IDAT\x78\x9C\x63\x60\0\0\0\x02\0\x01\x48\xAF\xA4\x71\0\0\0\0IEND\xAE\x42\x60\x82",
                            67};

struct Kept {
    SampleBook book;
    fs::path picture = book.scratch.folder() / "note.png";
    std::string name;
    Kept()
    {
        write_bytes(picture, one_pixel);
        const Ran ran = keep(picture.string());
        REQUIRE(ran.code == 0);
        name = ran.json()["sha256"];
    }
    Ran keep(const std::string& file) const
    {
        return call({"page", file, "--store", book.path(), "--as", "hallam", "--what", "pipe", "--about", "sk-450",
                     "--says", "delivery note", "--at", "2026-11-25T07:40:00Z", "--json"});
    }
    fs::path kept() const { return book.path() + ".files/" + name; }
};

} // namespace

TEST_CASE("a picture is kept by its SHA-256, and verify finds another or a missing one")
{
    const Kept page;
    CHECK(bytes_of(page.kept()) == one_pixel);
    CHECK_FALSE(call({"verify", "--store", page.book.path(), "--json"}).json().contains("pages_missing"));
    write_bytes(page.kept(), one_pixel + "x");
    const Ran changed = call({"verify", "--store", page.book.path(), "--json"});
    CHECK(changed.code == 1);
    CHECK(contains(changed.out, "picture beside the book"));
    fs::remove(page.kept());
    const Ran missing = call({"verify", "--store", page.book.path(), "--json"});
    CHECK(missing.code == 0);
    CHECK(missing.json()["pages_missing"][0] == page.name);
}

TEST_CASE("a backup and what is restored from it have the pictures too")
{
    const Kept page;
    const std::string copy = (page.book.scratch.folder() / "copy.db").string(),
                      again = (page.book.scratch.folder() / "again.db").string();
    REQUIRE(call({"backup", "--store", page.book.path(), "--to", copy}).code == 0);
    REQUIRE(
        call({"restore", "--from", copy, "--store", again, "--name", "spare", "--at", "2026-11-25T08:00:00Z"}).code ==
        0);
    CHECK(bytes_of(again + ".files/" + page.name) == one_pixel);
}

TEST_CASE("what is no picture, or is about what the book does not know, is refused in one line")
{
    const Kept page;
    write_bytes(page.book.scratch.folder() / "text.png", "text");
    const Ran text = page.keep((page.book.scratch.folder() / "text.png").string());
    CHECK(text.code == 2);
    CHECK(contains(text.err, "JPEG or PNG"));
    const Ran nobody = call({"page", page.picture.string(), "--store", page.book.path(), "--as", "hallam", "--what",
                             "pipe", "--about", "none", "--at", "2026-11-25T07:40:00Z"});
    CHECK(nobody.code == 2);
    CHECK(contains(nobody.err, "about: "));
}

TEST_SUITE_END();
