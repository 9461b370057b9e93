#pragma once

// Writing, and a record of what was refused.

#include "book.hpp"

#include <string>
#include <vector>

namespace cotter::desk {

// Appends the entries, all or none. Where the author of one may not write it, that is a record too; then EntryError.
std::vector<records::Record> write(records::Book& book, std::vector<records::Entry> entries);

// A record that somebody was refused to write something.
void note_refusal(records::Book& book, const records::Entry& of, const std::string& why);

} // namespace cotter::desk
