// pin and --pin-file: who signs gives a PIN, in a book that is no sample.

#include "program.hpp"

#include <doctest/doctest.h>

using namespace cotter::tests;

TEST_SUITE_BEGIN("pin");

namespace {

const char* const a_stop = R"x({"about": "cl-02", "body": {"why": "bent"}})x";
const char* const a_report =
    R"x({"about": "B", "body": {"site": "s", "level": true, "ground_and_edge": true, "services": true, "zone_closed": true}})x";

// A book with a manager who is admitted and has a PIN, and an operator who is a person and no more.
class OwnBook {
public:
    OwnBook()
    {
        const std::string lines = R"x({"kind": "device", "about": "t", "body": {"name": "t", "sample": false}}
{"kind": "site", "about": "s", "body": {"name": "S (invented)", "zone": "Europe/London"}}
{"kind": "unit", "about": "cl-02", "body": {"tag": "CL-02", "owner_firm": "F (invented)", "serial": "1", "role": "attachment", "class": "accessory", "owner": "own", "between_own_sites": false}}
{"kind": "person", "about": "quill", "body": {"name": "Q (invented)"}}
{"kind": "person", "about": "farrow", "body": {"name": "F (invented)"}}
{"kind": "admission", "about": "quill", "body": {"site": "s", "card_seen": true, "roles": ["manager"]}})x";
        REQUIRE(call({"record", "any", "--store", path(), "--as", "quill"}, lines).code == 0);
        REQUIRE(call({"pin", "--store", path(), "--as", "quill", "--new-pin-file", pin("quill", "402716")}).code == 0);
    }
    std::string path() const { return (scratch.folder() / "book.db").string(); }
    std::string pin(const std::string& name, const std::string& text, fs::perms allowed = fs::perms::owner_read) const
    {
        const fs::path file = scratch.folder() / (name + ".pin");
        fs::remove(file);
        write_bytes(file, text + "\n");
        fs::permissions(file, allowed);
        return file.string();
    }
    Ran record(const std::string& kind, const std::string& who, const std::string& pin_file,
               const std::string& line) const
    {
        std::vector<std::string> words{"record", kind, "--store", path(), "--as", who};
        if (!pin_file.empty())
            words.insert(words.end(), {"--pin-file", pin_file});
        return call(words, line);
    }
    int count(const std::string& kind) const
    {
        const std::string out = call({"list", kind, "--store", path()}).out;
        return static_cast<int>(std::count(out.begin(), out.end(), '\n'));
    }
    Scratch scratch;
};

bool is_one_line(const Ran& ran, const std::string& part)
{
    return ran.code == 2 && std::count(ran.err.begin(), ran.err.end(), '\n') == 1 &&
           ran.err.find(part) != std::string::npos;
}

} // namespace

TEST_CASE("with the PIN a record is taken, without it is not, and a stop is")
{
    const OwnBook book;
    CHECK(is_one_line(book.record("place_confirmed", "quill", "", a_report), "six digits"));
    CHECK(book.record("place_confirmed", "quill", book.pin("quill", "402716"), a_report).code == 0);
    CHECK(contains(call({"list", "place_confirmed", "--store", book.path()}).out, "\"how\":\"pin\""));
    CHECK(book.record("stop_called", "farrow", "", a_stop).code == 0);
    CHECK(call({"verify", "--store", book.path()}).code == 0);
}

TEST_CASE("a wrong PIN writes the try and nothing else")
{
    const OwnBook book;
    CHECK(is_one_line(book.record("place_confirmed", "quill", book.pin("bad", "731904"), a_report), "4 tries"));
    CHECK(book.count("place_confirmed") == 0);
    CHECK(book.count("pin_tried") == 1);
    for (int i = 0; i < 4; ++i)
        book.record("place_confirmed", "quill", book.pin("bad", "731904"), a_report);
    CHECK(is_one_line(book.record("place_confirmed", "quill", book.pin("quill", "402716"), a_report), "again in"));
    CHECK(book.count("pin_tried") == 5);
}

