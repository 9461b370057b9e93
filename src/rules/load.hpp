#pragma once

#include "case.hpp"

#include <optional>

namespace cotter::rules {

// The pipe with what is in and on it, kg; nothing: a mass is unknown. At dispatch no water or mud is counted.
std::optional<double> hanging_kg(const Case& asked, const Pipe& pipe);

// The pipe and everything below the i-th item, kg; the item's own mass is not counted.
std::optional<double> load_under(const Case& asked, std::size_t i, std::optional<double> hanging);

// Kg on the machine with that hanging from the attachment; shackles and a bucket left on count in a lift.
std::optional<double> load_on_machine(const Case& asked, bool hitch_too, std::optional<double> hanging);

// From this share of a rating on a load is near it. Source: firm's own rule.
inline constexpr int near_percent = 90;
bool is_near(double load, Kilograms rating); // over 90 % and not over

} // namespace cotter::rules
