#pragma once

#include "app.hpp"
#include "outside.hpp"

#include <functional>
#include <optional>
#include <string>

namespace cotter::ui {

struct WindowFacts {
    bool size_is_asked_for = false;
    int width = 1280, height = 800;
    std::optional<double> px_per_mm; // nothing: from the monitor's own size
    std::string layout_file;         // "": none; else what stands where is written there after each frame
    std::string picture_file; // "": none; else the first settled frame is written there (PPM) and the window closes
    std::function<void()> after_first_frame; // the opening check
};

// Is there a display to open a window on?
bool has_display();

// Opens the window and runs until it is closed. False: there is no display.
bool run_window(const Outside& outside, Door door, const WindowFacts& facts);

} // namespace cotter::ui
