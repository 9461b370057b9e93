// board, plan, verify, rebuild: a book as it stands.

#include "sample_book.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace cotter::tests;

TEST_SUITE_BEGIN("books");

namespace {

using Keys = std::vector<std::string>;

std::vector<std::string> cut(const std::string& text, const std::string& at)
{
    std::vector<std::string> all;
    for (std::size_t from = 0; from < text.size();) {
        const auto to = std::min(text.find(at, from), text.size());
        all.push_back(text.substr(from, to - from));
        from = to + at.size();
    }
    return all;
}

Json unit(const std::string& tag, const std::string& owner)
{
    return {{"tag", tag}, {"owner_firm", owner}, {"serial", "1"}, {"role", "sling"}, {"class", "accessory"}};
}

Json report(const std::string& unit, const std::string& latest)
{
    return {{"units", {unit}},          {"identity", unit}, {"basis", "six_months"},
            {"examined", "2026-09-01"}, {"latest", latest}, {"safe", true}};
}

// Cells that a spreadsheet would run, and cells that must be quoted.
void add_odd_units(const SampleBook& book)
{
    REQUIRE(book.record(record_line("unit", "odd-1", unit("=1+1", "Hire, \"the\" firm")) +
                        record_line("unit", "odd-2", unit("+2", "@SUM(A1)")) +
                        record_line("unit", "odd-3", unit("-3", "two\nlines")) +
                        record_line("examination_report", "rep-9", report("odd-1", "2026-12-01")) +
                        record_line("site", "=cmd|' /C calc'!A0",
                                    {{"name", "Odd (invented)"}, {"zone", "Europe/London"}}, "05:01") +
                        record_line("received", "odd-1", {{"site", "=cmd|' /C calc'!A0"}, {"condition", "whole"}}))
                .code == 0);
}

void damage(const SampleBook& book, const std::string& from, const std::string& to)
{
    std::string bytes = bytes_of(book.path());
    int found = 0;
    for (auto at = bytes.find(from); at != std::string::npos; at = bytes.find(from, at + 1), ++found)
        bytes.replace(at, from.size(), to);
    REQUIRE(found > 0);
    write_bytes(book.path(), bytes);
}

} // namespace

TEST_CASE("the board is one object a unit, those due first first")
{
    const SampleBook book;
    const auto rows = book.run("board --on 2026-11-25").lines();
    REQUIRE(rows.size() == 2);
    for (const Json& row : rows)
        CHECK(keys(row) ==
              Keys{"cautions", "days_left", "kind", "latest", "model", "owner", "place", "setting", "stops", "unit"});
    CHECK(rows[0] == Json{{"unit", "CL-02"},
                          {"owner", "Ridgeway Drainage (invented)"},
                          {"kind", "attachment"},
                          {"model", "Clasper 90 (invented)"},
                          {"setting", "hole 1"},
                          {"place", "marsh-lane"},
                          {"latest", "2027-03-01"},
                          {"days_left", 96},
                          {"stops", Json::array()},
                          {"cautions", Json::array()}});
    CHECK(rows[1]["unit"] == "EX-21");
    CHECK(rows[1]["setting"].is_null());
}

TEST_CASE("the board counts below nothing when a unit is out of date, and stops it")
{
    const SampleBook book;
    const Json last = book.run("board --on 2027-03-01").lines()[0], late = book.run("board --on 2027-03-03").lines()[0];
    CHECK(last["days_left"] == 0);
    CHECK(last["stops"] == Json::array());
    CHECK(late["days_left"] == -2);
    CHECK(std::find(late["stops"].begin(), late["stops"].end(), "exam-out-of-date") != late["stops"].end());
}

