#include "ground.hpp"

#include "physics.hpp"

#include <algorithm>
#include <cmath>

namespace cotter::rules {

namespace {

constexpr double newton_mm2_in_kpa = 1000.0; // 1 N/mm2 is 1,000 kPa

bool is_base(const Base& base) { return base.contact_length > 0 && base.shoe_width > 0 && base.gauge > 0; }

double mass(const Weights& s) { return s.machine_kg + s.load_kg; }

// Of all that stands, ahead of the slew axis along the arm.
double ahead(const Weights& s) { return (s.machine_kg * s.machine_ahead + s.load_kg * s.load_radius) / mass(s); }

} // namespace

std::optional<double> pressure_kpa(const Base& base, const Weights& standing, double slew_degrees)
{
    if (!is_base(base) || mass(standing) <= 0)
        return std::nullopt;
    const double turn = radians(slew_degrees);
    const double along = std::abs(base.slew_ahead + ahead(standing) * std::cos(turn));
    const double across = std::abs(ahead(standing) * std::sin(turn));
    const double effective_length = base.contact_length - 2 * along;
    if (across > base.gauge / 2 || effective_length <= 0)
        return std::nullopt;
    const double on_one = mass(standing) * gravity * (0.5 + across / base.gauge);
    return on_one / (base.shoe_width * effective_length) * newton_mm2_in_kpa;
}

std::optional<double> greatest_pressure_kpa(const Base& base, const Weights& standing, double from_degrees,
                                            double to_degrees)
{
    double greatest = 0;
    const int steps = std::max(1, static_cast<int>(std::ceil(std::abs(to_degrees - from_degrees))));
    for (int i = 0; i <= steps; ++i) {
        const auto here = pressure_kpa(base, standing, from_degrees + (to_degrees - from_degrees) * i / steps);
        if (!here)
            return std::nullopt;
        greatest = std::max(greatest, *here);
    }
    return greatest;
}

} // namespace cotter::rules
