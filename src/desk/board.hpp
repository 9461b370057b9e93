#pragma once

// The due board: every unit with its setting, place, latest date and what stops it.

#include "register.hpp"

#include "finding.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::desk {

struct BoardRow {
    std::string unit, tag;
    std::string label; // the tag, with its owner if another has it too
    std::string owner, kind, model, setting, place;
    std::optional<rules::Day> latest;
    std::optional<std::int64_t> days_left; // negative when out of date
    bool evidence_here = false;            // a legible copy of the governing paper
    std::vector<rules::Finding> findings;  // of the unit itself: papers, data, defects, stops, whereabouts
    bool stopped() const;
    bool scrapped() const; // nothing falls due for it any more
};

// One unit's.
BoardRow board_row(const Book& book, const std::string& unit, rules::Instant now, rules::Day day);
bool comes_before(const BoardRow& a, const BoardRow& b); // on the board

// By latest date, those without one first, then by label: of some units, of all.
std::vector<BoardRow> board_of(const Book& book, const std::vector<std::string>& units, rules::Instant now,
                               rules::Day day);
std::vector<BoardRow> board(const Book& book, rules::Instant now, rules::Day day);

// The JSON of one row, as `cotter board` prints it.
Json to_json(const BoardRow& row);

} // namespace cotter::desk