TEST_CASE("the board keeps what falls due within the days, out of date and without a date")
{
    const SampleBook book;
    add_odd_units(book);
    const auto within = [&](const std::string& days) {
        return book.run("board --on 2026-11-25 --within " + days).lines().size();
    };
    CHECK(within("5") == 2); // two have no date
    CHECK(within("6") == 3);
    CHECK(within("96") == 4);
    CHECK(within("1000") == 5);
    for (const char* days : {"-1", "1.5", "nan", "36501", "1e2"})
        CHECK(not_refused(book.run(std::string{"board --within="} + days), {"--within", days, "is not accepted"}) ==
              "");
    CHECK(not_refused(book.run("board --on noon"), {"--on", "noon", "YYYY-MM-DD"}) == "");
}

// Source: RFC 4180, sections 2.1, 2.4, 2.5 to 2.7.
TEST_CASE("the board as CSV quotes what must be and ends each line in CR LF")
{
    const SampleBook book;
    add_odd_units(book);
    const Ran ran = book.run("board --on 2026-11-25 --csv");
    CHECK(ran.code == 0);
    CHECK(ran.out.starts_with("unit,owner,kind,model,setting,place,latest,days_left,stops,cautions\r\n"));
    CHECK(ran.out.ends_with("\r\n"));
    CHECK(contains(ran.out, ",\"Hire, \"\"the\"\" firm\","));
    CHECK(contains(ran.out, ",\"two\nlines\","));
    CHECK(contains(
        ran.out,
        "CL-02,Ridgeway Drainage (invented),attachment,Clasper 90 (invented),hole 1,marsh-lane,2027-03-01,96,,\r\n"));
}

TEST_CASE("no cell of the CSV is a formula to a spreadsheet")
{
    const SampleBook book;
    add_odd_units(book);
    const std::string csv = book.run("board --on 2026-11-25 --csv").out;
    CHECK(contains(csv, "'=1+1,"));
    CHECK(contains(csv, "'+2,'@SUM(A1),"));
    CHECK(contains(csv, "'-3,"));
    CHECK(contains(csv, "'=cmd|"));
    for (const char* formula : {"\n=", "\n+", "\n-", "\n@", ",=", ",+", ",@", "\"=", "\"@"})
        CHECK_FALSE(contains(csv, formula));
}

// Source: RFC 5545, sections 3.1, 3.3.11, 3.6.1.
TEST_CASE("the board as a calendar has an all-day event on each latest date")
{
    const SampleBook book;
    const Ran ran = book.run("board --on 2026-11-25 --ics");
    CHECK(ran.code == 0);
    const auto lines = cut(ran.out, "\r\n");
    CHECK(lines.front() == "BEGIN:VCALENDAR");
    CHECK(lines[1] == "VERSION:2.0");
    CHECK(lines.back() == "END:VCALENDAR");
    CHECK(std::count(lines.begin(), lines.end(), "BEGIN:VEVENT") == 2);
    CHECK(std::count(lines.begin(), lines.end(), "DTSTART;VALUE=DATE:20270301") == 1);
    CHECK(std::count(lines.begin(), lines.end(), "UID:cl-02@cotter") == 1);
    CHECK(std::count_if(lines.begin(), lines.end(),
                        [](const std::string& line) { return line.starts_with("DTSTAMP:20261125T"); }) == 2);
    CHECK(ran.out == book.run("board --on 2026-11-25 --ics").out);
}

TEST_CASE("a calendar's text is escaped, so that a tag cannot add lines of its own")
{
    const SampleBook book;
    REQUIRE(book.record(record_line("unit", "odd", unit("A,B;C\\D\r\nX-ADDED:1\nX-TOO:1", "F")) +
                        record_line("examination_report", "rep-9", report("odd", "2026-12-01")))
                .code == 0);
    const std::string calendar = book.run("board --on 2026-11-25 --ics").out;
    CHECK(contains(calendar, "SUMMARY:A\\,B\\;C\\\\D"));
    CHECK_FALSE(contains(calendar, "\nX-ADDED"));
    CHECK_FALSE(contains(calendar, "\nX-TOO"));
}

