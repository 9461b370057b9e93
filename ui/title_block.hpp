#pragma once

#include "outside.hpp"
#include "sheet.hpp"

#include <string>
#include <vector>

namespace cotter::ui {

// The cells along the bottom, in the manner of ISO 7200: always there.
struct TitleBlock {
    struct Cell {
        std::string label, text;
    };
    std::vector<Cell> cells;
};

TitleBlock title_block(const Outside& outside, const std::string& role, const std::string& person);

double title_height(const Sheet& sheet); // mm
void draw(Sheet& sheet, const TitleBlock& block);

} // namespace cotter::ui