TEST_CASE("a file of a PIN is there, holds six digits and is nobody else's to read")
{
    const OwnBook book;
    CHECK(is_one_line(book.record("place_confirmed", "quill", "/none/pin", a_report), "cannot be read"));
    const std::string open =
        book.pin("open", "402716", fs::perms::owner_read | fs::perms::group_read | fs::perms::others_read);
    CHECK(is_one_line(book.record("place_confirmed", "quill", open, a_report), "chmod 600"));
    CHECK(is_one_line(call({"pin", "--store", book.path(), "--as", "quill", "--pin-file", book.pin("quill", "402716"),
                            "--new-pin-file", book.pin("short", "12345")}),
                      "six digits"));
    CHECK(is_one_line(book.record("place_confirmed", "farrow", book.pin("f", "958130"), a_report), "has none yet"));
}

TEST_CASE("the manager sets another's PIN; a PIN is set by no other way")
{
    const OwnBook book;
    CHECK(call({"pin", "--store", book.path(), "--as", "quill", "--pin-file", book.pin("quill", "402716"), "--of",
                "farrow", "--new-pin-file", book.pin("f", "958130")})
              .code == 0);
    CHECK(book.record("place_confirmed", "farrow", book.pin("f", "958130"), a_report).code == 0);
    CHECK(is_one_line(book.record("pin_set", "quill", book.pin("quill", "402716"),
                                  R"x({"about": "quill", "body": {"pin_hash": "x"}})x"),
                      "written by"));
    CHECK(is_one_line(book.record("any", "quill", book.pin("quill", "402716"),
                                  R"x({"kind": "pin_tried", "about": "quill", "body": {"right": true}})x"),
                      "written by"));
}

TEST_CASE("a line cannot say that a PIN was given, and what a role may not write leaves its refusal")
{
    const OwnBook book;
    CHECK(is_one_line(
        book.record(
            "place_confirmed", "quill", "",
            R"x({"about": "B", "how": "pin", "body": {"site": "s", "level": true, "ground_and_edge": true, "services": true, "zone_closed": true}})x"),
        "how: "));
    call({"pin", "--store", book.path(), "--as", "quill", "--pin-file", book.pin("quill", "402716"), "--of", "farrow",
          "--new-pin-file", book.pin("f", "958130")});
    CHECK(is_one_line(book.record("person", "farrow", book.pin("f", "958130"),
                                  R"x({"about": "n", "body": {"name": "N (invented)"}})x"),
                      "may not record person"));
    CHECK(book.count("refused") == 1);
    CHECK(book.count("person") == 2);
}

TEST_CASE("a list is previewed without a PIN and imported with one")
{
    const OwnBook book;
    const fs::path list = book.scratch.folder() / "pipes.csv";
    write_bytes(list, "id,name\np-1,DN 450 (invented)\n");
    const auto import = [&](std::vector<std::string> more) {
        std::vector<std::string> words{"import", "pipes", "--store", book.path(), "--as", "quill"};
        words.insert(words.end(), more.begin(), more.end());
        words.push_back(list.string());
        return call(words);
    };
    CHECK(import({"--preview"}).code == 0);
    CHECK(book.count("pin_tried") == 0);
    CHECK(is_one_line(import({}), "--pin-file"));
    CHECK(book.count("pipe") == 0);
    CHECK(import({"--pin-file", book.pin("quill", "402716")}).code == 0);
    CHECK(book.count("pipe") == 1);
}

TEST_CASE("a sample book asks no PIN and takes none")
{
    Scratch scratch;
    const std::string path = (scratch.folder() / "s.db").string();
    REQUIRE(call({"record", "any", "--store", path, "--as", "quill", "--at", "2026-11-25T07:00:00Z"},
                 R"x({"kind": "device", "about": "t", "body": {"name": "t", "sample": true}}
{"kind": "site", "about": "s", "body": {"name": "S (invented)", "zone": "Europe/London"}})x")
                .code == 0);
    write_bytes(scratch.folder() / "pin", "402716\n");
    fs::permissions(scratch.folder() / "pin", fs::perms::owner_read);
    CHECK(is_one_line(
        call({"record", "site", "--store", path, "--as", "quill", "--pin-file", (scratch.folder() / "pin").string()},
             R"x({"about": "s", "body": {"name": "S", "zone": "Europe/London"}})x"),
        "asks no PIN"));
}

TEST_SUITE_END();
