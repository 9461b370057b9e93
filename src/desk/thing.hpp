#pragma once

// A thing of the register as its row has it: one JSON object with its id, and for a person with the admission.

#include "cell.hpp"
#include "import_columns.hpp"
#include "work.hpp"

namespace cotter::desk {

// What the book says of it; {} where it is not there. A name that was removed is missing.
Json thing_in(const Book& book, const Shape& shape, const records::Fact& fact);
Json thing_in(const Book& book, const Shape& shape, const std::string& id);

// The records that make `now` of `before`: none where they say the same.
std::vector<Entry> entries_for(const Hand& hand, const Shape& shape, const Json& before, const Json& now);

// Null, missing and empty objects are one: not known.
Json known_in(const Json& thing);

// Its parts, [] where there are none.
Json parts_of(const Shape& shape, const Json& thing);

// What tells a part from the others, as an export has it: "front 0 4.5".
std::string key_of(const Shape& shape, const Json& part);

} // namespace cotter::desk
