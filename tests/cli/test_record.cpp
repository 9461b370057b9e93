// record: lines in, one transaction, and nothing changed if one of them is bad.

#include "sample_book.hpp"

#include <doctest/doctest.h>

using namespace cotter::tests;

TEST_SUITE_BEGIN("record");

namespace {

using Keys = std::vector<std::string>;

const std::string good = R"json({"kind": "pipe", "about": "sk-600", "body": {"name": "DN 600 (invented)"}})json";

// Refused in one line, and every file as it was.
void check_refused(const SampleBook& book, const Ran& ran, const Keys& parts,
                   const std::map<std::string, std::string>& before)
{
    CHECK(not_refused(ran, parts) == "");
    CHECK(book.scratch.files() == before);
}

Ran make_real_book(const fs::path& path)
{
    return call({"record", "device", "--store", path.string(), "--as", "quill"},
                R"({"about": "cab", "body": {"name": "cab tablet"}})");
}

} // namespace

TEST_CASE("record device on a file that is not there makes a book")
{
    const Scratch scratch;
    CHECK(make_real_book(scratch.book()).code == 0);
    const Ran verified = call({"verify", "--store", scratch.book().string(), "--json"});
    CHECK(verified.code == 0);
    CHECK(verified.json()["records"] == 1);
}

TEST_CASE("record on a file that is not there makes none for any other kind")
{
    const Scratch scratch;
    const Ran ran = call({"record", "pipe", "--store", scratch.book().string(), "--as", "quill"},
                         R"({"about": "a", "body": {"name": "a"}})");
    CHECK(not_refused(ran, {scratch.book().string(), "no such book"}) == "");
    CHECK(scratch.files().empty());
}

TEST_CASE("record prints an object for each record with its number, kind, about and hash")
{
    const SampleBook book;
    const Ran ran =
        call({"record", "any", "--store", book.path(), "--as", "quill", "--json"}, good + "\n" + good + "\n");
    CHECK(ran.code == 0);
    REQUIRE(ran.lines().size() == 2);
    CHECK(keys(ran.lines()[0]) == Keys{"about", "hash", "kind", "seq"});
    CHECK(ran.lines()[1]["seq"] == ran.lines()[0]["seq"].get<int>() + 1);
    CHECK(ran.lines()[1]["kind"] == "pipe");
}

TEST_CASE("many lines are one transaction: with a bad one nothing is written")
{
    const SampleBook book;
    const auto before = book.scratch.files();
    const std::string bad = R"({"kind": "pipe", "about": "sk-900", "body": {"name": "DN 900", "stated_kg": "heavy"}})";
    check_refused(book, book.record(good + "\n" + good + "\n" + bad + "\n" + good),
                  {"line 3", "stated_kg", "heavy", "whole number"}, before);
}

TEST_CASE("lines of one kind and lines from a file are written as well")
{
    const SampleBook book;
    write_bytes(book.scratch.folder() / "pipes.jsonl", R"({"about": "a", "body": {"name": "A"}})"
                                                       "\n\n"
                                                       R"({"about": "b", "body": {"name": "B"}})"
                                                       "\n");
    const Ran ran = call(
        {"record", "pipe", "--store", book.path(), "--as", "quill", (book.scratch.folder() / "pipes.jsonl").string()});
    CHECK(ran.code == 0);
    CHECK(contains(ran.out, "2 records written"));
}

