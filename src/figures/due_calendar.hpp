#pragma once

#include "due_section.hpp"

namespace cotter::figures {

// Weeks from Monday under each other, a cell a day with what falls due on it; today's cell is drawn thick. A cell that
// holds no more says how many are left out.
Figure due_calendar(const std::vector<DueMark>& marks, rules::Day today, rules::Day monday, int weeks, double width,
                    double height, const std::function<std::string(rules::Day)>& name_of);

} // namespace cotter::figures
