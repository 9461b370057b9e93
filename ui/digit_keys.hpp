#pragma once

// The ten digits and "Rub out" as glove keys, for a PIN and for a number.

#include "sheet.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

inline constexpr double pad_edge_mm = 6;

// Wide glass: text at the left, keys at the right. Narrow: under each other. The keys never move.
struct PadPlace {
    double x, y, key_w; // of the keys
    double text_w, bottom;
};
PadPlace pad_place(const Sheet& sheet);

// What was pressed: a digit, '.' where there is a point, rub_out.
inline constexpr char rub_out = '\b';
std::optional<char> digit_keys(Sheet& sheet, const PadPlace& place, bool point);

// Buttons besides the pad, along the bottom: the index of the one that was pressed.
std::optional<std::size_t> ways_out_of(Sheet& sheet, const PadPlace& place, const std::vector<std::string>& words);

} // namespace cotter::ui
