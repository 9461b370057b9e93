#pragma once

#include "question.hpp"

namespace cotter::rules {

// By a supervisor, or by two people from a phone; never to a time before the newest record. Source: firm's own rule.
bool is_confirmed(const Clock& clock, const ClockNotice& notice);

} // namespace cotter::rules
