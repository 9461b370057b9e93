#pragma once

// Does a record make sense, besides its form? FormError in one line if it does not.

#include "book.hpp"

namespace cotter::desk {

void check_sense(const records::Book& book, const records::Entry& entry);

// Some ids are named once: whoever would say something else of them corrects the record.
void check_new(const records::Book& book, const records::Entry& entry);

} // namespace cotter::desk
