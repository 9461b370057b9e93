#pragma once

#include "board.hpp"
#include "figure.hpp"

#include <optional>

namespace cotter::ui {

// A unit has a sign only when something must be done.
std::optional<figures::Sign> sign_of(const desk::BoardRow& row);

} // namespace cotter::ui
