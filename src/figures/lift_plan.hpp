#pragma once

// A lift plan drawn to scale: from above, in section, on the machine's chart, and the pipe's path into the trench.

#include "figure.hpp"
#include "move.hpp"
#include "trench_path.hpp"

#include <vector>

namespace cotter::figures {

struct StandDrawn {
    rules::MoveAsked move;
    double zone = 0, tail_swing = 0; // mm, radius from the slew axis
    double pipe_length = 0;
};

Figure from_above(const StandDrawn& stand, double width, double height);

// Across the trench, or along it where the machine stands behind its end.
Figure in_section(const StandDrawn& stand, double width, double height);

struct ChartDrawn {
    const rules::Chart& chart;
    rules::Sector over = rules::Sector::both; // both: the lower of the two
    std::vector<rules::MovePoint> points;
    double load_kg = 0;
};

// Cells with their rating, hatched the closer the more of it the load takes; the move's points over them.
Figure chart_by_use(const ChartDrawn& drawn, double width, double height);

struct TrenchDrawn {
    const rules::PathAsked& asked;
    const std::vector<rules::Pose>& path;
    std::size_t step = 0;
    double ground = 0; // mm over what the path's heights are counted from
};

// Along the trench: ground, struts, bed, the laid pipe, the body at one step of its path and at its end, the way of its
// middle.
Figure in_trench(const TrenchDrawn& drawn, double width, double height);

} // namespace cotter::figures
