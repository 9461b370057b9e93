#pragma once

// A pad for a PIN of six digits: glove keys, or the keyboard. The digits themselves are never drawn.

#include "sheet.hpp"

#include <string>
#include <vector>

namespace cotter::ui {

class PinPad {
public:
    struct Words {
        std::string question, hint;
        std::vector<std::string> ways_out; // buttons besides the pad
    };
    enum class Press { nothing, complete, way_out };

    PinPad() = default;
    PinPad(const PinPad&) = delete;
    PinPad& operator=(const PinPad&) = delete;
    ~PinPad() { clear(); }

    Press draw(Sheet& sheet, const Words& words);
    const std::string& digits() const { return digits_; }
    std::size_t way_out() const { return way_out_; }
    void clear(); // overwrites what was typed

private:
    void dots(Sheet& sheet, double x, double y) const;
    void take(char digit);
    void rub_out_last();
    void read_keyboard();

    std::string digits_;
    std::size_t way_out_ = 0;
};

} // namespace cotter::ui
