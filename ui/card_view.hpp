#pragma once

// The lift card on the screen: hold points in columns under the plate, the buttons where the Cab's stand.

#include "choice.hpp"

#include "lift_card.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

struct CardView {
    Plate plate;
    std::string note; // beside or under the plate
    std::vector<words::CardPoint> points;
    std::vector<Choice::Option> options; // at most two
    std::string back;                    // "": none
};

// The index of what was pressed; options.size() for back.
std::optional<std::size_t> draw(Sheet& sheet, const CardView& view);

} // namespace cotter::ui
