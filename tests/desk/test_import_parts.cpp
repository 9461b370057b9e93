// Things with parts: a chart with its grid points, a plan with its standing places; and export and import again.

#include "cell.hpp"
#include "export.hpp"
#include "fake_book.hpp"
#include "import.hpp"
#include "pins.hpp"
#include "kinds.hpp"

#include <doctest/doctest.h>

#include <set>

using namespace cotter;
using namespace cotter::desk;
using cotter::tests::FakeBook;
using records::Json;

TEST_SUITE_BEGIN("import parts");

namespace {

Json chart()
{
    Json cells = Json::array();
    for (const int radius : {3000, 4500})
        cells.push_back(
            {{"over", "front"}, {"height_mm", -1500}, {"radius_mm", radius}, {"rated_kg", 5000 - radius / 2}});
    cells.push_back({{"over", "side"}, {"height_mm", 0}, {"radius_mm", 3000}}); // not permitted
    return {{"id", "c-1"},
            {"name", "Arm 2.4 (invented)"},
            {"machine", "ex-21"},
            {"includes_hitch", false},
            {"cells", cells}};
}

Json plan()
{
    return {{"id", "plan-1"},
            {"issue", 2},
            {"issued", true},
            {"site", "carr"},
            {"attachments", Json::array()},
            {"pipes", {"sk-450"}},
            {"roles", {{"supervisor", true}, {"signaller", true}, {"operator", false}}},
            {"sequence", {"Close the area; nobody beneath", "Trial lift"}},
            {"places",
             {{{"id", "A"}, {"nose_radius_mm", 5000}, {"lay_height_mm", -2000}, {"thread", {{"strutted", false}}}},
              {{"id", "B"}, {"nose_radius_mm", 5600}, {"thread", {{"strutted", true}, {"gap_mm", 3200}}}}}}};
}

FakeBook& begin(FakeBook& book)
{
    records::Record admitted;
    admitted.entry.kind = "admission";
    return book.with(admitted)
        .with("site", "carr", {{"zone", "Europe/London"}})
        .with("person", "quill", {{"admission", {{"roles", {"manager", "appointed"}}}}})
        .with("pipe", "sk-450", {{"id", "sk-450"}, {"name", "DN 450 (invented)"}})
        .with("chart", "c-1", chart())
        .with("plan", "plan-1", plan());
}

Import import(What what, const std::string& table)
{
    FakeBook book;
    begin(book);
    Hand hand;
    hand.by = "quill";
    return prepare_import(book, signed_by(hand), what, table, [](std::size_t, std::size_t) { return true; });
}

std::string problems_of(const Import& import)
{
    std::string text;
    for (const Problem& each : import.problems)
        text += to_string(each) + "\n";
    return text;
}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

std::string exported(What what)
{
    FakeBook book;
    return export_table(begin(book), what);
}

std::string replaced(std::string text, const std::string& from, const std::string& to)
{
    const auto at = text.find(from);
    REQUIRE(at != std::string::npos);
    return text.replace(at, from.size(), to);
}

} // namespace

TEST_CASE("a chart is written as a row a grid point, with heights and radii in metres, and read back the same")
{
    const std::string table = exported(What::charts);
    CHECK(has(table, "over,height_m,radius_m,rated_kg\r\n"));
    CHECK(has(table, "c-1,Arm 2.4 (invented),ex-21,,,,no,,,front,-1.5,4.5,2750\r\n"));
    CHECK(has(table, ",side,0,3,\r\n"));
    const Import read = import(What::charts, table);
    CHECK(problems_of(read) == "");
    CHECK(read.entries.empty());
}

TEST_CASE("a chart's own columns may stand on its first row alone, and the plain chart file may follow below")
{
    const Import read =
        import(What::charts, "chart,name,machine,over,height_m,radius_m,rated_kg\n"
                             "c-2,Two (invented),ex-14,front,0,4,4000\n,,,front,0,6,\n,,,side,0,4,2000.9\n");
    CHECK(problems_of(read) == "");
    REQUIRE(read.entries.size() == 1);
    CHECK(read.entries[0].body ==
          Json{{"name", "Two (invented)"},
               {"machine", "ex-14"},
               {"cells",
                {{{"over", "front"}, {"height_mm", 0}, {"radius_mm", 4000}, {"rated_kg", 4000}},
                 {{"over", "front"}, {"height_mm", 0}, {"radius_mm", 6000}},
                 {{"over", "side"}, {"height_mm", 0}, {"radius_mm", 4000}, {"rated_kg", 2000}}}}});
}

