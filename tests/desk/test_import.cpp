// Lists as records: what is new, changed and the same, and which rows are not accepted.

#include "importing.hpp"

using namespace cotter;
using namespace cotter::tests;

TEST_SUITE_BEGIN("import");

TEST_CASE("a row is new, changed or the same, and only what is not the same is written")
{
    const Import read = pipes("id,name,stated_kg\nsk-450,DN 450 (invented),690\nsk-600,DN 600 (invented),1160\n");
    REQUIRE(read.things.size() == 2);
    CHECK(read.things[0].outcome == Outcome::same);
    CHECK(read.things[1].outcome == Outcome::added);
    CHECK(read.things[1].line == 3);
    CHECK(only_body(read) == Json{{"name", "DN 600 (invented)"}, {"stated_kg", 1160}});
    CHECK(read.entries[0].kind == "pipe");
    CHECK(read.entries[0].about == "sk-600");
    CHECK(read.entry_lines == std::vector<std::size_t>{3});
}

TEST_CASE("a changed row says which fields, keeps what the table has no column for, and an empty cell takes away")
{
    const Import read = pipes("id,stated_kg,socket_mm\nsk-450,700,\n");
    REQUIRE(read.things.size() == 1);
    CHECK(read.things[0].outcome == Outcome::changed);
    REQUIRE(read.things[0].changes.size() == 2);
    CHECK(read.things[0].changes[0].field == "socket_mm");
    CHECK(read.things[0].changes[0].was == "720");
    CHECK(read.things[0].changes[0].is == "");
    CHECK(read.things[0].changes[1].is == "700");
    const Json body = only_body(read);
    CHECK(body["bore_mm"] == 450);
    CHECK(body["stated_kg"] == 700);
    CHECK_FALSE(body.contains("socket_mm"));
    CHECK_FALSE(body.contains("compared"));
    CHECK_FALSE(body.contains("id"));
}

TEST_CASE("a wall with a bore is the barrel, and one that does not fit is refused")
{
    CHECK(only_body(pipes("id,name,bore mm,Wall (mm)\nnew,N,450,67\n")) ==
          Json{{"name", "N"}, {"bore_mm", 450}, {"barrel_mm", 584}});
    CHECK(only_body(pipes("id,wall_mm\nsk-450,70\n"))["barrel_mm"] == 590);
    CHECK(problems_of(pipes("id,name,bore mm,wall mm,OD mm\nnew,N,450,67,584\n")) == "");
    CHECK(has(problems_of(pipes("id,name,bore mm,wall mm,OD mm\nnew,N,450,67,590\n")),
              "line 2, column 4 (wall mm): 67 mm is not accepted; bore and wall make a barrel of 584 mm outside"));
    CHECK(not_refused("wall mm", "67", {"a wall is accepted with a bore"}) == "");
}

TEST_CASE("sizes in each other's columns are refused")
{
    CHECK(has(problems_of(pipes("id,name,bore mm,barrel mm\nnew,N,584,450\n")),
              "line 2, column 4 (barrel mm): 450 mm is not accepted; at least the bore, 584 mm, is"));
    CHECK(has(problems_of(pipes("id,name,barrel mm,socket mm\nnew,N,720,584\n")), "column 4"));
    CHECK(has(problems_of(pipes("id,name,overall mm,effective mm\nnew,N,2500,2600\n")), "column 3"));
}

TEST_CASE("every bad cell is named, by line and column, and nothing is to be written")
{
    const Import read =
        pipes("id,name,bore mm,length m\nok,N,450,2.6\na,N,x,2600\n,N,450,2.6\nb,,450,2.6\nok,N,450,2.6\n");
    CHECK(read.entries.empty());
    REQUIRE(read.problems.size() == 5);
    const std::vector<std::pair<std::size_t, std::size_t>> places{{3, 3}, {3, 4}, {4, 1}, {5, 2}, {6, 1}};
    for (std::size_t i = 0; i < places.size(); ++i) {
        CHECK(read.problems[i].line == places[i].first);
        CHECK(read.problems[i].column == places[i].second);
    }
    CHECK(has(problems_of(read), "line 5, column 2 (name): is missing; name is needed"));
    CHECK(has(problems_of(read), "\"ok\" stands on line 2 already; once is accepted"));
}

