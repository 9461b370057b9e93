#pragma once

// The coming weeks of a hire fleet, down a staff: what orders want of what is in date, an arrow against its tick.

#include "figure.hpp"

#include <string>
#include <vector>

namespace cotter::figures {

struct FleetCell {
    int wanted = 0, in_date = 0;
    std::string text; // "1 of 7"
};
struct FleetWeek {
    std::string week; // "23 Nov"
    bool is_short = false;
    std::vector<FleetCell> cells; // one a column
};

std::size_t fleet_columns_that_fit(double width);

// As many columns as there are headings; each cell to its column's greatest number.
Figure fleet_weeks(const std::vector<std::string>& headings, const std::vector<FleetWeek>& weeks, double width,
                   double height);

} // namespace cotter::figures