TEST_CASE("grid points in another order or unit are the same chart, and one that changes is named")
{
    const std::string same = "id,over,height_mm,radius_mm,rated_t\nc-1,side,0,3000,\nc-1,front,-1500,4500,2.75\n"
                             "c-1,front,-1500,3000,3.5\n";
    CHECK(import(What::charts, same).things.at(0).outcome == Outcome::same);
    const Import read = import(What::charts, replaced(same, "2.75", "2.7"));
    CHECK(problems_of(read) == "");
    REQUIRE(read.things.at(0).changes.size() == 1);
    CHECK(read.things[0].changes[0].field == "grid point front -1.5 4.5 rated_kg");
    CHECK(read.things[0].changes[0].was == "2750");
    CHECK(read.things[0].changes[0].is == "2700");
}

TEST_CASE("a grid point that is left out is gone, and one that is added is new")
{
    const Import read = import(What::charts, "id,over,height_m,radius_m,rated_kg\nc-1,front,-1.5,3,3500\n"
                                             "c-1,front,-1.5,4.5,2750\nc-1,side,0,4.5,1000\n");
    REQUIRE(read.things.at(0).changes.size() == 2);
    CHECK(read.things[0].changes[0].is == "gone");
    CHECK(read.things[0].changes[1].is == "new");
    CHECK(read.entries.at(0).body["cells"].size() == 3);
}

TEST_CASE("a grid point twice, without its key, or where it cannot be is refused")
{
    const std::string heading = "id,name,over,height_m,radius_m,rated_kg\n";
    CHECK(has(problems_of(import(What::charts, heading + "n,N,front,0,3,1000\nn,N,front,0,3.0,1000\n")),
              "line 3, column 3 (over): this grid point stands on line 2 already"));
    CHECK(has(problems_of(import(What::charts, heading + "n,N,front,0,,1000\n")),
              "line 2, column 5 (radius_m): is missing; each grid point needs it"));
    CHECK(has(problems_of(import(What::charts, heading + "n,N,front,0,3000,1000\n")), "0.5 to 40 m"));
    CHECK(has(problems_of(import(What::charts, heading + "n,N,back,0,3,1000\n")), "front or side is"));
    CHECK(has(problems_of(import(What::charts, "id,name,radius_m,rated_kg\nn,N,3,1000\n")),
              "the column over is missing"));
    CHECK(has(problems_of(import(What::charts, "id,name\nn,N\n")), "cells is missing"));
}

TEST_CASE("rows of one thing that say different things of it are refused")
{
    CHECK(has(problems_of(import(What::charts, "id,name,over,height_m,radius_m\nn,N,front,0,3\nn,M,front,0,4\n")),
              "line 3, column 2 (name): \"M\" is not accepted; what line 2 says of \"n\", or nothing, is"));
}

TEST_CASE("a row without an id belongs to the thing of the row above it")
{
    const Import read =
        import(What::charts, "id,name,over,height_m,radius_m\na,A,front,0,3\nb,B,front,0,3\na,,front,0,4\n"
                             ",,front,0,5\n");
    CHECK(problems_of(read) == "");
    REQUIRE(read.entries.size() == 2);
    CHECK(read.entries[0].body["cells"].size() == 3);
    CHECK(has(problems_of(import(What::charts, "id,name,over,height_m,radius_m\n,A,front,0,3\n")), "an id is missing"));
}

TEST_CASE("a plan is written as a row a standing place and read back the same")
{
    const std::string table = exported(What::plans);
    CHECK(has(table, ",none,,sk-450,")); // attachments are none, models are not said
    CHECK(has(table, "signaller; supervisor,operator,"));
    CHECK(has(table, "\"Close the area; nobody beneath\nTrial lift\""));
    const Import read = import(What::plans, table);
    CHECK(problems_of(read) == "");
    CHECK(read.entries.empty());
}

