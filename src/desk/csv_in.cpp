#include "csv_in.hpp"

#include "form.hpp"

#include <csv.h>

#include <algorithm>
#include <exception>
#include <stdexcept>
#include <utility>

namespace cotter::desk {

namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

// The library that writes records refuses what is not.
bool is_utf8(const std::string& text)
try {
    const bool ascii =
        std::all_of(text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 0x80; });
    return ascii || !records::Json(text).dump().empty();
} catch (const records::Json::exception&) {
    return false;
}

bool ends_a_line(unsigned char c) { return c == '\r' || c == '\n'; }

// A tab or a semicolon outside quotation marks is hardly ever part of a heading; a comma may be.
char separator_in(std::string_view text)
{
    bool quoted = false, semicolon = false;
    for (const char c : text) {
        quoted = quoted != (c == '"');
        if (quoted)
            continue;
        if (c == '\t')
            return '\t';
        semicolon = semicolon || c == ';';
        if (ends_a_line(static_cast<unsigned char>(c)))
            break;
    }
    return semicolon ? ';' : ',';
}

} // namespace

// libcsv is given one byte at a time, so that the line of each cell is known. Nothing thrown may pass through it.
class TableReader {
public:
    explicit TableReader(char separator)
    {
        if (csv_init(&parser_, CSV_STRICT | CSV_STRICT_FINI) != 0)
            throw std::runtime_error{"the reader of tables cannot be made"};
        csv_set_delim(&parser_, static_cast<unsigned char>(separator));
        csv_set_space_func(&parser_, [](unsigned char) { return 0; }); // RFC 4180, 2.4: spaces are part of a cell
        table_.separator_ = separator;
    }
    TableReader(const TableReader&) = delete;
    TableReader& operator=(const TableReader&) = delete;
    ~TableReader() { csv_free(&parser_); }

    Table read(std::string_view text)
    {
        if (text.size() > longest_table) {
            say_of_line(0, "over 64 MB are not accepted; a table in several files is");
            return std::move(table_);
        }
        for (const char c : text)
            if (!feed(static_cast<unsigned char>(c)))
                return std::move(table_);
        finish();
        return std::move(table_);
    }

private:
    bool feed(unsigned char c)
    {
        refuse_lone_return(c);
        if (fresh_)
            cell_line_ = line_;
        fresh_ = fresh_ && ends_a_line(c);
        const bool parsed = csv_parse(&parser_, &c, 1, on_cell, on_row, this) == 1;
        rethrow();
        if (!parsed) {
            say(line_, "a quotation mark in a cell that does not begin with one, or text after a closing one, is not "
                       "accepted; a cell with one stands in quotation marks, and it is doubled");
            return false;
        }
        line_ += c == '\n' ? 1 : 0;
        return !refuse_too_long();
    }

    void finish()
    {
        refuse_lone_return(0);
        const bool closed = csv_fini(&parser_, on_cell, on_row, this) == 0;
        rethrow();
        if (closed)
            refuse_too_long(); // the last line, where nothing ends it
        else
            say(cell_line_, "the quotation mark that opens this cell is not closed; a closing one is needed");
        if (table_.headings_.empty() && table_.problems_.empty())
            say_of_line(1, "nothing in it; a heading line and rows are accepted");
    }

    // A return ends a row for libcsv; here only before a line feed.
    void refuse_lone_return(unsigned char next)
    {
        if (after_return_ && next != '\n')
            say_of_line(line_, "a return without a line feed; lines end in CR LF or LF");
        after_return_ = false;
    }

    bool refuse_too_long()
    {
        if (parser_.entry_pos > longest_cell)
            say(cell_line_, "a cell of over 64 KB is not accepted; up to 65536 bytes are (is a quotation mark not "
                            "closed?)");
        else if (too_wide_)
            say_of_line(cell_line_, std::to_string(most_columns) + " cells a line are accepted, here are more");
        else if (table_.rows() > most_rows)
            say_of_line(cell_line_, std::to_string(most_rows) + " rows are accepted, here are more");
        else
            return false;
        return true;
    }

