#pragma once

// A page that is read: a heading, lines with a sign and what more there is to say, buttons under it. Lines may be
// opened.

#include "scroll.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

struct ReadLine {
    bool is_heading = false;
    std::optional<figures::Sign> sign;
    std::string words, more;
    std::string opens = ""; // "": nothing; else the word of its button
};

class ReadPage {
public:
    struct Pressed {
        std::optional<std::size_t> line;
        std::string button; // "": none
    };
    // Above the title block, which is the caller's.
    Pressed draw(Sheet& sheet, const std::string& title, const std::vector<ReadLine>& lines,
                 const std::vector<std::string>& buttons);
    // The lines alone; the index of what was opened.
    std::optional<std::size_t> list(Sheet& sheet, const std::vector<ReadLine>& lines, const Box& area);
    void back_to_the_top() { scroll_.at = 0; }
    TouchScroll& scroll() { return scroll_; } // its button belongs to the foot of who draws the lines alone

private:
    void measure(const Sheet& sheet, const std::vector<ReadLine>& lines, const Box& area);

    TouchScroll scroll_;
    std::size_t measured_ = 0;    // a hash of what was measured, and for which glass
    std::vector<double> heights_; // mm, of each line
};

} // namespace cotter::ui
