// import and export: lists as CSV into the book and out of it, all or nothing.

#include "sample_book.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace cotter::tests;

TEST_SUITE_BEGIN("import");

namespace {

const std::vector<std::string> lists{"units", "people", "pipes", "charts", "plans"};

Ran import_into(const std::string& book, const std::string& what, const std::string& table,
                const std::string& more = "", const std::string& as = "quill")
{
    auto all = words("import " + what + " --at 2026-11-25T12:00:00Z " + more);
    all.insert(all.end(), {"--store", book, "--as", as, "-"});
    return call(all, table);
}

std::string exported(const std::string& book, const std::string& what)
{
    const Ran ran = call({"export", what, "--store", book});
    CHECK(ran.code == 0);
    CHECK(ran.err == "");
    return ran.out;
}

int records_in(const std::string& book)
{
    const Ran ran = call({"verify", "--store", book, "--json"});
    CHECK(ran.code == 0);
    return ran.json()["records"];
}

std::size_t lines_in(const std::string& text)
{
    return static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
}

// Things whose cells are hard to write.
const char* const odd_things = R"json(
{"kind": "unit", "about": "=1+1", "body": {"tag": "=SUM(A1)", "owner_firm": "A, B & \"C\" (invented)", "serial": "-7",
 "role": "sling", "class": "accessory", "sling": {"kind": "chain", "grade": 8, "chain_mm": 10, "legs": 4,
 "angle_mdeg": 37125, "spread_mm": [900, 600], "leg_length_mm": 2500, "tag_0_45_kg": 4250, "symmetric": true}}}
{"kind": "unit", "about": "odd-2", "body": {"tag": "'=x", "owner_firm": "Ålgård; Müller (invented)", "serial": "+44",
 "role": "hitch", "class": "machine", "mass_kg": 0, "plate_kg": 9000000, "configuration": "@home",
 "loose_parts": {"pin": "listed"}, "first_service": "2024-02-29", "scheme_months": 6, "tail_swing_mm": 1}}
{"kind": "pipe", "about": "odd-pipe", "body": {"name": "a\nb", "bore_mm": 1, "overall_mm": 1000000}}
{"kind": "person", "about": "odd", "body": {"name": "=Bobby (invented)", "card": " blank "}}
{"kind": "admission", "about": "odd", "body": {"site": "marsh-lane", "card_seen": false, "models": ["none"],
 "roles": ["no such role"], "setting_models": ["a;b", "c,d"]}}
{"kind": "lift_plan", "about": "odd-plan", "body": {"issue": 3, "site": "marsh-lane", "sequence": [],
 "roles": {"operator": false}}}
)json";

std::string one_a_line(std::string text)
{
    std::string lines;
    for (const char c : text)
        lines += c == '\n' ? "" : std::string{c};
    for (auto at = lines.find("}{\"kind\""); at != std::string::npos; at = lines.find("}{\"kind\""))
        lines.insert(at + 1, "\n");
    return lines;
}

std::size_t refusals(const std::string& path)
{
    const std::string out = call({"list", "refused", "--store", path}).out;
    return static_cast<std::size_t>(std::count(out.begin(), out.end(), '\n'));
}

} // namespace

TEST_CASE("an export imported again changes nothing, whatever stands in the book")
{
    const SampleBook book;
    const Ran odd = book.record(one_a_line(odd_things));
    CHECK(odd.err == "");
    REQUIRE(odd.code == 0);
    const int records = records_in(book.path());
    for (const std::string& what : lists) {
        CAPTURE(what);
        const std::string table = exported(book.path(), what);
        CHECK(lines_in(table) > 2);
        const Ran ran = import_into(book.path(), what, table);
        CHECK(ran.err == "");
        CHECK(ran.code == 0);
        CHECK(contains(ran.out, "0 new, 0 changed"));
        CHECK(contains(ran.out, "nothing to write"));
        CHECK(exported(book.path(), what) == table);
    }
    CHECK(records_in(book.path()) == records);
}

TEST_CASE("what is exported from one book and imported into another is the same there")
{
    const SampleBook book;
    CHECK(book.record(record_line("unit", "hk-1",
                                  {{"tag", "=HK\"1\""},
                                   {"owner_firm", "A; B, C (invented)"},
                                   {"serial", "-1"},
                                   {"role", "hook"},
                                   {"class", "accessory"},
                                   {"mass_kg", 12}}))
              .code == 0);
    const Scratch scratch;
    const std::string other = scratch.book().string();
    std::string begin;
    for (const SampleLine& line : sample_lines())
        if (const std::string kind = line.kind;
            kind == "device" || kind == "site" || (line.about == std::string{"quill"} && kind != "shift"))
            begin += text_of(line);
    const Ran made = call({"record", "any", "--store", other, "--as", "quill"}, begin);
    CHECK(made.err == "");
    REQUIRE(made.code == 0);
    for (const std::string what : {"people", "units", "pipes", "charts", "plans"}) {
        CAPTURE(what);
        const std::string table = exported(book.path(), what);
        const Ran ran = import_into(other, what, table);
        CHECK(ran.err == "");
        CHECK(ran.code == 0);
        CHECK(exported(other, what) == table);
    }
}

