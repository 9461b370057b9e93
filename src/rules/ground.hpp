#pragma once

#include <optional>

namespace cotter::rules {

// What a machine on two tracks does to the ground it stands on. Lengths in mm, masses in kg, pressure in kPa; x along
// the tracks, y across; the slew turns from straight ahead (0 degrees) to straight across (90).

// Two tracks beside each other, or the wheels' contact lengths taken as such where the planner says so.
struct Base {
    double contact_length = 0, shoe_width = 0;
    double gauge = 0;      // between the middles of the tracks
    double slew_ahead = 0; // slew axis ahead of the middle of the contact length
};

// All that stands on the base: the machine, and what it holds.
struct Weights {
    double machine_kg = 0, machine_ahead = 0; // its own centre of gravity ahead of the slew axis, behind: negative
    double load_kg = 0, load_radius = 0;      // under the arm-nose pin, and how far out
};

// Mean pressure on the effective area (B - 2e by L - 2e, whose middle is the load) under the more heavily loaded track.
// Nothing: the load's line is not over the base, so the machine tips; or a length that must be positive is not.
// Source: EN 1997-1:2004, D.4 (effective area); Meyerhof's effective width. Share of each track: lever rule.
std::optional<double> pressure_kpa(const Base& base, const Weights& standing, double slew_degrees);

// The greatest while the slew turns between two angles, to the degree. Nothing: it tips somewhere between.
std::optional<double> greatest_pressure_kpa(const Base& base, const Weights& standing, double from_degrees,
                                            double to_degrees);

// From the trench's edge to the nearest edge of a track, so that a line at 45 degrees up from the trench's bottom stays
// clear of it. Source: common practice, no source.
inline double stand_off_by_45_degrees(double depth) { return depth; }

} // namespace cotter::rules
