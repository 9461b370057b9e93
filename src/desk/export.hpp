#pragma once

// The register as a table of CSV, in the columns that an import reads: imported again it changes nothing.

#include "import_columns.hpp"
#include "register.hpp"

namespace cotter::desk {

std::string export_table(const Book& book, What what);

} // namespace cotter::desk
