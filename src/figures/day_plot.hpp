#pragma once

#include "day.hpp"
#include "figure.hpp"

#include <functional>
#include <string>
#include <vector>

namespace cotter::figures {

struct DayMark {
    rules::Day day;
    int lifts = 0, stops = 0;
};

// Days along a base line: an upright as high as the lifts done, with their number; a cross and a number over the days
// on which lifts were stopped. `name_of` says a day as a person reads it.
Figure day_plot(const std::vector<DayMark>& days, double width, double height,
                const std::function<std::string(rules::Day)>& name_of);

} // namespace cotter::figures
