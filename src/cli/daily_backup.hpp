#pragma once

// A copy of the book each day, in the place that the book's record names.

#include "session.hpp"

#include <string>

namespace cotter::cli {

// Makes today's copy if there is none yet, and lets go of the oldest. What is wrong, in one line, or "": a missing
// stick stops no lift.
std::string back_up_today(const Session& session, const db::Store& store, const std::string& path,
                          const records::Watch& watch = {});

} // namespace cotter::cli
