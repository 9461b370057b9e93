#pragma once

namespace cotter::rules {

// The least radius of the exclusion zone around the slew axis, all lengths mm: tail swing plus margin, or the greatest
// radius of the lift plus what the load reaches beyond its middle plus margin, whichever is greater. It reaches half
// its plan diagonal where it hangs, its toppling length where it stands on its end, and where it rolls off, half its
// plan diagonal and the way down to what stops it. Source: firm's own rule.
struct ZoneFacts {
    double tail_swing = 0, greatest_radius = 0;
    double load_length = 0, load_width = 0;
    double margin = 0;
    double toppling = 0; // the length of what stands on its end; 0: nothing does
    double roll = 0;     // down the slope to what stops it; 0: level
};
double least_zone_radius(const ZoneFacts& facts);

} // namespace cotter::rules
