#pragma once

// Who may do what, by the roles of each person's newest admission. Source: firm's own rule; "anyone may stop, few may
// clear".

#include "book.hpp"

#include <string>

namespace cotter::desk {

using records::Book;

bool has_role(const Book& book, const std::string& person, const std::string& role);
bool may_clear(const Book& book, const std::string& person); // a defect or a stop, and so may correct a record
bool may_admit(const Book& book, const std::string& person); // people, with their cards and roles

// Has anybody been admitted who may admit others? Before that the first of them is written by whoever begins the book.
bool is_staffed(const Book& book);

// FormError if the record is one that its author may not make: an admission, a person's card, a correction.
void check_entitled(const Book& book, const records::Entry& entry);

} // namespace cotter::desk
