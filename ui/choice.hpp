#pragma once

#include "plate.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

// One question with a big answer each: who am I, which pipe, which hole do you see, which step comes now.
struct Choice {
    std::string question, hint;
    struct Option {
        std::string words, more; // no words: its place stays free
        std::optional<figures::Sign> sign;
        bool chosen = false; // it stands so now
        bool hold = false;   // it cannot be undone
    };
    std::vector<Option> options;
    bool apart = false; // opposites: the gap between them is wider
    std::string back = "Back";
    std::optional<Plate> plate = std::nullopt; // over the question, where a lift is answered
    double kept_right = 0;                     // mm that stay free for a picture
    std::string beside_back = "";              // one more button in its row
};

// The index of what was pressed; options.size() for back, one more for what stands beside it. `page` turns over where
// the options do not fit.
std::optional<std::size_t> draw(Sheet& sheet, const Choice& choice, std::size_t& page);

} // namespace cotter::ui