TEST_CASE("the board as CSV and as a calendar at once is refused")
{
    const SampleBook book;
    CHECK(not_refused(book.run("board --csv --ics"), {"--csv", "--ics"}) == "");
}

TEST_CASE("the plan in force is printed, and a book without one says so")
{
    const SampleBook book;
    const Ran ran = book.run("plan --on 2026-11-25 --json");
    CHECK(ran.code == 0);
    CHECK(ran.json()["id"] == "plan-1");
    CHECK(ran.json()["places"][0]["id"] == "B");
    const std::string said = book.run("plan --on 2026-11-25").out;
    CHECK(contains(said, ": in force\n"));
    CHECK(contains(said, "radius to the arm-nose pin"));
    CHECK(contains(said, "4000 mm"));
    CHECK(contains(said, "4200 mm"));
    CHECK(contains(book.run("plan --on 2027-11-25").out, ": NOT in force that day\n"));
    const Scratch scratch;
    REQUIRE(call({"record", "device", "--store", scratch.book().string(), "--as", "q"},
                 R"({"about": "d", "body": {"name": "d", "sample": true}})")
                .code == 0);
    CHECK(not_refused(call({"plan", "--store", scratch.book().string()}), {"no lift plan"}) == "");
}

TEST_CASE("the records of a kind are listed newest first, with the names that the book still has")
{
    const SampleBook book;
    const Ran all = book.run("list"), people = book.run("list person"), one = book.run("list person --about farrow");
    CHECK(all.code == 0);
    CHECK(all.lines().size() == book.run("verify --json").json()["records"]);
    CHECK(people.lines().size() == 5);
    REQUIRE(one.lines().size() == 1);
    CHECK(one.lines()[0]["body"]["name"] == "I. Farrow (invented)");
    CHECK(one.lines()[0]["by"] == "quill");
    CHECK(one.lines()[0]["hash"].get<std::string>().size() == 64);
    CHECK(book.run("list --newest 2").lines().size() == 2);
    CHECK(book.run("list --newest 2").lines()[0] == all.lines()[0]);
    CHECK(not_refused(book.run("list pipes"), {"pipes", "cotter help record"}) == "");
    CHECK(not_refused(book.run("list --newest 0"), {"--newest", "0"}) == "");
}

TEST_CASE("a scrapped unit stays on the board and says so")
{
    const SampleBook book;
    REQUIRE(book.record(record_line("dispatched", "cl-02", {{"purpose", "scrap"}})).code == 0);
    bool found = false;
    for (const Json& row : book.run("board --on 2026-11-25").lines())
        found = found || (row["unit"] == "CL-02" && contains(row["stops"].dump(), "unit-scrapped"));
    CHECK(found);
}

TEST_CASE("a long label is folded in the calendar, never within a character")
{
    const SampleBook book;
    std::string tag;
    for (int i = 0; i < 60; ++i)
        tag += "\u00e9";
    REQUIRE(book.record(record_line("unit", "odd-1", unit(tag, "Hire (invented)")) +
                        record_line("examination_report", "rep-9", report("odd-1", "2026-12-01")))
                .code == 0);
    const std::string ics = book.run("board --on 2026-11-25 --ics").out;
    std::istringstream lines{ics};
    for (std::string line; std::getline(lines, line);)
        CHECK(line.size() <= 76); // with its CR
    std::string unfolded = ics;
    for (auto at = unfolded.find("\r\n "); at != std::string::npos; at = unfolded.find("\r\n "))
        unfolded.erase(at, 3);
    CHECK(contains(unfolded, "SUMMARY:" + tag + " last day of use\r\n"));
}

