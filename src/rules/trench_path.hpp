#pragma once

// A way for a pipe with its attachment down into a trench past struts, walings and the pipe already laid, seen in the
// section along the trench. Lengths in mm, x along the trench, y up; angles in degrees, counter-clockwise.

#include "polygon.hpp"

#include <optional>
#include <vector>

namespace cotter::rules {

struct Obstacle {
    Box box;
    double clearance = 0; // kept from it all round
};

// What hangs, as boxes about the pipe's middle, level: the barrel with its socket, the attachment.
using Body = std::vector<Box>;

struct Pose {
    double x = 0, y = 0; // of the body's middle
    double tilt = 0;
};

struct PathAsked {
    Body body;
    std::vector<Obstacle> obstacles;
    double bed = 0; // nothing goes below it
    double tilt_limit = 0;
    Interval laid; // where the middle may lie in the end, level and on the bed
};

// Poses from above everything to the bed; between two of them x, y and tilt change together, evenly.
// Empty: none was found. Deterministic. Every path is free by `is_free`; a path that has 20 mm to spare all round is
// found.
std::vector<Pose> find_path(const PathAsked& asked);

// Does the body keep its clearances, and stay above the bed, all the way from one pose to the other?
bool is_free(const PathAsked& asked, const Pose& from, const Pose& to);

// What the least distance to the obstacles and the bed, less what is to be kept, is in a pose; negative: too near.
double spare(const PathAsked& asked, const Pose& at);

// With all clearances cut to this share of theirs a path is found, to a sixteenth; nothing: not even with none.
std::optional<double> share_of_clearance(const PathAsked& asked);

} // namespace cotter::rules
