#pragma once

// A unit found by its tag, from anywhere: typed on a keyboard or read by a scanner that types, closed by Enter; by
// touch the digits of its tag.

#include "board.hpp"
#include "in_steps.hpp"
#include "number_pad.hpp"
#include "outside.hpp"
#include "read_page.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class FindUnit {
public:
    explicit FindUnit(const Outside& outside) : outside_{outside} {}

    // Takes the characters of this frame; true when a tag is whole and its page opens.
    bool listen(bool digits_are_taken); // by a pad that has the glass
    void ask() { asks_ = true; }        // by touch
    bool is_open() const { return is_open_ || asks_; }
    void draw(Sheet& sheet);

private:
    void begin();
    void look(); // a part of a great fleet each frame
    void look_at(const std::string& unit);
    void add_units();
    void type(Sheet& sheet);
    bool is_asked_for(const std::string& tag) const;
    void add_unit(const desk::BoardRow& row);

    const Outside& outside_;
    std::string typed_, asked_, looked_of_;
    double typed_at_ = 0; // ticks; what is old is no tag
    bool is_open_ = false, asks_ = false;
    NumberPad pad_;
    std::vector<std::string> units_, found_; // of this book; those asked for, the very same tag first
    std::size_t same_ = 0;                   // how many of them have the very same
    InSteps steps_;
    std::vector<ReadLine> lines_;
    std::optional<std::size_t> lines_of_; // of so many that were looked at
    ReadPage reading_;
};

} // namespace cotter::ui
