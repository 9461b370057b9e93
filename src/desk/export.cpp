#include "export.hpp"

#include "csv_out.hpp"
#include "thing.hpp"

namespace cotter::desk {

namespace {

using Cells = std::vector<std::string>;

// A number is written as it is, so that a spreadsheet counts with it; no formula is made of digits alone.
std::string cell_of(const Column& column, const Json& thing)
{
    std::string text = text_of(column, thing);
    return column.holds == Holds::number ? text : csv_cell(std::move(text));
}

void add_cells(const std::vector<Column>& columns, const Json& thing, Cells& cells)
{
    for (const Column& each : columns)
        if (!each.taken_only)
            cells.push_back(cell_of(each, thing));
}

std::string row_of(const Shape& shape, const Json& thing, const Json& part)
{
    Cells cells;
    add_cells(shape.own, thing, cells);
    add_cells(shape.parts, part, cells);
    return csv_line(cells);
}

std::string rows_of(const Shape& shape, const Json& thing)
{
    std::string rows;
    for (const Json& part : parts_of(shape, thing))
        rows += row_of(shape, thing, part);
    return rows.empty() ? row_of(shape, thing, Json::object()) : rows;
}

std::string heading_of(const Shape& shape)
{
    Cells names;
    for (const Column* each : columns_of(shape))
        if (!each->taken_only)
            names.push_back(each->heading());
    return csv_row(names);
}

} // namespace

std::string export_table(const Book& book, What what)
{
    const Shape& shape = shape_of(what);
    std::string table = heading_of(shape);
    for (const records::Fact& fact : book.facts(shape.fact))
        table += rows_of(shape, thing_in(book, shape, fact));
    return table;
}

} // namespace cotter::desk
