#include "import_sheet.hpp"

#include <algorithm>
#include <tuple>

namespace cotter::desk {

using records::FormError;

namespace {

// What people look for in a list of units, and is entered elsewhere.
std::string elsewhere(const Shape& shape, const std::string& heading)
{
    const std::string said = normal(heading);
    for (const char* each : {"examin", "latestdate", "nextdue", "duedate"})
        if (shape.what == What::units && said.find(each) != std::string::npos)
            return records::shown(heading) + " is not a column of units: an examination is entered as its report, "
                                             "`cotter help record examination_report`; the column is to be taken out";
    return "";
}

} // namespace

Sheet::Sheet(const Shape& shape, std::string_view text) : shape_{shape}, table_{read_table(text)}
{
    problems_ = table_.problems();
    if (table_.headings().empty()) {
        headed_ = false;
        return;
    }
    const auto columns = columns_of(shape);
    for (std::size_t i = 0; i < table_.headings().size(); ++i)
        read_heading(i, columns);
    if (shape.what != What::units) // they are known by owner and serial too
        need(shape.own.front());
    for (std::size_t i = 0; has_parts() && i < shape.keys; ++i)
        need(shape.parts[i]);
    if (rows() == 0 && problems_.empty())
        problems_.push_back(
            {0, 0, "", "nothing under the heading; a row for each of the " + shape.name + " is accepted"});
}

bool Sheet::has_parts() const
{
    return std::any_of(shape_.parts.begin(), shape_.parts.end(), [&](const Column& each) { return has(each); });
}

std::string Sheet::cell(std::size_t row, const Column& column) const
{
    const auto found = places_.find(&column);
    return found == places_.end() ? "" : plain(table_.text(row, found->second.column));
}

void Sheet::put_unsaid(Json& thing, std::size_t row, const Column& column) const
{
    if (const auto found = places_.find(&column); found != places_.end())
        desk::put(thing, column, found->second.unit, cell(row, column));
}

void Sheet::put(Json& thing, std::size_t row, const Column& column)
try {
    put_unsaid(thing, row, column);
} catch (const FormError& e) {
    say(row, &column, e.what());
}

void Sheet::say(std::size_t row, const Column* column, const std::string& why)
{
    const auto found = places_.find(column);
    if (found == places_.end()) {
        problems_.push_back({line(row), 0, "", why});
        return;
    }
    const std::size_t at = found->second.column;
    problems_.push_back({table_.line(row, at), at + 1, table_.headings()[at], why});
}

std::vector<Problem> Sheet::take_problems()
{
    std::stable_sort(problems_.begin(), problems_.end(), [](const Problem& a, const Problem& b) {
        return std::tie(a.line, a.column) < std::tie(b.line, b.column);
    });
    return std::move(problems_);
}

// A spreadsheet may leave empty columns at the end.
void Sheet::read_heading(std::size_t column, const std::vector<const Column*>& columns)
try {
    const std::string heading = plain(table_.headings()[column]);
    if (heading.empty() && is_empty(column))
        return;
    if (const std::string why = elsewhere(shape_, heading); !why.empty())
        return say_heading(column, why);
    const Heading found = heading_of(heading, columns);
    if (!places_.try_emplace(found.column, Place{column, found.unit}).second)
        say_heading(column, "the column " + found.column->heading() + " stands in the table twice; once is accepted");
} catch (const FormError& e) {
    say_heading(column, e.what());
}

void Sheet::need(const Column& column)
{
    if (has(column) || !headed_)
        return;
    headed_ = false;
    problems_.push_back({0, 0, "", "the column " + column.heading() + " is missing; it is needed for " + shape_.name});
}

void Sheet::say_heading(std::size_t column, const std::string& why)
{
    headed_ = false;
    problems_.push_back({table_.heading_line(), column + 1, "", why});
}

bool Sheet::is_empty(std::size_t column) const
{
    for (std::size_t row = 0; row < rows(); ++row)
        if (!table_.text(row, column).empty())
            return false;
    return true;
}

} // namespace cotter::desk
