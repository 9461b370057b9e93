#pragma once

namespace cotter::rules {

// The least radius of the exclusion zone around the slew axis, all lengths mm: tail swing plus margin, or the greatest
// radius of the lift plus half the load's plan diagonal plus margin, whichever is greater. Source: firm's own rule.
struct ZoneFacts {
    double tail_swing = 0, greatest_radius = 0;
    double load_length = 0, load_width = 0;
    double margin = 0;
};
double least_zone_radius(const ZoneFacts& facts);

} // namespace cotter::rules