TEST_CASE("a bad line is refused with its number, field, value and what is accepted, and nothing is changed")
{
    const SampleBook book;
    const auto before = book.scratch.files();
    for (const auto& row :
         {std::pair<std::string, Keys>{"", {"nothing to record"}},
          {"7", {"line 1", "an object"}},
          {"{", {"line 1", "not JSON"}},
          {R"({"kind": "pipe", "kind": "pipe"})", {"line 1", "kind", "twice"}},
          {R"({"kind": "pipe", "about": "a", "body": {"name": "A"}, "colour": 1})",
           {"line 1", "colour", "about, who, how"}},
          {R"({"kind": "pipes", "about": "a", "body": {"name": "A"}})", {"kind", "pipes"}},
          {R"({"kind": 7, "about": "a", "body": {"name": "A"}})", {"line 1", "kind", "7", "a text"}},
          {R"({"kind": "pipe", "about": 7, "body": {"name": "A"}})", {"line 1", "about", "7", "a text"}},
          {R"({"kind": "pipe", "body": {"name": "A"}})", {"about", "needed"}},
          {R"({"kind": "pipe", "about": "a", "body": 7})", {"body", "7", "an object"}},
          {R"({"kind": "pipe", "about": "a", "body": {"name": "A", "colour": 1}})", {"colour", "not a field"}},
          {R"({"kind": "pipe", "about": "a", "body": {"name": "A", "stated_kg": 690.5}})",
           {"stated_kg", "690.5", "whole number"}},
          {R"({"kind": "pipe", "about": "a", "body": {}})", {"name", "missing"}},
          {R"({"kind": "pipe", "about": "a", "body": {"name": "A"}, "at": "noon"})",
           {"line 1", "at", "noon", "YYYY-MM-DD"}},
          {R"({"kind": "pipe", "about": "a", "body": {"name": "A"}, "at": "2038-01-01T00:00:00Z"})",
           {"at", "2038-01-01", "before 2038"}},
          {R"({"kind": "site", "about": "a", "body": {"name": "A", "zone": "Mars/Lane"}})",
           {"zone", "Mars/Lane", "Europe/London"}},
          {"{\"kind\": \"pipe\", \"about\": \"\xff\", \"body\": {\"name\": \"A\"}}", {"line 1", "not JSON"}}}) {
        CAPTURE(row.first);
        check_refused(book, book.record(row.first), row.second, before);
    }
}

TEST_CASE("a kind that is none, a missing option and a file that cannot be read are refused")
{
    const SampleBook book;
    const auto before = book.scratch.files();
    check_refused(book, call({"record", "pipes", "--store", book.path(), "--as", "quill"}, good),
                  {"KIND", "pipes", "help record"}, before);
    check_refused(book, call({"record", "pipe", "--store", book.path()}, good), {"--as"}, before);
    check_refused(book, call({"record", "pipe", "--as", "quill"}, good), {"--store"}, before);
    check_refused(book, call({"record", "pipe", "--store", book.path(), "--as", "quill", "/nowhere"}),
                  {"/nowhere", "cannot be read"}, before);
    check_refused(
        book,
        call({"record", "pipe", "--store", book.path(), "--as", "\xff"}, R"({"about": "a", "body": {"name": "A"}})"),
        {}, before);
}

TEST_CASE("a new book is not made if a line after its device is bad")
{
    const Scratch scratch;
    const Ran ran = call({"record", "any", "--store", scratch.book().string(), "--as", "quill"},
                         R"({"kind": "device", "about": "d", "body": {"name": "tablet", "sample": true}})"
                         "\n"
                         R"({"kind": "pipe", "about": "a", "body": {}})");
    CHECK(not_refused(ran, {"name"}) == "");
    CHECK(scratch.files().empty());
}

TEST_CASE("a device without its needed name, or with a field that is none, makes no book")
{
    for (const char* body :
         {R"({})", R"({"name": 7})", R"({"name": "tablet", "colour": 1})", R"({"name": "tablet", "sample": "yes"})"}) {
        const Scratch scratch;
        CAPTURE(std::string{body});
        const Ran ran = call({"record", "device", "--store", scratch.book().string(), "--as", "quill"},
                             std::string{R"({"about": "d", "body": )"} + body + "}");
        CHECK(not_refused(ran, {}) == "");
        CHECK(scratch.files().empty());
    }
}

TEST_CASE("a clock set by hand is refused for writing in a book that is not a sample")
{
    const Scratch scratch;
    REQUIRE(make_real_book(scratch.book()).code == 0);
    const auto before = scratch.files();
    const std::string pipe = R"({"about": "a", "body": {"name": "A"}})";
    const Ran option = call(
        {"record", "pipe", "--store", scratch.book().string(), "--as", "quill", "--at", "2026-11-25T08:00:00Z"}, pipe);
    CHECK(not_refused(option, {"--at", "2026-11-25T08:00:00Z", "sample book"}) == "");
    const Ran line = call({"record", "pipe", "--store", scratch.book().string(), "--as", "quill"},
                          R"({"about": "a", "body": {"name": "A"}, "at": "2026-11-25T08:00:00Z"})");
    CHECK(not_refused(line, {"at", "sample book"}) == "");
    CHECK(scratch.files() == before);
}

