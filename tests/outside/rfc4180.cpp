// Tables against RFC 4180, "Common Format and MIME Type for CSV Files" (October 2005), section 2: its seven rules with
// their examples, and its grammar. The first line is the heading (rule 3).

#include "csv_in.hpp"
#include "csv_out.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace cotter::desk;

namespace {

using Row = std::vector<std::string>;
using Rows = std::vector<Row>;

// The heading and all rows; nothing in it is refused.
Rows rows_of(const std::string& text)
{
    const Table table = read_table(text);
    for (const Problem& each : table.problems())
        FAIL_CHECK(to_string(each));
    Rows rows{table.headings()};
    for (std::size_t i = 0; i < table.rows(); ++i) {
        rows.emplace_back();
        for (std::size_t j = 0; j < table.headings().size(); ++j)
            rows.back().emplace_back(table.text(i, j));
    }
    return rows;
}

bool is_refused(const std::string& text) { return !read_table(text).problems().empty(); }

const Rows two_records{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}};

// TEXTDATA = %x20-21 / %x23-2B / %x2D-7E
std::string textdata()
{
    std::string text;
    for (char c = 0x20; c < 0x7F; ++c)
        if (c != 0x22 && c != 0x2C)
            text += c;
    return text;
}

} // namespace

// Source: RFC 4180, 2.1 and 2.2.
TEST_CASE("RFC 4180 2.1, 2.2: a record a line, ended by CRLF, the last one with or without")
{
    CHECK(rows_of("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n") == two_records);
    CHECK(rows_of("aaa,bbb,ccc\r\nzzz,yyy,xxx") == two_records);
}

// Source: RFC 4180, 2.3.
TEST_CASE("RFC 4180 2.3: a header line with as many names as the records have fields")
{
    CHECK(rows_of("field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n") ==
          Rows{{"field_name", "field_name", "field_name"}, two_records[0], two_records[1]});
}

// Source: RFC 4180, 2.4.
TEST_CASE("RFC 4180 2.4: as many fields on each line, spaces are part of a field, no comma after the last")
{
    CHECK(rows_of("aaa,bbb,ccc") == Rows{{"aaa", "bbb", "ccc"}});
    CHECK(rows_of("a,b\r\n aaa ,  bbb\r\n")[1] == Row{" aaa ", "  bbb"});
    CHECK(is_refused("aaa,bbb,ccc\r\nzzz,yyy\r\n"));
    CHECK(is_refused("aaa,bbb,ccc\r\nzzz,yyy,xxx,\r\n"));
}

// Source: RFC 4180, 2.5.
TEST_CASE("RFC 4180 2.5: a field may be enclosed in double quotes, and has none inside if it is not")
{
    CHECK(rows_of("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx") == two_records);
    CHECK(is_refused("aaa,bbb\r\nz\"z,yyy\r\n"));
    CHECK(is_refused("aaa,bbb\r\n \"zzz\",yyy\r\n"));
    CHECK(is_refused("aaa,bbb\r\n\"zzz\" ,yyy\r\n"));
    CHECK(is_refused("aaa,bbb\r\n\"zzz,yyy\r\n"));
}

// Source: RFC 4180, 2.6.
TEST_CASE("RFC 4180 2.6: line breaks, double quotes and commas stand in double quotes")
{
    CHECK(rows_of("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx") == Rows{{"aaa", "b\r\nbb", "ccc"}, two_records[1]});
    CHECK(rows_of("a\r\n\"x,y\"\r\n")[1] == Row{"x,y"});
    CHECK(csv_row({"aaa", "b\r\nbb", "ccc"}) == "aaa,\"b\r\nbb\",ccc\r\n");
    CHECK(csv_row({"x,y", "\n"}) == "\"x,y\",\"\n\"\r\n");
}

// Source: RFC 4180, 2.7.
TEST_CASE("RFC 4180 2.7: a double quote inside a field is preceded by another")
{
    CHECK(rows_of("\"aaa\",\"b\"\"bb\",\"ccc\"") == Rows{{"aaa", "b\"bb", "ccc"}});
    CHECK(csv_row({"aaa", "b\"bb", "ccc"}) == "aaa,\"b\"\"bb\",ccc\r\n");
    CHECK(rows_of("a,b\r\n\"\"\"\",\"\"\r\n")[1] == Row{"\"", ""});
}

// Source: RFC 4180, 2, the grammar: non-escaped = *TEXTDATA.
TEST_CASE("RFC 4180 grammar: every TEXTDATA stands in a field as it is, alone and together")
{
    CHECK(rows_of("a,b\r\n" + textdata() + ",x\r\n")[1] == Row{textdata(), "x"});
    for (const char c : textdata()) {
        CAPTURE(c);
        CHECK(rows_of("a,b\r\n" + std::string{c} + ",x\r\n")[1] == Row{std::string{c}, "x"});
    }
}

// Source: RFC 4180, 2, the grammar: escaped = DQUOTE *(TEXTDATA / COMMA / CR / LF / 2DQUOTE) DQUOTE.
TEST_CASE("RFC 4180 grammar: an escaped field takes TEXTDATA, COMMA, CR, LF and 2DQUOTE in any order")
{
    const std::vector<std::pair<const char*, const char*>> parts{
        {"a", "a"}, {",", ","}, {"\r", "\r"}, {"\n", "\n"}, {"\"\"", "\""}};
    for (const auto& [first, meant_first] : parts)
        for (const auto& [second, meant_second] : parts)
            for (const auto& [third, meant_third] : parts) {
                const std::string written = std::string{first} + second + third;
                CAPTURE(written);
                CHECK(rows_of("h,i\r\n\"" + written + "\",x\r\n")[1] ==
                      Row{std::string{meant_first} + meant_second + meant_third, "x"});
            }
}

// Source: RFC 4180, 2, the grammar: field = (escaped / non-escaped), and non-escaped may be empty.
TEST_CASE("RFC 4180 grammar: a field may be empty, plain or enclosed")
{
    CHECK(rows_of("a,b,c\r\n,x,\"\"\r\n")[1] == Row{"", "x", ""});
}
