#pragma once

// A table of CSV as records to be written: what is new, what changes, what stays, and every cell that is not accepted.
// Nothing here writes; the caller appends all entries at once, or none.

#include "csv_in.hpp"
#include "import_columns.hpp"
#include "work.hpp"

#include <functional>

namespace cotter::desk {

struct Change {
    std::string field, was, is; // as an export has them
};

enum class Outcome { added, changed, same };

struct Imported {
    std::size_t line = 0; // where the thing begins
    std::string id;
    Outcome outcome = Outcome::same;
    std::vector<Change> changes; // of what stands in the book; none for what is new
};

struct Import {
    std::vector<Imported> things;
    std::vector<Entry> entries;           // what is to be written; none where there is a problem
    std::vector<std::size_t> entry_lines; // where the thing of each begins
    std::vector<Problem> problems;        // by line and column
    bool cancelled = false;               // then there is nothing else in it
};

// Called after each thing with the rows that are done and all rows; false cancels.
using Progress = std::function<bool(std::size_t done, std::size_t total)>;

// A thing that is in the book keeps what the table has no column for; an empty cell says that it is not known.
// FormError if whoever's hand it is may not record these things.
Import prepare_import(const Book& book, const Hand& hand, What what, std::string_view table, const Progress& progress);

} // namespace cotter::desk
