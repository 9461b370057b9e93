#pragma once

// A day chosen on three wheels: turned with a finger, stepped with buttons, or typed as eight digits on a keyboard,
// year or day first. Nothing is taken that nobody chose: the wheels begin at a day that is only shown.

#include "sheet.hpp"

#include "day.hpp"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class DateWheel {
public:
    DateWheel(rules::Day shown, std::optional<rules::Day> chosen)
        : day_{chosen.value_or(shown)}, is_chosen_{chosen.has_value()}
    {
    }

    // The index of the way out that was pressed; Enter is the last one, which takes the day once one is chosen.
    std::optional<std::size_t> draw(Sheet& sheet, const std::string& question, const std::string& hint,
                                    const std::vector<std::string>& ways_out, rules::Day today);
    rules::Day day() const { return day_; }

private:
    enum Part { day_of_month, month, year };
    void turn(Part part, int by); // a month has its own last day
    void type();
    bool take_typed(); // false while the digits are no day
    void choose(rules::Day day);
    std::string heading() const;
    void wheel(Sheet& sheet, Part part, const Box& box);
    std::string text(Part part, int away) const; // so many steps from what stands

    rules::Day day_;
    bool is_chosen_;
    std::string typed_, said_;
    std::array<float, 3> dragged_{}; // px since the last step
    int held_ = -1;                  // the wheel under the finger
};

} // namespace cotter::ui
