// bundle, verify --bundle, day, and what is printed.

#include "sample_book.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace cotter::tests;

TEST_SUITE_BEGIN("papers");

namespace {

struct Bundled {
    SampleBook book;
    fs::path folder = book.scratch.folder() / "stick" / "bundle";

    Bundled()
    {
        fs::create_directory(folder.parent_path());
        book.record(record_line("lift_asked", "lift-1",
                                {{"question", {{"id", "lift"}, {"items", {{{"tag", "CL-02"}}}}}},
                                 {"outcome", "may_lift"},
                                 {"findings", Json::array()},
                                 {"edition", 1}}),
                    "farrow");
        made = bundle();
    }
    Ran bundle(const std::string& more = "", const std::string& into = "") const
    {
        auto all = words("bundle --unit CL-02 --from 2026-11-25 --to 2026-11-25 --at 2026-11-25T08:00:00Z " + more);
        all.insert(all.end(), {"--store", book.path(), "--into", into.empty() ? folder.string() : into});
        return call(all);
    }
    Ran verify(bool with_book = true) const
    {
        std::vector<std::string> all{"verify", "--json", "--bundle", folder.string()};
        if (with_book)
            all.insert(all.end(), {"--store", book.path()});
        return call(all);
    }
    // "" if the check finds damage that names this, with the book and without.
    std::string not_found(const std::string& part) const
    {
        std::string wrong;
        for (const bool with_book : {true, false}) {
            const Ran ran = verify(with_book);
            if (ran.code != 1 || !contains(ran.out, part))
                wrong += std::to_string(ran.code) + " " + ran.out + ran.err;
        }
        return wrong;
    }
    std::vector<std::string> files() const
    {
        std::vector<std::string> all;
        for (const auto& each : fs::recursive_directory_iterator{folder})
            if (each.is_regular_file())
                all.push_back(each.path().lexically_relative(folder).string());
        std::sort(all.begin(), all.end());
        return all;
    }

    Ran made;
};

} // namespace

TEST_CASE("a bundle fits, with its book and without")
{
    const Bundled it;
    CHECK(it.made.err == "");
    REQUIRE(it.made.code == 0);
    for (const bool with_book : {true, false}) {
        const Ran ran = it.verify(with_book);
        CHECK(ran.code == 0);
        CHECK(ran.json()["ok"] == true);
        CHECK(ran.json()["damaged"].empty());
    }
    CHECK(it.verify(false).json()["files"] == it.files().size() - 1); // all but the list itself
    CHECK_FALSE(fs::exists(it.folder.string() + ".new"));
}

TEST_CASE("the same book and instant give the same bundle, byte for byte")
{
    const Bundled it;
    const std::string again = it.folder.string() + "2";
    REQUIRE(it.bundle("", again).code == 0);
    for (const std::string& each : it.files()) {
        CAPTURE(each);
        CHECK(bytes_of(it.folder / each) == bytes_of(fs::path{again} / each));
    }
}

TEST_CASE("a changed byte in any file of a bundle is found and the file named")
{
    const Bundled it;
    REQUIRE(it.files().size() > 20);
    for (const std::string& each : it.files()) {
        CAPTURE(each);
        const std::string whole = bytes_of(it.folder / each);
        for (const std::size_t at : {std::size_t{0}, whole.size() / 2, whole.size() - 1}) {
            std::string changed = whole;
            changed[at] = static_cast<char>(changed[at] ^ 1);
            write_bytes(it.folder / each, changed);
            CHECK(it.not_found(each == "hashes.txt" ? "" : each) == "");
        }
        write_bytes(it.folder / each, whole);
    }
    CHECK(it.verify().code == 0);
}

TEST_CASE("a file added to a bundle, or taken out of it, is found and named")
{
    const Bundled it;
    for (const std::string& each : it.files()) {
        CAPTURE(each);
        const std::string whole = bytes_of(it.folder / each);
        fs::remove(it.folder / each);
        CHECK(it.not_found(each + ": is missing") == "");
        write_bytes(it.folder / each, whole);
    }
    write_bytes(it.folder / "csv" / "more.csv", "x");
    CHECK(it.not_found("csv/more.csv: is not in the list") == "");
    fs::remove(it.folder / "csv" / "more.csv");
    fs::create_symlink("bundle.pdf", it.folder / "link.pdf");
    CHECK(it.not_found("link.pdf: is not in the list") == "");
}

TEST_CASE("a list that is made to fit a changed file is not signed any more")
{
    const Bundled it;
    const std::string name = "csv/lift_asked.csv", listed = bytes_of(it.folder / "hashes.txt");
    write_bytes(it.folder / name, bytes_of(it.folder / name) + " ");
    const std::string hash = run_program("/usr/bin/sha256sum", {(it.folder / name).string()}).out.substr(0, 64);
    const auto at = listed.find("  " + name);
    write_bytes(it.folder / "hashes.txt", listed.substr(0, at - 64) + hash + listed.substr(at));
    CHECK(it.not_found("hashes.txt: it is not signed by its device") == "");
}

TEST_CASE("the bundle of another book does not fit this one")
{
    const Bundled it;
    const SampleBook other;
    const Ran ran = call({"verify", "--json", "--bundle", it.folder.string(), "--store", other.path()});
    CHECK(ran.code == 1);
    CHECK(contains(ran.out, "is not in the book"));
}

