// What stands over a column and in its cells: what is understood, and what is refused and how.

#include "importing.hpp"

using namespace cotter;
using namespace cotter::tests;

TEST_SUITE_BEGIN("import cells");

TEST_CASE("a heading is the same in any case and with any blanks, underscores, hyphens, dots and brackets")
{
    for (const char* heading :
         {"bore mm", "Bore (mm)", "bore_mm", "BORE-MM", "b.o.r.e. [mm]", "Inside diameter, mm", "I.D. (mm)",
          "\xC2\xA0"
          "Bore\xC2\xA0mm"}) {
        CAPTURE(heading);
        CHECK(only_body(pipes("id;name;" + std::string{heading} + "\nnew;N;450\n"))["bore_mm"] == 450);
    }
}

TEST_CASE("the unit in a heading is understood")
{
    const std::vector<std::pair<std::string, std::string>> lengths{
        {"length mm", "2600"}, {"length mm", "2600.0"}, {"Overall length (cm)", "260"}, {"length m", "2.6"}};
    for (const auto& each : lengths) {
        CAPTURE(each.first);
        CHECK(only_body(pipes("id,name," + each.first + "\nnew,N," + each.second + "\n"))["overall_mm"] == 2600);
    }
    CHECK(only_body(pipes("id,name,mass t\nnew,N,0.69\n"))["stated_kg"] == 690);
    CHECK(only_body(pipes("id,name,Density (kg/m\xC2\xB3),allowance %\nnew,N,2400,5\n")) ==
          Json{{"name", "N"}, {"density_kg_m3", 2400}, {"allowance_percent", 5}});
}

TEST_CASE("a load goes up to the next kilogram, a rating down")
{
    CHECK(only_body(pipes("id,name,mass kg\nnew,N,689.2\n"))["stated_kg"] == 690);
    FakeBook book;
    begin(book);
    const Json unit =
        only_body(import(book, What::units,
                         "tag,owner,serial no,role,class,SWL t,mass t\nPC 1,F,7,attachment,accessory,2.9999,0.3001\n"));
    CHECK(unit["plate_kg"] == 2999);
    CHECK(unit["mass_kg"] == 301);
}

TEST_CASE("a heading that is not known, twice, without its unit or with a wrong one is named with what is accepted")
{
    CHECK(not_refused("colour", "red", {"line 1, column 3: \"colour\" is not a column; accepted are id, name"}) == "");
    CHECK(not_refused("Name", "N", {"line 1, column 3: the column name stands in the table twice"}) == "");
    CHECK(not_refused("Bore", "450",
                      {"\"Bore\": its unit is missing; \"bore mm\", \"bore cm\" or \"bore m\" is accepted"}) == "");
    CHECK(not_refused("bore kg", "450", {"kg is not a unit of bore; mm, cm or m is accepted"}) == "");
    CHECK(not_refused("", "red", {"\"\" is not a column"}) == "");
    CHECK(problems_of(pipes("name\nN\n")) == "the column id is missing; it is needed for pipes\n");
    CHECK(only_body(pipes("id,name,\nnew,N,\n"))["name"] == "N"); // a spreadsheet's empty column
}

TEST_CASE("a number that its unit cannot be is refused with line, column, value and what is accepted")
{
    CHECK(not_refused("length mm", "2.6",
                      {"line 2, column 3 (length mm): \"2.6\" is not accepted; 300 to 12000 mm, in whole mm is"}) ==
          "");
    CHECK(not_refused("length m", "2600", {"\"2600\" is not accepted; 0.3 to 12 m, in whole mm is"}) == "");
    CHECK(not_refused("bore mm", "0.45", {"\"0.45\""}) == "");
    CHECK(not_refused("bore m", "450", {"\"450\" is not accepted; 0.05 to 6 m"}) == "");
    CHECK(not_refused("mass t", "690", {"\"690\" is not accepted; 0.005 to 100 t is"}) == "");
    CHECK(not_refused("mass kg", "0.69", {"\"0.69\""}) == "");
    CHECK(not_refused("length m", "2.60005", {"in whole mm"}) == "");
}

TEST_CASE("what is no number in decimal digits is refused")
{
    for (const char* cell : {"\"2,600\"", "2 600", "2600 mm", "2.6e3", "0x450", "nan", "inf", "1234567890123456", "--1",
                             "2.6.0", ".", "-"}) {
        CAPTURE(cell);
        CHECK(not_refused("length mm", cell, {"line 2, column 3"}) == "");
    }
}

TEST_CASE("a number at either end of what it can be is accepted, one beyond is not, and 0 says that there is none")
{
    for (const char* cell : {"300", "12000"})
        CHECK(problems_of(pipes("id,name,length mm\nnew,N," + std::string{cell} + "\n")) == "");
    for (const char* cell : {"299", "12001", "-300", "0"})
        CHECK(not_refused("length mm", cell, {"300 to 12000"}) == "");
    CHECK(only_body(pipes("id,name,socket mm\nnew,N,0\n"))["socket_mm"] == 0);
    CHECK(not_refused("socket mm", "1", {"0 or 50 to 6000"}) == "");
}

TEST_CASE("days are taken as YYYY-MM-DD or with the month's name, and a day that may be meant either way is refused")
{
    FakeBook book;
    begin(book);
    const auto person = [&](const std::string& day) {
        return import(book, What::people, "id,name,card expires\nnew,N," + day + "\n");
    };
    for (const char* day : {"2027-03-31", "31 Mar 2027", "31 March 2027", "31-MAR-2027"}) {
        CAPTURE(day);
        CHECK(only_body(person(day))["card_last_day"] == "2027-03-31");
    }
    CHECK(only_body(person("1 May 2027"))["card_last_day"] == "2027-05-01");
    for (const char* day : {"31/03/2027", "03/04/2027", "31.03.2027", "31 Mar 27", "30 Feb 2027", "2027-02-29",
                            "31 Ma 2027", "Mar 2027", "46477", "31 Mars 2027"}) {
        CAPTURE(day);
        CHECK(has(problems_of(person(day)), "line 2, column 3 (card expires): \"" + std::string{day} +
                                                "\" is not accepted; a day as 2027-03-31 or 31 Mar 2027 is"));
    }
}

TEST_CASE("choices and yes or no are taken in any case, and anything else is refused with what is accepted")
{
    CHECK(only_body(pipes("id,name,shape\nnew,N,Straight\n"))["shape"] == "straight");
    CHECK(not_refused("shape", "round", {"\"round\" is not accepted; straight, bend, junction, cut or other is"}) ==
          "");
    FakeBook book;
    begin(book);
    for (const char* said : {"yes", "YES", "true", "y"}) {
        const Import read =
            import(book, What::people, "id,name,site,card seen\nnew,N,carr," + std::string{said} + "\n");
        REQUIRE(read.entries.size() == 2);
        CHECK(read.entries[1].body["card_seen"] == true);
    }
    CHECK(has(problems_of(import(book, What::people, "id,name,site,card seen\nnew,N,carr,1\n")), "yes or no is"));
    CHECK(has(problems_of(import(book, What::people, "id,name,site,card seen,roles\nnew,N,carr,yes,manger\n")),
              "\"manger\" is not accepted; operator, signaller"));
}

TEST_SUITE_END();
