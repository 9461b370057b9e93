#pragma once

// A page of a desk: heading, paper, and under it the buttons, above the title block: one row, or more where the glass
// is narrow.

#include "sheet.hpp"

#include <string>
#include <vector>

namespace cotter::ui {

// The buttons, and one more unless it is "".
std::vector<std::string> with_button(std::vector<std::string> buttons, const char* more);

// Fills the glass, writes the heading, draws the paper's edges; gives the paper.
Box begin_page(Sheet& sheet, const std::string& heading, const std::vector<std::string>& buttons);

double foot_height(const Sheet& sheet, const std::vector<std::string>& buttons); // mm

// The word of what was pressed, "" for none; `chosen` is drawn as the one whose page this is.
std::string draw_foot(Sheet& sheet, const std::vector<std::string>& buttons, const std::string& chosen = "");

} // namespace cotter::ui
