#pragma once

#include "sheet.hpp"

#include <string>

namespace cotter::ui {

// A line of text for the system's keyboard, in Site and Yard. `name` tells it from others on the sheet.
void field(Sheet& sheet, const std::string& name, const Box& box, std::string& text);

} // namespace cotter::ui
