#pragma once

#include "question.hpp"

#include <vector>

namespace cotter::rules {

// The lines of an item's sheet that are to be answered now: not answered this shift, or stale since.
// Items that have no sheet of their own give none.
std::vector<Id> lines_to_answer(const Question& question, const Item& item);

} // namespace cotter::rules
