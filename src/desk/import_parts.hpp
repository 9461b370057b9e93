#pragma once

// The parts of a thing, a row each: a chart's grid points, a plan's standing places.

#include "import_sheet.hpp"
#include "thing.hpp"

namespace cotter::desk {

// Puts the parts that stand on these rows into the thing, in place of those that it had. A part that it had keeps what
// the table has no column for; a row that says nothing of a part has none.
void read_parts(Sheet& sheet, const Shape& shape, const std::vector<std::size_t>& rows, Json& thing);

} // namespace cotter::desk
