#include "digit_keys.hpp"

#include "title_block.hpp"

#include <algorithm>

namespace cotter::ui {

PadPlace pad_place(const Sheet& sheet)
{
    constexpr double keys_mm = 110, edge = pad_edge_mm;
    const bool wide = !sheet.is_narrow();
    const double pad_h = 4 * glove.target + 3 * glove.gap, bottom = sheet.height() - title_height(sheet);
    const double low = bottom - (wide ? 6 : glove.target + 2 * glove.gap + 6);
    const double keys = wide ? keys_mm : sheet.width() - 2 * edge;
    return {wide ? sheet.width() - keys_mm - edge : edge, low - pad_h, (keys - 2 * glove.gap) / 3,
            wide ? sheet.width() - keys_mm - 3 * edge : sheet.width() - 2 * edge, bottom};
}

std::optional<char> digit_keys(Sheet& sheet, const PadPlace& place, bool point)
{
    const double step_x = place.key_w + glove.gap, step_y = glove.target + glove.gap;
    std::optional<char> pressed;
    const auto key = [&](const std::string& words, char means, int column, int row) {
        if (sheet.button(words, {place.x + column * step_x, place.y + row * step_y, place.key_w, glove.target}))
            pressed = means;
    };
    for (int i = 0; i < 9; ++i)
        key(std::string(1, static_cast<char>('1' + i)), static_cast<char>('1' + i), i % 3, i / 3);
    if (point)
        key(words::decimal("."), '.', 0, 3);
    key("0", '0', 1, 3);
    key("Rub out", rub_out, 2, 3);
    return pressed;
}

std::optional<std::size_t> ways_out_of(Sheet& sheet, const PadPlace& place, const std::vector<std::string>& words)
{
    const auto wanted = [&](const std::string& word) {
        return std::max(24.0, sheet.width_of({Letter::bold, true}, word) + 6);
    };
    double all = pad_edge_mm;
    for (const std::string& word : words)
        all += wanted(word) + glove.gap;
    const double room = sheet.is_narrow() ? sheet.width() : place.x - 1;
    const double squeeze = std::max(0.0, all - room) / static_cast<double>(std::max<std::size_t>(words.size(), 1));
    std::optional<std::size_t> pressed;
    double x = pad_edge_mm;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const double w = std::max(glove.target, wanted(words[i]) - squeeze);
        if (sheet.button(words[i], {x, place.bottom - glove.target - glove.gap, w, glove.target}))
            pressed = i;
        x += w + glove.gap;
    }
    if (goes_back() && !words.empty() && (words.front() == "Back" || words.front() == "Leave it"))
        return 0;
    return pressed;
}

} // namespace cotter::ui