TEST_CASE("no cell of an export begins as a formula does, but a number below zero")
{
    const SampleBook book;
    REQUIRE(book.record(one_a_line(odd_things)).code == 0);
    CHECK(contains(exported(book.path(), "units"), "\r\n'=1+1,'=SUM(A1),\"A, B & \"\"C\"\" (invented)\",'-7,"));
    CHECK(contains(exported(book.path(), "units"), "\r\nodd-2,''=x,"));
    CHECK(contains(exported(book.path(), "people"), "\r\nodd,'=Bobby (invented),"));
    CHECK(contains(exported(book.path(), "charts"), ",front,-3,4.5,4000\r\n"));
}

TEST_CASE("a preview says what each row would do, and writes nothing")
{
    const SampleBook book;
    const auto before = book.scratch.files();
    const std::string table =
        "id,name,mass t,OD mm\nsk-450,DN 450 (invented),0.9,584\nsk-600,DN 600 (invented),1.16,760\n"
        "sk-450b,B,,\n";
    Ran ran = import_into(book.path(), "pipes", table, "--preview");
    CHECK(ran.code == 0);
    CHECK(ran.out == "line 2  sk-450: same\nline 3  sk-600: new\nline 4  sk-450b: new\n"
                     "2 new, 0 changed, 1 the same; a preview, nothing is written\n");
    ran = import_into(book.path(), "pipes", "id,mass t,OD mm\nsk-450,0.91,\n", "--preview");
    CHECK(ran.out == "line 2  sk-450: changed\n    barrel_mm: 584 -> (empty)\n    stated_kg: 900 -> 910\n"
                     "0 new, 1 changed, 0 the same; a preview, nothing is written\n");
    CHECK(book.scratch.files() == before);
}

TEST_CASE("an import writes what is new or changed in one go, and prints an object a row if asked")
{
    const SampleBook book;
    const int records = records_in(book.path());
    const std::string table =
        "id,name,site,card_seen,roles\nfarrow,I. Farrow (invented),marsh-lane,yes,operator; signaller\n"
        "iqbal,S. Iqbal (invented),marsh-lane,yes,signaller\nnew,N. Ew (invented),,,\n";
    const Ran ran = import_into(book.path(), "people", table, "--json");
    CHECK(ran.err == "");
    REQUIRE(ran.lines().size() == 3);
    CHECK(ran.lines()[0] ==
          Json{{"line", 2},
               {"id", "farrow"},
               {"outcome", "changed"},
               {"changes", {{{"field", "roles"}, {"was", "operator"}, {"is", "operator; signaller"}}}}});
    CHECK(ran.lines()[1]["outcome"] == "same");
    CHECK(ran.lines()[2]["outcome"] == "new");
    CHECK(records_in(book.path()) == records + 2); // an admission, a person
    const Json admission = call({"list", "admission", "--store", book.path(), "--newest", "1"}).json();
    CHECK(admission["body"]["models"] == Json{"digger-21", "clasper-90"}); // the table has no such column
    CHECK(admission["who"] == "quill");
    CHECK(contains(call({"list", "person", "--store", book.path(), "--newest", "1"}).out, "N. Ew (invented)"));
}

TEST_CASE("one bad cell of many and nothing is written, each named on a line of its own")
{
    const SampleBook book;
    const auto before = book.scratch.files();
    const std::vector<std::pair<std::string, std::string>> tables{
        {"units",
         "tag,owner,serial,role,class,mass kg\nA,F,1,hook,accessory,12\nB,F,2,crane,accessory,0.5\n,F,3,hook,,12\n"},
        {"people",
         "id,name,site,card seen,card expires\na,A,marsh-lane,yes,2027-01-01\nb,,marsh-lane,perhaps,01/02/2027\n"},
        {"pipes", "id,name,length m,shape\na,A,2.6,bend\nb,B,2600,round\n"},
        {"charts", "id,name,over,height m,radius m\na,A,front,0,4\na,A,front,0,4\na,A,up,400,x\n"},
        {"plans", "id,issue,site,pipes,place,nose radius mm\np,1,marsh-lane,sk-450,A,5000\nq,x,nowhere,sk-1,A,5\n"}};
    for (const auto& each : tables) {
        CAPTURE(each.first);
        const Ran ran = import_into(book.path(), each.first, each.second);
        CHECK(ran.code == 2);
        CHECK(ran.out == "");
        CHECK(lines_in(ran.err) >= 2);
        std::istringstream lines{ran.err};
        for (std::string line; std::getline(lines, line);) {
            CHECK(line.starts_with("cotter: line "));
            CHECK(contains(line, ", column "));
        }
        CHECK(book.scratch.files() == before);
    }
}

