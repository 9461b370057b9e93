// A table of CSV: every row has as many cells as the heading, within the limits; written as an export writes it and
// read again, it is the same table.

#include "csv_in.hpp"
#include "csv_out.hpp"
#include "fuzzing.hpp"

#include <vector>

using namespace cotter;
using namespace cotter::tests;

namespace {

std::vector<std::string> row_of(const desk::Table& table, std::size_t row)
{
    std::vector<std::string> cells;
    for (std::size_t column = 0; column < table.headings().size(); ++column) {
        must(table.text(row, column).size() <= desk::longest_cell, "no cell is longer than the limit");
        cells.push_back(desk::without_guard(std::string{table.text(row, column)}));
    }
    return cells;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const desk::Table table = desk::read_table(text_of(data, size));
    for (const desk::Problem& each : table.problems())
        must_be_a_line(to_string(each));
    if (!table.problems().empty() || table.headings().size() < 2) // a lone empty cell is a blank line
        return 0;
    must(table.headings().size() <= desk::most_columns, "no more columns than the limit");
    std::vector<std::string> headings; // plain ones, as an export has: the separator is found from them
    for (std::size_t column = 0; column < table.headings().size(); ++column)
        headings.push_back("c" + std::to_string(column));
    std::string written = desk::csv_row(headings);
    for (std::size_t row = 0; row < table.rows(); ++row)
        written += desk::csv_row(row_of(table, row));
    const desk::Table again = desk::read_table(written);
    must(again.problems().empty(), "what is written is read");
    must(again.rows() == table.rows(), "with as many rows");
    for (std::size_t row = 0; row < table.rows(); ++row)
        must(row_of(again, row) == row_of(table, row), "and the same cells");
    return 0;
}
