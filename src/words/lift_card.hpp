#pragma once

// The lift card: what is asked at each hold point, and what to do when it is not so.

#include "hold_points.hpp"

#include <string>
#include <vector>

namespace cotter::words {

struct CardLine {
    std::string ask, if_not;
};
struct CardPoint {
    std::string title;
    bool by_touch = false; // asked on the screen; the others are spoken with the signaller, the load is up
    std::vector<CardLine> lines;
};

// Four points, in order; the whole card for the first lift of a type, else the short one.
std::vector<CardPoint> lift_card(const rules::CardFacts& facts);

} // namespace cotter::words
