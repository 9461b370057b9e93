#pragma once

#include "question.hpp"

#include <optional>

namespace cotter::rules {

// Leg angle to the vertical: the lower band ends at 45 degrees, both ends included; over 60 is refused.
// Source: EN 818-4 (grade 8), Table 3.
enum class Band { to_45, to_60, over };

// Working load limit of a grade 8 chain sling in kg, looked up and never multiplied; nothing for a size or number of
// legs that the table does not have. A single leg hangs vertical and uses the first column.
std::optional<Kilograms> grade8_wll(Millimetres chain, std::int64_t legs, Band band);

// From this share of the limit on, symmetry must be confirmed. Source: EN 818-4 / EN 818-6 (load under 80 % of WLL).
inline constexpr int symmetry_percent = 80;

// How the legs stand, the greater of a measured angle and the one that spread and length give.
// Nothing: unknown, impossible, or one leg that is not vertical.
struct LegAngle {
    Band band;
    double degrees;
};
std::optional<LegAngle> leg_angle(const Sling& sling);

// Half the lug distance (two legs) or half the lug rectangle's diagonal (four) over the leg length, in degrees;
// 90 where the legs are too short.
double spread_angle_degrees(double half_spread_mm, double leg_length_mm);

// What the sling itself allows at its angle: the lowest of tag and table; nothing if either that must be there is not.
std::optional<Kilograms> sling_limit(const Sling& sling, Band band);

// What a tag's limit is where fewer legs are used than it is for: one of two a half; of three or four, two are two
// thirds and one is a third; three of four is all of it. Rounded down. Source: EN 818-6, from memory.
Kilograms tag_for_fewer_legs(Kilograms tag, std::int64_t legs, std::int64_t used);

} // namespace cotter::rules
