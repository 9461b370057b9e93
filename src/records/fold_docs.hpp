#pragma once

// What the records of one fact say together, by kind of fact. The records come in order, corrections applied.

#include "fact.hpp"

#include <set>

namespace cotter::records {

// A record as it reads now: what was seen, by whom and when, is as it was; a correction changes the words alone.
// What it knew stands in `entry.after`, also by way of records that say nothing any more.
struct SaidRecord : Record {
    std::string as_of; // hash of the record that gave it its body: itself, or a correction
    Entry worded;      // of that record: who gave the body, and when
    bool is_corrected() const { return as_of != hash; }
};
using Said = std::vector<SaidRecord>;

void fill(Fact& fact, const Said& said);

// The newest body of a kind. Where several heads differ, the safer value governs and the field stands in "disputed".
Json newest_body(const Said& said, const std::string& kind);

// Hashes of what these records know, also by way of records of another kind.
std::set<std::string> known_to(const Said& records, const Said& all);

} // namespace cotter::records