TEST_CASE("a clock set by hand makes no book that is not a sample")
{
    const Scratch scratch;
    const Ran ran =
        call({"record", "device", "--store", scratch.book().string(), "--as", "quill", "--at", "2026-11-25T08:00:00Z"},
             R"({"about": "d", "body": {"name": "tablet"}})");
    CHECK(not_refused(ran, {"--at", "sample book"}) == "");
    CHECK(scratch.files().empty());
}

TEST_CASE("in a sample book the clock set by hand is the whole clock")
{
    const SampleBook book;
    const Ran ran =
        call({"record", "people_today", "--store", book.path(), "--as", "hallam", "--at", "2026-11-20T08:00:00Z"},
             R"({"about": "marsh-lane", "body": {"day": "2026-11-20", "roles": {"supervisor": "iqbal"}}})");
    CHECK(ran.code == 0);
    CHECK(book.lift().code == 0);
}

TEST_CASE("what is not known is left out of a list, and no number has a fraction, wherever it stands")
{
    const SampleBook book;
    for (
        const auto& [kind, about, body, says] :
        {std::tuple{"rigging", "ex-21", R"({"hangs": [null]})", "hangs[0]"},
         {"admission", "iqbal", R"({"site": "marsh-lane", "card_seen": true, "roles": [null]})", "roles[0]"},
         {"check_sheet", "attachment", R"({"name": "A", "edition": 2, "items": [null]})", "items[0]"},
         {"event", "e", R"({"kind": "knock", "units": [null]})", "units[0]"},
         {"examination_report", "r", R"({"units": ["cl-02"], "defects": [null]})", "defects[0]"},
         {"unit", "cl-02",
          R"({"tag": "A", "owner_firm": "B", "serial": "C", "role": "sling", "class": "accessory", "sling": {"spread_mm": [null]}})",
          "sling.spread_mm[0]"},
         {"lift_asked", "l",
          R"({"question": {"id": "q", "x": 1.5}, "outcome": "may_lift", "findings": [], "edition": 1})", "question.x"},
         {"lift_asked", "l",
          R"({"question": {"id": "q", "pipe": 5}, "outcome": "may_lift", "findings": [], "edition": 1})",
          "question"}}) {
        CAPTURE(std::string{body});
        const Ran ran = book.record(record_line(kind, about, Json::parse(body)));
        CHECK(not_refused(ran, {"line 1", says, "accepted"}) == "");
        CHECK(ran.err.find("json.exception") == std::string::npos);
    }
    CHECK(book.lift().code == 0);
    CHECK(book.run("board --on 2026-11-25").code == 0);
}

TEST_CASE("the example of every kind in the help is accepted in the sample site's book, one after the other")
{
    const Scratch scratch;
    const std::string book = scratch.book().string();
    REQUIRE(run_program("/bin/sh", {"-c", "COTTER=" COTTER_PROGRAM " " COTTER_SOURCE "/sample_site/make " + book +
                                              " --on 2026-11-25"})
                .code == 0);
    int kinds = 0;
    std::istringstream help{call({"help", "record"}).out};
    for (std::string line; std::getline(help, line);) {
        if (!line.starts_with("  "))
            continue;
        const std::string kind = line.substr(2, line.find(':') - 2);
        CAPTURE(kind);
        const Ran said = call({"help", "record", kind});
        CHECK(said.code == 0);
        const std::string example = said.out.substr(said.out.find("Example line:\n  ") + 16);
        CHECK(call({"help", "record", kind, "--schema"}).json()["title"] != "");
        const char* by = kind == "event_assessed" || kind == "trench_inspection" ? "varley" : "quill"; // is competent
        const Ran ran = call({"record", kind, "--store", book, "--as", by, "--at", "2026-11-25T07:00:00Z"}, example);
        const bool programs_own = call({"help", "record", kind, "--schema"}).json().contains("x-program");
        if (kind == "device" || programs_own) { // the first record of a new book
            CHECK(ran.code == 2);
            ++kinds;
            continue;
        }
        const bool names_a_record = example.find(std::string(64, '0')) != std::string::npos;
        CHECK(ran.code == (names_a_record ? 2 : 0));
        CHECK((ran.err.find("the hash of a record") != std::string::npos) == names_a_record);
        ++kinds;
    }
    CHECK(kinds > 40);
    CHECK(call({"verify", "--store", book}).code == 0);
}

TEST_SUITE_END();
