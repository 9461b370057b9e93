#pragma once

// What can be imported and exported, and the columns of each.

#include "column.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace cotter::desk {

enum class What { units, people, pipes, charts, plans };

// A thing is one row, or where it has parts as many rows as it has parts: a chart's grid points, a plan's standing
// places. Its own columns are then the same on all of them.
struct Shape {
    What what;
    std::string name; // "units"
    std::string kind; // of record; people have an admission besides
    std::string fact;
    std::vector<Column> own;   // the first is the id
    std::vector<Column> parts; // the first tell one part from another
    std::size_t keys = 0;      // how many do
    std::string list;          // the record's field with the parts, a JSON pointer
    std::string part;          // what a part is called
};

const std::vector<Shape>& shapes();
const Shape& shape_of(What what);
std::optional<What> what_named(std::string_view name);

// All columns, the thing's own first.
std::vector<const Column*> columns_of(const Shape& shape);

} // namespace cotter::desk
