#pragma once

#include "sheet.hpp"

#include <string>

namespace cotter::ui {

// A line of text for the system's keyboard, in Site and Yard; `name` tells it from others on the sheet. It has the
// keyboard when its page opens; Escape and the arrows up and down give it back, with what was typed. True: Enter.
bool field(Sheet& sheet, const std::string& name, const Box& box, std::string& text);

} // namespace cotter::ui
