#pragma once

// Writing, and a record of what was refused.

#include "book.hpp"

#include <vector>

namespace cotter::desk {

// Appends the entries, all or none. Where the author of one may not write it, that is a record too; then EntryError.
std::vector<records::Record> write(records::Book& book, std::vector<records::Entry> entries);

} // namespace cotter::desk
