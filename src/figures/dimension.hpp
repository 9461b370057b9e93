#pragma once

#include "figure.hpp"

#include <string>
#include <vector>

namespace cotter::figures {

// A number against its limit: an arrow from zero, the limit a thick tick across.
Figure limit_line(double value, double limit, const std::string& text, double width);

// A number against a range: both ends are ticks, the value points at its place between or outside them.
Figure range_line(double value, double least, double greatest, const std::string& text, double width);

// The ranges of a setting's states under each other, with the barrel as a line through all.
struct NamedRange {
    std::string name;
    double least = 0, greatest = 0;
};
Figure ranges_ladder(const std::vector<NamedRange>& ranges, double barrel, double width);

} // namespace cotter::figures