    void say_of_line(std::size_t line, std::string why) { table_.problems_.push_back({line, 0, "", std::move(why)}); }

    void say(std::size_t line, std::string why)
    {
        table_.problems_.push_back({line, row_.size() + 1, "", std::move(why)});
        bad_ = true;
    }

    static void on_cell(void* text, std::size_t size, void* self)
    {
        static_cast<TableReader*>(self)->guarded(
            [&](TableReader& it) { it.take_cell(static_cast<char*>(text), size); });
    }
    static void on_row(int terminator, void* self)
    {
        static_cast<TableReader*>(self)->guarded([&](TableReader& it) { it.take_row(terminator); });
    }
    template <class Act> void guarded(Act act) noexcept
    {
        try {
            act(*this);
        } catch (...) {
            thrown_ = std::current_exception();
        }
    }
    void rethrow()
    {
        if (thrown_)
            std::rethrow_exception(thrown_);
    }

    void take_cell(const char* bytes, std::size_t size)
    {
        const std::string text{bytes ? bytes : "", size};
        if (text.find('\0') != std::string::npos)
            say(cell_line_, "a NUL byte is not accepted; text is");
        else if (!is_utf8(text))
            say(cell_line_, "not UTF-8; text in UTF-8 is accepted (a spreadsheet saves it as \"CSV UTF-8\")");
        row_.push_back({static_cast<std::uint32_t>(table_.texts_.size()), static_cast<std::uint32_t>(size),
                        static_cast<std::uint32_t>(cell_line_)});
        table_.texts_ += text;
        fresh_ = true;
        too_wide_ = row_.size() > most_columns;
    }

    void take_row(int terminator)
    {
        after_return_ = terminator == '\r';
        fresh_ = true;
        if (!std::exchange(bad_, false))
            keep_row();
        row_.clear();
    }

    void keep_row()
    {
        if (std::all_of(row_.begin(), row_.end(), [](const Table::Cell& each) { return each.size == 0; }))
            return;
        if (table_.headings_.empty())
            keep_headings();
        else if (row_.size() == table_.headings_.size())
            table_.cells_.insert(table_.cells_.end(), row_.begin(), row_.end());
        else
            say_of_line(row_.front().line, std::to_string(row_.size()) + " cells are not accepted; " +
                                               std::to_string(table_.headings_.size()) + " are, as in the heading");
    }

    void keep_headings()
    {
        table_.heading_line_ = row_.front().line;
        for (const Table::Cell& each : row_)
            table_.headings_.push_back(table_.texts_.substr(each.begin, each.size));
    }

    csv_parser parser_{};
    Table table_;
    std::vector<Table::Cell> row_;
    std::exception_ptr thrown_;
    std::size_t line_ = 1, cell_line_ = 1;
    bool fresh_ = true; // the next byte is a cell's first
    bool after_return_ = false;
    bool too_wide_ = false;
    bool bad_ = false; // a cell of this row is not accepted
};

std::string to_string(const Problem& problem)
{
    std::string text = problem.line == 0 ? "" : "line " + std::to_string(problem.line);
    if (problem.column > 0)
        text += ", column " + std::to_string(problem.column);
    if (!problem.heading.empty())
        text += " (" + problem.heading + ")";
    return text + (text.empty() ? "" : ": ") + problem.why;
}

std::string_view Table::text(std::size_t row, std::size_t column) const
{
    const Cell& it = cell(row, column);
    return std::string_view{texts_}.substr(it.begin, it.size);
}

std::size_t Table::line(std::size_t row, std::size_t column) const { return cell(row, column).line; }

Table read_table(std::string_view text)
{
    if (text.starts_with(byte_order_mark))
        text.remove_prefix(byte_order_mark.size());
    return TableReader{separator_in(text)}.read(text);
}

} // namespace cotter::desk
