#pragma once

// A table under the columns of what it holds. Whatever is not accepted in it is kept as a problem with its place.

#include "cell.hpp"
#include "csv_in.hpp"
#include "import_columns.hpp"

#include <map>

namespace cotter::desk {

class Sheet {
public:
    Sheet(const Shape& shape, std::string_view text);

    std::size_t rows() const { return table_.rows(); }
    std::size_t line(std::size_t row) const { return table_.line(row, 0); }
    bool has(const Column& column) const { return places_.contains(&column); }
    bool has_parts() const;
    std::string cell(std::size_t row, const Column& column) const; // plain; "" where there is no such column

    // Puts what the row's cell says into the thing; nothing where the table has no such column.
    void put(Json& thing, std::size_t row, const Column& column);
    void put_unsaid(Json& thing, std::size_t row, const Column& column) const; // throws FormError instead

    // Something is wrong with what stands there, or with the whole row.
    void say(std::size_t row, const Column* column, const std::string& why);

    bool is_headed() const { return headed_; } // every column is known, and none is missing
    const std::vector<Problem>& problems() const { return problems_; }
    std::vector<Problem> take_problems(); // by line and column

private:
    struct Place {
        std::size_t column; // of the table
        Unit unit;
    };
    void read_heading(std::size_t column, const std::vector<const Column*>& columns);
    void need(const Column& column);
    void say_heading(std::size_t column, const std::string& why);
    bool is_empty(std::size_t column) const;

    const Shape& shape_;
    Table table_;
    std::map<const Column*, Place> places_;
    std::vector<Problem> problems_;
    bool headed_ = true;
};

} // namespace cotter::desk