TEST_CASE("a NUL, text that is not UTF-8 and a quotation mark left open are refused in one line with its number")
{
    const SampleBook book;
    const auto before = book.scratch.files();
    const std::string heading = "id,name\na,A\n";
    for (const std::string& row : {std::string{"b,x\0y\n", 6}, std::string{"b,\xE9\n"}, std::string{"b,\"x\n"}}) {
        CHECK(not_refused(import_into(book.path(), "pipes", heading + row), {"line 3, column 2"}) == "");
        CHECK(book.scratch.files() == before);
    }
}

TEST_CASE("whoever may not record a kind may not import it, and nobody who is not in the book may")
{
    const SampleBook book;
    const std::size_t before = refusals(book.path());
    for (const std::string& what : lists) {
        CAPTURE(what);
        const std::string table = exported(book.path(), what);
        CHECK(not_refused(import_into(book.path(), what, table, "", "farrow"), {"\"farrow\" may not record"}) == "");
        CHECK(not_refused(import_into(book.path(), what, table, "", "stranger"), {"\"stranger\""}) == "");
    }
    CHECK(not_refused(import_into(book.path(), "plans", exported(book.path(), "plans"), "", "hallam"), {"appointed"}) ==
          "");
    CHECK(refusals(book.path()) == before + lists.size() + 1); // each of somebody of the book is a record
    CHECK(import_into(book.path(), "pipes", exported(book.path(), "pipes"), "", "hallam").code == 0);
}

TEST_CASE("a pipe that is imported is not proved until somebody else has compared it")
{
    const SampleBook book;
    CHECK(book.lift("--json").json()["outcome"] == "may_lift");
    auto all = words("import pipes --as quill --at 2026-11-25T07:30:00Z - --store");
    all.push_back(book.path());
    const Ran imported = call(all, "id,mass kg\nsk-450,910\n");
    CHECK(contains(imported.out, "not proved until a second person has compared it"));
    const Ran lift = book.lift("--json");
    CHECK(lift.json()["outcome"] == "do_not_lift");
    CHECK(contains(lift.out, "data-unproved"));
    CHECK(book.record(record_line("compared", "sk-450", {{"what", "pipe"}}, "07:40"), "hallam").code == 0);
    CHECK(book.lift("--json").json()["outcome"] == "may_lift");
}

TEST_CASE("a list that is none, a file that is not there, a folder and an export onto a file are refused")
{
    const SampleBook book;
    const auto before = book.scratch.files();
    CHECK(not_refused(import_into(book.path(), "models", "id\n"), {"WHAT", "models", "units, people, pipes"}) == "");
    CHECK(not_refused(book.run("export reports"), {"WHAT", "reports", "units, people, pipes"}) == "");
    CHECK(not_refused(book.run("import units --as quill /no/such/file.csv"), {"/no/such/file.csv", "CSV"}) == "");
    CHECK(not_refused(book.run("import units --as quill /tmp"), {"/tmp", "CSV"}) == "");
    CHECK(not_refused(book.run("export units --to " + book.path()), {book.path(), "is there already"}) == "");
    CHECK(not_refused(book.run("export units --to /no/such/folder/u.csv"),
                      {"/no/such/folder/u.csv", "cannot be written"}) == "");
    CHECK(book.scratch.files() == before);
}

TEST_CASE("an export goes into a new file, and the file comes back")
{
    const SampleBook book;
    const std::string file = (book.scratch.folder() / "units.csv").string();
    CHECK(book.run("export units --to " + file).out == "");
    CHECK(bytes_of(file) == exported(book.path(), "units"));
    CHECK(contains(book.run("import units --as quill --at 2026-11-25T12:00:00Z " + file).out, "nothing to write"));
    write_bytes(file, "tag,owner\n1,2,3\n");
    CHECK(not_refused(book.run("import units --as quill --at 2026-11-25T12:00:00Z " + file),
                      {file + " line 2: 3 cells"}) == "");
}

TEST_CASE("the help explains each list, column by column")
{
    const Ran all = call({"help", "import"});
    CHECK(all.code == 0);
    for (const std::string& what : lists) {
        CAPTURE(what);
        CHECK(contains(all.out, "\n  " + what + ": id, "));
        CHECK(call({"help", "import", what}).code == 0);
    }
    CHECK(contains(
        call({"help", "import", "pipes"}).out,
        "  overall_mm: 300 to 12000 mm, in whole mm [length, overall length, total length, in mm, cm or m]\n"));
    CHECK(not_refused(call({"help", "import", "models"}), {"models", "units, people, pipes"}) == "");
}

TEST_SUITE_END();