TEST_CASE("with --as the book says that a receipt is out; without, nothing is written")
{
    const Bundled it;
    const auto receipts = [&] { return it.book.run("list receipt").lines().size(); };
    CHECK(receipts() == 0);
    REQUIRE(it.bundle("--as quill", it.folder.string() + "2").code == 0);
    REQUIRE(receipts() == 1);
    CHECK(contains(it.book.run("list receipt").out, "Inspector's bundle CL-02"));
    CHECK(it.verify().code == 0); // the older bundle fits the longer book
}

TEST_CASE("what a bundle is not made of is refused in one line, and nothing is there afterwards")
{
    const Bundled it;
    const std::string next = it.folder.string() + "2";
    CHECK(not_refused(it.bundle(), {"--into", "is there already"}) == "");
    CHECK(not_refused(it.bundle("", "/nowhere/at/all"), {"--into", "is not a folder"}) == "");
    CHECK(not_refused(it.bundle("--as nobody", next), {"--as", "nobody"}) == "");
    const auto bundle = [&](const std::string& asked) {
        auto all = words("bundle --at 2026-11-25T08:00:00Z " + asked);
        all.insert(all.end(), {"--store", it.book.path(), "--into", next});
        return call(all);
    };
    CHECK(not_refused(bundle("--unit XX-9 --from 2026-11-25 --to 2026-11-25"), {"XX-9"}) == "");
    CHECK(not_refused(bundle("--unit CL-02 --from 2026-11-25 --to 2026-11-24"), {"--to", "before --from"}) == "");
    CHECK(not_refused(bundle("--unit CL-02 --from soon --to 2026-11-24"), {"--from", "soon"}) == "");
    CHECK_FALSE(fs::exists(next));
    CHECK_FALSE(fs::exists(next + ".new"));
}

TEST_CASE("a folder that is no bundle is said to be none")
{
    const SampleBook book;
    CHECK(not_refused(call({"verify", "--bundle", book.path()}), {"--bundle", "not a folder"}) == "");
    const Ran empty = call({"verify", "--json", "--bundle", book.scratch.folder().string()});
    CHECK(empty.code == 1);
    CHECK(contains(empty.out, "hashes.txt: is missing"));
}

TEST_CASE("the day as JSON, in sentences and as a page")
{
    const SampleBook book;
    const Ran json = book.run("day --at 2026-11-25T08:00:00Z");
    REQUIRE(json.code == 0);
    CHECK(json.json()["plans"][0]["issue"] == 1);
    CHECK(json.json()["plans"][0]["in_force"] == true);
    REQUIRE(json.json()["units"].size() == 2);
    for (const Json& each : json.json()["units"]) {
        CHECK(each["check"] == "done");
        CHECK(each["evidence_here"] == true);
    }
    CHECK(json.json()["people"].size() == 2);
    const Ran text = book.run("day --at 2026-11-25T08:00:00Z --text");
    CHECK(contains(text.out, "CL-02  to Mon 1 Mar 2027, copy here  check done, I. Farrow (invented)"));
    const std::string page = (book.scratch.folder() / "day.pdf").string();
    CHECK(book.run("day --at 2026-11-25T08:00:00Z --pdf " + page).code == 0);
    CHECK(bytes_of(page).starts_with("%PDF-"));
    CHECK(not_refused(book.run("day --pdf " + page), {"--pdf", "is there already"}) == "");
}

TEST_CASE("an earlier instant knows nothing of what came after, and the day's end knows all of it")
{
    const SampleBook book;
    const auto check_of = [&](const std::string& when) {
        return book.run("day " + when).json()["units"][0]["check"].get<std::string>();
    };
    CHECK(check_of("--at 2026-11-25T07:07:00Z") == "not done");
    CHECK(check_of("--at 2026-11-25T07:30:00Z") == "done");
    CHECK(check_of("--on 2026-11-25") == "done");
    CHECK(book.run("day --on 2026-11-24").code == 2); // the site was not in the book yet
}

TEST_CASE("a site that is not in the book is refused by its name")
{
    const SampleBook book;
    CHECK(not_refused(book.run("day --site elsewhere"), {"--site", "elsewhere"}) == "");
}

TEST_CASE("the due board and a receipt are printed too, and the receipt on paper is the one in the terminal")
{
    const SampleBook book;
    const std::string board = (book.scratch.folder() / "board.pdf").string(),
                      receipt = (book.scratch.folder() / "receipt.pdf").string();
    CHECK(book.run("board --on 2026-11-25 --pdf " + board).code == 0);
    CHECK(bytes_of(board).starts_with("%PDF-"));
    const Ran given = book.run("receipt --as quill --to diary --at 2026-11-25T08:00:00Z --pdf " + receipt);
    CHECK(given.code == 0);
    std::string on_paper = run_program("/usr/bin/pdftotext", {receipt, "-"}).out;
    on_paper.erase(std::remove_if(on_paper.begin(), on_paper.end(), [](char c) { return c == ' ' || c == '\n'; }),
                   on_paper.end());
    std::string said = given.out;
    said.erase(std::remove_if(said.begin(), said.end(), [](char c) { return c == ' ' || c == '\n'; }), said.end());
    CHECK(contains(on_paper, said));
    const auto before = book.run("list receipt").lines().size();
    CHECK(not_refused(book.run("receipt --as quill --to diary --at 2026-11-25T08:00:00Z --pdf " + receipt),
                      {"--pdf", "is there already"}) == "");
    CHECK(book.run("list receipt").lines().size() == before);
}

TEST_SUITE_END();
