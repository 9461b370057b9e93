#pragma once

// A pipe whose size is read with a tape alone: round about and across.

#include "quantity.hpp"

#include <cmath>
#include <cstdlib>
#include <numbers>

namespace cotter::rules {

// Diameter from the girth, to the nearest millimetre: girth over pi. Source: plane geometry.
inline Millimetres across(Millimetres girth)
{
    return Millimetres{std::llround(static_cast<double>(girth.count()) / std::numbers::pi)};
}

// Two readings by tape that may be of one pipe. Source: firm's own rule; BS EN 1916 allows a bore of DN 450 +-8 mm
// (from memory), so what differs by more is a slip of the tape or another pipe.
inline constexpr Millimetres tape_tolerance{8};

inline bool agree(Millimetres one, Millimetres other)
{
    return std::llabs(one.count() - other.count()) <= tape_tolerance.count();
}

} // namespace cotter::rules
