#pragma once

// Site, ahead: what is missing today, defects that are open and how old, what changes within 7, 14 and 30 days; lifts
// and stops per day.

#include "clear_defect.hpp"
#include "outlook.hpp"
#include "outside.hpp"
#include "read_page.hpp"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace cotter::ui {

class AheadPage {
public:
    explicit AheadPage(const Outside& outside) : outside_{outside} {}
    bool draw(Sheet& sheet); // false when it is left

private:
    void look(); // anew each minute, and when something was written
    void add_today(rules::Day today);
    void add_changes(rules::Day today);
    bool plot(Sheet& sheet);

    const Outside& outside_;
    std::string looked_of_;
    std::vector<ReadLine> lines_;
    std::vector<desk::DayCount> counts_;
    bool shows_days_ = false;
    std::vector<std::pair<std::size_t, desk::OpenDefect>> open_; // by their lines
    std::optional<ClearDefect> clears_;
    ReadPage reading_;
};

} // namespace cotter::ui
