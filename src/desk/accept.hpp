#pragma once

// What a book takes as its next record: it is signed by somebody who is there, names only what is there, makes sense,
// and takes no stop away but by somebody entitled. The book's own form and chain are the store's matter.

#include "book.hpp"

namespace cotter::desk {

// FormError in one line: the field, what is wrong with it and what is accepted.
void check_acceptable(const records::Book& book, const records::Entry& entry);

} // namespace cotter::desk