TEST_CASE("verify prints what it counted, and exits 0 for a good book")
{
    const SampleBook book;
    const Ran ran = book.run("verify --json");
    CHECK(ran.code == 0);
    CHECK(keys(ran.json()) == Keys{"damaged", "head", "ok", "records"});
    CHECK(ran.json()["ok"] == true);
    CHECK(ran.json()["records"] == sample_lines().size() + 6);
    CHECK(ran.json()["head"].get<std::string>().size() == 64);
    CHECK(ran.json()["damaged"] == Json::array());
}

TEST_CASE("verify names the first damaged record, and exits 1")
{
    const SampleBook book;
    damage(book, "\"stated_kg\":900", "\"stated_kg\":910");
    const Ran ran = book.run("verify --json");
    CHECK(ran.code == 1);
    CHECK(ran.json()["ok"] == false);
    REQUIRE(ran.json()["damaged"].size() == 1);
    const Json damaged = ran.json()["damaged"][0];
    CHECK(keys(damaged) == Keys{"at", "device", "seq", "unit", "what"});
    CHECK(damaged["unit"] == "sk-450");
    CHECK(contains(damaged["at"], "2026-11-25T"));
    CHECK(ran.json()["records"] == damaged["seq"].get<int>() - 1);
}

TEST_CASE("a damaged book lifts nothing")
{
    const SampleBook book;
    damage(book, "\"stated_kg\":900", "\"stated_kg\":910");
    const Ran ran = book.lift();
    CHECK(ran.code == 1);
    CHECK(contains(ran.out, "book-damaged"));
}

TEST_CASE("a derived table that somebody changed does not lift what the records stop")
{
    const SampleBook book;
    REQUIRE(book.record(record_line("stop_called", "cl-02", {{"why", "Jaw looks bent"}})).code == 0);
    damage(book, "\"lifted\":[],\"unit\"", "\"lefted\":[],\"unit\"");
    const Ran ran = book.lift();
    CHECK(ran.code == 1);
    CHECK(contains(ran.out, "unit-quarantined"));
}

TEST_CASE("a book that cannot be read as one is damage, not bad input")
{
    const SampleBook book;
    write_bytes(book.path(), bytes_of(book.path()).substr(0, 40'000));
    const Ran ran = book.run("verify --json");
    CHECK(ran.code == 1);
    CHECK(ran.json()["ok"] == false);
    CHECK(contains(ran.json()["damaged"][0]["what"], "damaged"));
    CHECK(not_refused(book.lift(), {"damaged"}) == "");
}

TEST_CASE("rebuild mends derived tables and says so")
{
    const SampleBook book;
    damage(book, "\"bore_mm\":450,\"changed\"", "\"bore_mm\":460,\"changed\""); // as only a derived table has it
    CHECK(book.run("verify").code == 1);
    const Ran ran = book.run("rebuild --json");
    CHECK(ran.code == 0);
    CHECK(ran.json() == Json{{"rebuilt", true}});
    CHECK(book.run("verify").code == 0);
}

TEST_CASE("reading commands change nothing on disk")
{
    const SampleBook book;
    const auto before = book.scratch.files();
    for (const char* command : {"board", "board --csv", "board --ics", "board --text", "plan", "verify"})
        CHECK(book.run(command).code == 0);
    CHECK(book.scratch.files() == before);
}

TEST_CASE("every command that reads a book refuses what is none in one line and leaves it as it is")
{
    const Scratch scratch;
    write_bytes(scratch.folder() / "notes.txt", "not a book");
    const std::string path = (scratch.folder() / "notes.txt").string();
    for (const char* command :
         {"board", "plan", "verify", "rebuild", "lift --unit A --pipe B --machine C --operator D"}) {
        auto all = words(command);
        all.insert(all.end(), {"--store", path});
        CHECK(not_refused(call(all), {path, "not a Cotter book"}) == "");
        all.back() = "/nowhere/book.db";
        CHECK(not_refused(call(all), {"/nowhere/book.db", "no such book"}) == "");
    }
    CHECK(scratch.files() == std::map<std::string, std::string>{{"notes.txt", "not a book"}});
}

TEST_SUITE_END();
