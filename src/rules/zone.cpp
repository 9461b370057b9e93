#include "zone.hpp"

#include <algorithm>
#include <cmath>

namespace cotter::rules {

double least_zone_radius(const ZoneFacts& facts)
{
    const double hanging = std::hypot(facts.load_length, facts.load_width) / 2;
    const double beyond = std::max(facts.toppling, hanging + facts.roll);
    return std::max(facts.tail_swing, facts.greatest_radius + beyond) + facts.margin;
}

} // namespace cotter::rules
