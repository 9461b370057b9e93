#pragma once

#include "question.hpp"

#include <optional>

namespace cotter::rules {

// Lengths in mm, density in kg/m3.
struct PipeShape {
    double bore_mm = 0, barrel_mm = 0, length_mm = 0;
    double socket_mm = 0, socket_length_mm = 0; // a socket not wider than the barrel adds nothing
};

// Density of reinforced concrete where none is stated.
// Source: published worked example, OD 900, wall 100, 2.5 m at 2,500 kg/m3 = 1,571 kg; EN 1991-1-1 gives 25 kN/m3.
inline constexpr double concrete_density = 2500;

// A stated mass under this share of the computed one is doubted. Source: firm's own rule.
inline constexpr int doubted_percent = 85;

// Hollow cylinder plus socket ring, in kg.
double cylinder_kg(const PipeShape& shape, double density);

// What is known of a pipe's mass. `computed` is before the allowance.
struct PipeMass {
    std::optional<double> computed;
    std::optional<double> used; // the greater of stated and computed with the allowance; computed must be known
};

PipeMass mass_of(const Pipe& pipe);

} // namespace cotter::rules
