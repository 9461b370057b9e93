#pragma once

// A day chosen on three wheels: turned with a finger, stepped with buttons, or typed as eight digits on a keyboard.

#include "sheet.hpp"

#include "day.hpp"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class DateWheel {
public:
    explicit DateWheel(rules::Day shown) : day_{shown} {}

    // The index of the way out that was pressed; Enter is the last one.
    std::optional<std::size_t> draw(Sheet& sheet, const std::string& question, const std::string& hint,
                                    const std::vector<std::string>& ways_out);
    rules::Day day() const { return day_; }

private:
    enum Part { day_of_month, month, year };
    void turn(Part part, int by); // a month has its own last day
    void type();
    void wheel(Sheet& sheet, Part part, const Box& box);
    std::string text(Part part, int away) const; // so many steps from what stands

    rules::Day day_;
    std::string typed_;
    std::array<float, 3> dragged_{}; // px since the last step
    int held_ = -1;                  // the wheel under the finger
};

} // namespace cotter::ui
