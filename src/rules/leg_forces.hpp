#pragma once

#include <optional>
#include <vector>

namespace cotter::rules {

// What each leg of a chain sling carries when the hook hangs over the load's centre of gravity. Any lengths, as long as
// they are all of one unit; forces in the unit of the load (kg for kg).

// Where a leg is made fast on the load, from the load's centre of gravity.
struct Lug {
    double x = 0, y = 0; // plan
    double below = 0;    // the hook, positive
};

// Where the lugs of a load stand when it hangs still from legs of one length: the hook as far from each, the load
// turned until its centre of gravity, level with the lugs, is beneath the hook. `lugs`: from the centre of gravity, in
// the load's own plan, two or more. Nothing: legs too short, or no point is as far from every lug.
std::optional<std::vector<Lug>> hung(const std::vector<Lug>& lugs, double leg_length);

// Forces of two or three legs by statics alone; nothing if they cannot hold the load still without one of them pushing
// (centre of gravity outside the lugs), or if statics alone does not settle it (lugs in line).
// Source: equilibrium of forces at the hook, textbook statics.
std::optional<std::vector<double>> leg_forces(const std::vector<Lug>& lugs, double load);

// Four legs are stiff chain on a stiff load: which of them carry depends on a link's length. The greatest force of each
// over every two or three of them that can carry the load alone; legs that never carry have 0. Nothing: none can.
// Source: EN 818-6 rates four legs as three; that any set may carry alone is the safer reading, firm's own rule.
std::optional<std::vector<double>> greatest_leg_forces(const std::vector<Lug>& lugs, double load);

} // namespace cotter::rules
