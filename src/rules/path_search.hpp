#pragma once

#include "trench_path.hpp"

namespace cotter::rules {

// No point of the body is farther from its middle, mm.
double reach_of(const Body& body);

// The search behind find_path: tilts in even steps; at each tilt bands of 5 mm height, in each the stretches of x that
// the obstacles, grown by body and clearance, leave free. A stretch is joined to those that it overlaps above, below,
// and at the next tilt. The growth includes what a turn by half a step moves (8 mm at most), so every join is free.
// Best-first (A*, Hart, Nilsson and Raphael 1968) by height still to lose, turning still to undo and the way still to
// go along the trench.
std::vector<Pose> search_path(const PathAsked& asked);

} // namespace cotter::rules
