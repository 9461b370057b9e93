#pragma once

#include <numbers>

namespace cotter::rules {

inline constexpr double gravity = 9.81; // m/s2

constexpr double radians(double degrees) { return degrees * std::numbers::pi / 180; }
constexpr double degrees(double radians) { return radians * 180 / std::numbers::pi; }

} // namespace cotter::rules
