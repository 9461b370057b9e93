#pragma once

// Who may do what. A kind's schema names the roles that may write it (x-by) and correct it (x-corrected-by); whoever is
// not named there may write it all the same, where nobody is. Source: firm's own rule; "anyone may stop, few may
// clear".

#include "book.hpp"

#include <string>
#include <vector>

namespace cotter::desk {

using records::Book;

using Roles = std::vector<std::string>;

Roles roles_of(const Book& book, const std::string& person); // of the newest admission
bool has_role(const Book& book, const std::string& person, const std::string& role);

// The roles in which whoever cleared, lifted, assessed or confirmed did so, as it stands in a fact.
Roles written_as(const records::Json& deed);
bool is_competent(const records::Json& deed);
bool is_supervisor(const records::Json& deed);

// May somebody with these roles clear a defect or lift a stop? The roles are those in which the record was written.
bool may_clear(const Roles& roles);

// Has somebody entitled lifted the stop of this fact?
bool is_lifted(const records::Json& stop);

bool may_admit(const Book& book, const std::string& person);
std::vector<std::string> who_may_admit(const Book& book);

// By chance, and nothing of the name: it stands in signed records for ever, a name can be taken away.
std::string new_person_id();

// A stop and what went wrong: whoever says it, anybody may write it down.
bool may_be_said_by_anyone(const records::Entry& entry);

// Has anybody been admitted? Before that a book is open to whoever begins it.
bool is_staffed(const Book& book);

// NotEntitled if the record is one that its author may not make.
void check_entitled(const Book& book, const records::Entry& entry);
bool is_entitled(const Book& book, const records::Entry& entry);

} // namespace cotter::desk
