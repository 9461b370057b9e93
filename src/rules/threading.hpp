#pragma once

#include <optional>
#include <string_view>

namespace cotter::rules {

// A pipe lowered between struts. All lengths mm, tilt in degrees.
struct Passage {
    double length = 0;    // of pipe or attachment, the greater
    double depth = 0;     // greatest outside diameter plus attachment above crown and below invert
    double gap = 0;       // between struts
    double max_tilt = 0;  // the model's limit
    double clearance = 0; // kept all round
    double strut_depth = 0;
    std::optional<double> room; // below the struts; nothing: not asked (a lift always asks it)
};

enum class Way { none, level, tilted, threaded };
std::string_view name(Way way);

struct Threading {
    Way way = Way::none;
    double tilt = 0;                  // degrees; 0 where there is no way
    std::optional<double> gap_needed; // if there is no way: the least gap that would do at any tilt allowed
};

// level: length within the gap; tilted: lowered whole; threaded: along its own axis. The smaller tilt is taken.
// Source: plane geometry of a rectangle length x depth; own derivation, checked against rotated polygons in
// tests/outside.
Threading thread(const Passage& passage);

// Plan length of the tilted rectangle, mm. Longer than `length` at first: greatest at atan(depth / length).
double plan_length(double length, double depth, double tilt_degrees);

} // namespace cotter::rules
