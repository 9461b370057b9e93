#pragma once

#include "chart.hpp"

#include <array>
#include <optional>
#include <string_view>
#include <vector>

namespace cotter::rules {

// Where the lift point goes from stack to bed, worked out from where the machine stands. Lengths in mm, angles in
// degrees. Plan: the slew axis is the origin, x runs along the trench, y across towards it. Heights are of the arm-nose
// pin over the ground under the tracks, as a rated lift chart has them.

enum class Beside { alongside, in_line }; // tracks beside the trench and along it; or behind its end, looking along it

struct Footprint {
    double half_length = 0, half_width = 0; // of what touches the ground, over all: tracks or wheels
    double slew_ahead = 0;                  // slew axis ahead of its middle
};

struct MoveAsked {
    Beside beside = Beside::alongside;
    Footprint footprint;
    double stand_off = 0; // from the trench's edge to the nearest track
    double trench_width = 0;
    double bed = 0;              // below the ground under the tracks, positive
    double lay_along = 0;        // alongside: the laid pipe's middle from the slew axis; in line: from the trench's end
    double pick_radius = 0;      // to the middle of the pipe on the stack
    double pick_bearing = 0;     // from ahead, to the trench's side positive
    double pick_level = 0;       // of the stack's or the wagon's bed over the ground under the tracks
    double clear = 0;            // kept under the pipe while it slews: edge, rail and stack, over that ground
    double outside = 0;          // of the pipe, socket included
    double pin_above_crown = 0;  // from the pipe's crown to the arm-nose pin, all that hangs between
    double centre_below_pin = 0; // of attachment and pipe together
    bool rigid = false;          // swings with the arm; else it hangs plumb
    double greatest_tilt = 0;    // rigid only
};

enum class Stage { pick, slew, edge, lower, laid };
inline constexpr std::array<Stage, 5> stages{Stage::pick, Stage::slew, Stage::edge, Stage::lower, Stage::laid};

struct MovePoint {
    Stage stage;
    double radius, centre_radius; // slew axis to arm-nose pin; to the combined centre of gravity at greatest tilt
    double height;
    double bearing; // from ahead, to the trench's side positive
};

// The whole move, in order; the slew at the greater of the two radii that it goes between.
std::vector<MovePoint> move_points(const MoveAsked& asked);

// The same with the corner that a pipe lifted plumb goes round before it is taken further out.
std::vector<MovePoint> way_of(const std::vector<MovePoint>& points);

// Over the front while the arm's line leaves the footprint through its short side; over both where the slew does not
// stay in one. Source: firm's own rule; charts name "front" and "side" and seldom say where one ends.
Sector sector_of(const MoveAsked& asked, const std::vector<MovePoint>& points);

// A point of the move on the chart: DECISION's reading, the greatest radius of all with each height.
struct Reading {
    Stage stage;
    Millimetres radius, height;
    std::optional<Kilograms> rated; // nothing: off the chart
};
std::vector<Reading> readings(const std::vector<MovePoint>& points, const Chart& chart, Sector over);

// The whole way, each point at its own radius: where it starts and ends, on each line of the chart that it crosses, and
// between them. A near point may lie in a blank that the greatest radius passes by.
std::vector<Reading> readings_along(const std::vector<MovePoint>& points, const Chart& chart, Sector over);

// The one that leaves least: off the chart before the lowest rating; of equal ones the first.
Reading governing(const std::vector<Reading>& readings);

// On the mounting of a rigid attachment, N m: load x 9.81 x horizontal distance from the mounting pin to the combined
// centre of gravity.
double mounting_moment_nm(const MoveAsked& asked, double load_kg);

} // namespace cotter::rules
