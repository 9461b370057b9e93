#pragma once

// A pad for a number: keys of glove size, or the keyboard. What was typed stands large beside them.

#include "sheet.hpp"

#include <string>
#include <vector>

namespace cotter::ui {

class NumberPad {
public:
    struct Words {
        std::string question, hint, unit;
        bool sign = false, point = false;  // keys that there are
        std::vector<std::string> ways_out; // buttons besides the pad
    };

    // The index of the way out that was pressed. Enter on the keyboard is the last one.
    std::optional<std::size_t> draw(Sheet& sheet, const Words& words);

    bool stands = false; // what is typed is of before: the first key begins anew
    std::string typed;

private:
    void draw_typed(Sheet& sheet, const Words& words, const Box& line);
    void rub_out_last();
    void press(char key, const Words& words);
};

} // namespace cotter::ui
