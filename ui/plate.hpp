#pragma once

#include "dimension.hpp"
#include "sheet.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

// The verdict plate: sign, MAY LIFT or DO NOT LIFT, one line of count. It never moves.
struct Plate {
    bool may_lift = false;
    bool load_up = false;
    std::string line;
};
inline constexpr double plate_mm = 25.8; // its height
double plate_width(const Sheet& sheet);  // mm: of the longest verdict in this language
void draw(Sheet& sheet, const Plate& plate, const Box& box);

// A finding: sign, sentence, reason, its dimension line, and the one button that clears it. One that waits for another
// has neither sign nor button.
struct Row {
    std::optional<figures::Sign> sign;
    std::string headline, detail, rule; // rule: whose it is, after the detail where there is room
    std::optional<figures::Figure> figure;
    std::string button; // "": none
};

inline constexpr double row_mm = 25;

// Draws the rows that fit, from `first` on; the last place becomes "more" where they do not. Says what was pressed:
// the index of a row's button, or rows.size() for "more".
std::optional<std::size_t> draw(Sheet& sheet, const std::vector<Row>& rows, std::size_t first, const Box& box);
std::size_t rows_that_fit(const Box& box);

} // namespace cotter::ui
