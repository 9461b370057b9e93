#pragma once

// A table of CSV: a heading line, then rows of as many cells. As RFC 4180 has it, in UTF-8, and more forgiving: cells
// are parted by comma, semicolon or tab, whichever the heading line uses, lines end in CR LF or LF, a byte order mark
// may stand in front, and lines without anything in them are passed over.

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace cotter::desk {

inline constexpr std::size_t longest_cell = 64 * 1024; // bytes
inline constexpr std::size_t most_rows = 1'000'000;
inline constexpr std::size_t most_columns = 200;
inline constexpr std::size_t longest_table = 64 * 1024 * 1024; // bytes

// What is not accepted in a table, and where: line and column from 1; column 0 is the whole line.
struct Problem {
    std::size_t line = 0, column = 0;
    std::string heading, why;
};

// "line 3, column 4 (Wall (mm)): ..."
std::string to_string(const Problem& problem);

class Table {
public:
    const std::vector<std::string>& headings() const { return headings_; }
    std::size_t heading_line() const { return heading_line_; }
    std::size_t rows() const { return headings_.empty() ? 0 : cells_.size() / headings_.size(); }
    std::string_view text(std::size_t row, std::size_t column) const; // both from 0
    std::size_t line(std::size_t row, std::size_t column) const;      // on which the cell begins, from 1
    char separator() const { return separator_; }
    const std::vector<Problem>& problems() const { return problems_; }

private:
    friend class TableReader;
    struct Cell {
        std::uint32_t begin, size, line;
    };
    const Cell& cell(std::size_t row, std::size_t column) const { return cells_[row * headings_.size() + column]; }

    std::string texts_; // of all cells, one after another
    std::vector<Cell> cells_;
    std::vector<std::string> headings_;
    std::size_t heading_line_ = 1;
    std::vector<Problem> problems_;
    char separator_ = ',';
};

// Reads what it can and names everything else as a problem; throws nothing of its own.
Table read_table(std::string_view text);

} // namespace cotter::desk