TEST_CASE("an issued plan changes only with a greater issue")
{
    const std::string other = "id,issue,place,nose radius m\nplan-1,2,A,5\nplan-1,2,B,5.7\n";
    CHECK(has(problems_of(import(What::plans, other)),
              "line 2, column 2 (issue): issue 2 is issued and says something else"));
    const Import read = import(What::plans, replaced(replaced(other, "plan-1,2", "plan-1,3"), "plan-1,2", "plan-1,3"));
    CHECK(problems_of(read) == "");
    const Json body = read.entries.at(0).body;
    CHECK(body["places"][1] ==
          Json{{"id", "B"}, {"nose_radius_mm", 5700}, {"thread", {{"strutted", true}, {"gap_mm", 3200}}}});
    CHECK(body["places"][0]["lay_height_mm"] == -2000);
    CHECK(body["roles"] == plan()["roles"]);
}

TEST_CASE("a role moves between needed and not needed, and cannot be both")
{
    const auto roles = [](const std::string& needed, const std::string& not_needed) {
        return import(What::plans,
                      "id,issue,roles needed,roles not needed\nplan-1,3," + needed + "," + not_needed + "\n");
    };
    CHECK(roles("supervisor", "signaller; operator").entries.at(0).body["roles"] ==
          Json{{"supervisor", true}, {"signaller", false}, {"operator", false}});
    CHECK(roles("supervisor; signaller; operator", "").entries.at(0).body["roles"] ==
          Json{{"supervisor", true}, {"signaller", true}, {"operator", true}});
    CHECK(has(problems_of(roles("supervisor; operator", "operator")),
              "\"operator\" stands among the roles that are needed"));
}

TEST_CASE("what a plan names must be in the book")
{
    CHECK(has(problems_of(import(What::plans, "id,issue,site,pipes\np,1,carr,sk-450; sk-900\n")),
              "line 2, column 4 (pipes): \"sk-900\" is not in this book"));
}

TEST_CASE("a list of texts that look like parts of a list is written and read back the same")
{
    Column column;
    column.name = "models";
    column.field = "/models";
    column.holds = Holds::list;
    const std::vector<Json> lists{Json::array(), {"a"}, {"a", "b"}, {"a,b", "c"}, {"none"}, {"a;b"}, {"none", "x"}};
    for (const Json& list : lists) {
        const Json thing = {{"models", list}};
        Json read = Json::object();
        put(read, column, {}, plain(text_of(column, thing)));
        CAPTURE(list.dump());
        CHECK(read == thing);
    }
}

namespace {

// Fields of a schema that hold a value, by JSON pointer; those of a list of objects too.
void collect(const Json& schema, const std::string& at, std::set<std::string>& fields)
{
    for (const auto& [name, property] : schema["properties"].items()) {
        if (name == "worksheet" || name == "results" || name == "pipe_sizes" || name == "gear_planned" || name == "tape") // worked out, or read at the pipe: never in a list
            continue;
        const bool is_list = property.value("type", Json{}) == "array";
        const Json& inner = is_list ? property["items"] : property;
        if (inner.contains("properties"))
            collect(inner, is_list ? "" : at + "/" + name, fields);
        else
            fields.insert(at + "/" + name);
    }
}

} // namespace

TEST_CASE("every field of the records has a column, and every column a field")
{
    for (const Shape& shape : shapes()) {
        std::set<std::string> fields{"/id"}, columns;
        collect(records::find_kind(shape.kind)->schema, "", fields);
        if (shape.what == What::people)
            collect(records::find_kind("admission")->schema, "/admission", fields);
        for (const Column* each : columns_of(shape))
            if (!each->taken_only)
                columns.insert(each->field);
        CAPTURE(shape.name);
        CHECK(fields == columns);
    }
}

TEST_CASE("no two columns of a list are called the same")
{
    for (const Shape& shape : shapes()) {
        std::set<std::pair<bool, std::string>> seen;
        for (const Column* each : columns_of(shape)) {
            std::vector<std::string> names = each->also;
            names.push_back(each->name);
            std::set<std::string> own;
            for (const std::string& name : names)
                own.insert(normal(name));
            for (const std::string& name : own) {
                CAPTURE(shape.name + " " + name);
                CHECK(seen.emplace(each->unit.measure == Measure::none, name).second);
            }
        }
    }
}

TEST_SUITE_END();
