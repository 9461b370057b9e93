#pragma once

// What a book takes as its next record: it is signed by somebody who is there, names only what is there, makes sense,
// and is one that its author may write. The book's own form and chain are the store's matter.

#include "book.hpp"

namespace cotter::desk {

// FormError in one line: the field, what is wrong with it and what is accepted. An accepted entry says nothing of what
// is null, and has the roles in which its author wrote.
void accept(const records::Book& book, records::Entry& entry);

} // namespace cotter::desk
