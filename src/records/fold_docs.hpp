#pragma once

// What the records of one fact say together, by kind of fact. The records come in order, corrections applied.

#include "fact.hpp"

namespace cotter::records {

void fill(Fact& fact, const std::vector<Record>& said);

// The newest body of a kind. Where several heads differ, the safer value governs and the field stands in "disputed".
Json newest_body(const std::vector<Record>& said, const std::string& kind);

} // namespace cotter::records
