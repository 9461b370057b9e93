#pragma once

// A unit that arrives: what was seen at the gate, and what that makes of it.

#include "work.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::desk {

enum class Condition { whole, in_part, not_to_be_used, refused };

struct Arrival {
    std::string unit, site, why = {}; // why: where it is refused or not to be used
    bool serial_seen = false, evidence_seen = false;
    std::vector<std::string> missing = {}, photos = {}; // loose parts by their names; pictures by their SHA-256
};

// Units that may arrive here: those on the way to the site first, then all others that are not at it.
std::vector<std::string> units_to_receive(const Book& book, const std::string& site);

// The loose parts that its record lists: "headplate", "pin", "keeper".
std::vector<std::string> listed_parts(const Book& book, const std::string& unit);

// By digits alone, since a glove types no letters; false where the record's serial has none.
bool is_serial(const Book& book, const std::string& unit, const std::string& digits);

bool was_sent_here(const Book& book, const std::string& unit, const std::string& site);

// The best that what was seen allows: whole only with its serial seen and nothing missing.
Condition best_condition(const Arrival& arrival);

// The record; says itself whether a dispatch to the site was missing.
Entry receive(const Hand& hand, const Book& book, const Arrival& arrival, Condition condition);

} // namespace cotter::desk
