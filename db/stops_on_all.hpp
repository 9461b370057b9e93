#pragma once

// What is lost may be a stop. So a book that may lack a record begins with a stop on every unit that it knows of, until
// somebody who may lift one has looked.

#include "new_book.hpp"

#include <functional>
#include <string>
#include <vector>

namespace cotter::db {

using EachRecord = std::function<void(const std::function<void(const records::Record&)>&)>;

// On every unit that a record is about or names: its own record may be one of those that are lost.
std::vector<records::Entry> stops_on_all(const EachRecord& each_record, const NewBook& facts, const std::string& by,
                                         const std::string& why);

} // namespace cotter::db
