#pragma once

// What a record names must be there: a kind's schema says so with x-refers (and x-about-refers).

#include "book.hpp"

namespace cotter::desk {

// FormError naming the field and the id that the book does not know.
void check_references(const records::Book& book, const records::Entry& entry);

} // namespace cotter::desk