TEST_CASE("a bad line of the table itself is named with those of the cells")
{
    const Import read = pipes("id,name,bore mm\na,N\nb,N,x\nc,\xFF,450\nd,N,450\n");
    REQUIRE(read.problems.size() == 3);
    CHECK(read.problems[0].line == 2);
    CHECK(read.problems[1].line == 3);
    CHECK(read.problems[2].line == 4);
    CHECK(read.entries.empty());
}

TEST_CASE("a unit is known by owner and serial in whatever case, and a new one gets an id from its tag")
{
    FakeBook book;
    begin(book).with("unit", "cl-02",
                     {{"tag", "CL-02"},
                      {"owner_firm", "F (invented)"},
                      {"serial", "C-2"},
                      {"role", "attachment"},
                      {"class", "accessory"}});
    const std::string heading = "Plant No.;Owner;Maker's serial;role;class\n";
    CHECK(import(book, What::units, heading + "CL-02;F (invented);C-2;attachment;accessory\n").things.at(0).outcome ==
          Outcome::same);
    const Import other = import(book, What::units,
                                heading + "CL-02;F (INVENTED);c 2;attachment;accessory\n"
                                          "CL-02;G (invented);C-2;attachment;accessory\n"
                                          "PC 07/a;G (invented);C-3;excavator;machine\n");
    CHECK(problems_of(other) == "");
    REQUIRE(other.things.size() == 3);
    CHECK(other.things[0].id == "cl-02");
    CHECK(other.things[0].outcome == Outcome::changed);
    CHECK(other.things[1].id == "cl-02-c-2");
    CHECK(other.things[1].outcome == Outcome::added);
    CHECK(other.things[2].id == "pc-07-a");
    CHECK(other.entries[2].body["role"] == "machine");
    CHECK(has(
        problems_of(import(book, What::units, "id;" + heading + "x-1;CL-02;F (invented);C-2;attachment;accessory\n")),
        "line 2, column 1 (id): the unit \"cl-02\" has this owner and serial; its id is accepted"));
    CHECK(has(problems_of(import(book, What::units, "tag;role;class\nX;hitch;machine\n")), "owner and serial; both"));
}

TEST_CASE("a column of examinations says where they are entered")
{
    FakeBook book;
    begin(book);
    CHECK(has(problems_of(import(book, What::units, "tag,owner,serial,date of examination\n1,2,3,2026-01-01\n")),
              "cotter help record examination_report"));
}

TEST_CASE("a person and the admission stand on one row, and each is written only where it changes")
{
    FakeBook book;
    begin(book);
    const std::string heading = "id,name,site,card_seen,roles\n";
    const Import read = import(book, What::people,
                               heading + "dunmore,T. Dunmore (invented),carr,yes,\"Plant operator; slinger\"\n"
                                         "visitor,V (invented),,,\n");
    CHECK(problems_of(read) == "");
    REQUIRE(read.entries.size() == 3);
    CHECK(read.entries[0].kind == "person");
    CHECK(read.entries[1].kind == "admission");
    CHECK(read.entries[1].body["roles"] == Json{"operator", "signaller"});
    CHECK(read.entries[2].about == "visitor");
    CHECK(has(problems_of(import(book, What::people, heading + "a,A,,,operator\n")),
              "line 2, column 3 (site): is missing; site is needed"));
    CHECK(has(problems_of(import(book, What::people, heading + "a,A,nowhere,yes,operator\n")),
              "line 2, column 3 (site): \"nowhere\" is not in this book"));
    CHECK(
        has(problems_of(import(book, What::people, heading + "quill,Q,carr,yes,operator\n")), "nobody admits himself"));
}

TEST_CASE("an operator may not import, and is told so once")
{
    FakeBook book;
    begin(book);
    for (const What what : {What::units, What::people, What::pipes, What::charts, What::plans})
        CHECK_THROWS_AS(
            prepare_import(book, hand_of("farrow"), what, "id\na\nb\n", [](std::size_t, std::size_t) { return true; }),
            records::FormError);
}

TEST_CASE("an import can be cancelled after any row, and then there is nothing to write")
{
    FakeBook book;
    begin(book);
    std::size_t calls = 0;
    const Import read = prepare_import(book, hand_of("quill"), What::pipes, "id,name\na,A\nb,B\nc,C\n",
                                       [&](std::size_t done, std::size_t total) {
                                           CHECK(done == ++calls);
                                           CHECK(total == 3);
                                           return done < 2;
                                       });
    CHECK(calls == 2);
    CHECK(read.cancelled);
    CHECK(read.entries.empty());
    CHECK(read.things.empty());
}

TEST_SUITE_END();
