// The reader of tables: what it takes, and each thing that it refuses, with line and column.

#include "csv_in.hpp"
#include "csv_out.hpp"

#include <doctest/doctest.h>

using namespace cotter::desk;

TEST_SUITE_BEGIN("csv_in");

namespace {

using Row = std::vector<std::string>;

Row row_of(const Table& table, std::size_t row)
{
    Row cells;
    for (std::size_t i = 0; i < table.headings().size(); ++i)
        cells.emplace_back(table.text(row, i));
    return cells;
}

// The one problem of a table, as it is said.
std::string only_problem(std::string_view text)
{
    const Table table = read_table(text);
    CHECK(table.problems().size() == 1);
    return table.problems().empty() ? "" : to_string(table.problems().front());
}

bool starts(const std::string& text, const char* with) { return text.starts_with(with); }

} // namespace

TEST_CASE("the separator is the heading line's own: comma, semicolon or tab")
{
    for (const char separator : {',', ';', '\t'}) {
        CAPTURE(separator);
        const std::string s{separator};
        const Table table = read_table("a" + s + "b\n1" + s + "\"x" + s + "y\"\n");
        CHECK(table.problems().empty());
        CHECK(table.separator() == separator);
        CHECK(row_of(table, 0) == Row{"1", "x" + s + "y"});
    }
    CHECK(read_table("\"a;b\",c\n").separator() == ',');
    CHECK(read_table("length, mm;bore, mm\n").separator() == ';');
}

TEST_CASE("a byte order mark, CR LF, an unended last line and empty lines are all taken")
{
    const Table table = read_table("\xEF\xBB\xBF\r\na,b\r\n\r\n1,2\r\n,\r\n3,4");
    CHECK(table.problems().empty());
    CHECK(table.headings() == Row{"a", "b"});
    CHECK(table.heading_line() == 2);
    REQUIRE(table.rows() == 2);
    CHECK(row_of(table, 1) == Row{"3", "4"});
    CHECK(table.line(0, 0) == 4);
    CHECK(table.line(1, 0) == 6);
}

TEST_CASE(
    "a cell within quotation marks may have separators, quotation marks and line ends, and lines are still counted")
{
    const Table table = read_table("a,b,c\n\"x\ny\",\"say \"\"hook\"\"\",z\n1,2,3\n");
    CHECK(table.problems().empty());
    REQUIRE(table.rows() == 2);
    CHECK(row_of(table, 0) == Row{"x\ny", "say \"hook\"", "z"});
    CHECK(table.line(0, 0) == 2);
    CHECK(table.line(0, 1) == 3);
    CHECK(table.line(1, 2) == 4);
}

TEST_CASE("spaces are part of a cell") { CHECK(row_of(read_table("a,b\n x , y\n"), 0) == Row{" x ", " y"}); }

TEST_CASE("a NUL, bytes that are not UTF-8 and a quotation mark that is not closed are named with their line")
{
    CHECK(starts(only_problem(std::string_view{"a,b\n1,2\nx,y\0z\n", 14}), "line 3, column 2: a NUL byte"));
    CHECK(starts(only_problem("a,b\n1,2\n\xFFx,y\n"), "line 3, column 1: not UTF-8"));
    CHECK(starts(only_problem("a,b\n1,\xC0\xAF\n"), "line 2, column 2: not UTF-8"));     // overlong
    CHECK(starts(only_problem("a,b\n1,\xED\xA0\x80\n"), "line 2, column 2: not UTF-8")); // half of a pair
    CHECK(starts(only_problem("a,b\n1,2\n3,\"x\ny,z\n"), "line 3, column 2: the quotation mark that opens"));
    CHECK(starts(only_problem("a,b\n1,x\"y\"\n"), "line 2, column 2: a quotation mark in a cell"));
    CHECK(starts(only_problem("a,b\n1,\"x\"y\n"), "line 2, column 2: a quotation mark in a cell"));
}

TEST_CASE("every row with a wrong number of cells is named, and the others are read")
{
    const Table table = read_table("a,b\n1\n1,2\n1,2,3\n4,5\n");
    REQUIRE(table.problems().size() == 2);
    CHECK(to_string(table.problems()[0]) == "line 2: 1 cells are not accepted; 2 are, as in the heading");
    CHECK(table.problems()[1].line == 4);
    CHECK(table.rows() == 2);
}

TEST_CASE("a return without a line feed is refused")
{
    CHECK(starts(only_problem("a,b\r1,2\n"), "line 1: a return without a line feed"));
    CHECK(starts(only_problem("a,b\n1,2\r"), "line 2: a return without a line feed"));
    CHECK(read_table("a,b\n\"1\rx\",2\n").problems().empty()); // within quotation marks it is text
}

TEST_CASE("an empty table is refused")
{
    CHECK(only_problem("") == "line 1: nothing in it; a heading line and rows are accepted");
    CHECK(only_problem("\xEF\xBB\xBF\n,,\n") == "line 1: nothing in it; a heading line and rows are accepted");
}

TEST_CASE("a cell of 64 KB is taken, one byte more is not")
{
    const std::string longest(longest_cell, 'x');
    CHECK(read_table("a\n" + longest + "\n").problems().empty());
    CHECK(starts(only_problem("a\n\n" + longest + "y\n"), "line 3, column 1: a cell of over 64 KB"));
}

TEST_CASE("two hundred columns are taken, one more is not")
{
    const std::string most = "a" + std::string(most_columns - 1, ',') + "b\n";
    CHECK(read_table(most).headings().size() == most_columns);
    CHECK(starts(only_problem("," + most), "line 1: 200 cells a line"));
    CHECK(starts(only_problem("," + most.substr(0, most.size() - 1)), "line 1: 200 cells a line")); // unended
}

TEST_CASE("a million rows are taken, one more is not")
{
    std::string rows;
    for (std::size_t i = 0; i < most_rows; ++i)
        rows += "x\n";
    CHECK(read_table("a\n" + rows).rows() == most_rows);
    CHECK(starts(only_problem("a\n" + rows + "x\n"), "line 1000002"));
    CHECK(starts(only_problem("a\n" + rows + "x"), "line 1000002"));
}

TEST_CASE("over 64 MB are refused")
{
    CHECK(starts(only_problem("a\n" + std::string(longest_table, '\n')), "over 64 MB"));
}

TEST_CASE("what is written with a guard against formulas is read as it was")
{
    for (const std::string text :
         {"=1+1", "+44", "-2", "@x", "\tx", "\rx", "'=x", "''-x", "'x", "'", "", "a=b", "x,\"y\"\r\nz", "Ø 600 mm"}) {
        CAPTURE(text);
        const Table table = read_table("a,b\r\n" + csv_row({text, "end"}));
        CHECK(table.problems().empty());
        REQUIRE(table.rows() == 1);
        const std::string read{table.text(0, 0)};
        CHECK(without_guard(read) == text);
        CHECK((read.empty() || std::string{"=+-@\t\r"}.find(read[0]) == std::string::npos));
    }
}

TEST_SUITE_END();
