#include "zone.hpp"

#include <algorithm>
#include <cmath>

namespace cotter::rules {

double least_zone_radius(const ZoneFacts& facts)
{
    const double load = facts.greatest_radius + std::hypot(facts.load_length, facts.load_width) / 2;
    return std::max(facts.tail_swing, load) + facts.margin;
}

} // namespace cotter::rules
