#pragma once

#include "app.hpp"
#include "outside.hpp"

#include <functional>
#include <optional>
#include <string>

namespace cotter::ui {

// Long work shows itself by this, now and then; false: somebody ends it.
using Wait = std::function<bool(const Work&)>;

// What was done between two frames.
enum class Between { nothing, work, close }; // close: the window with it

struct WindowFacts {
    bool size_is_asked_for = false;
    int width = 1280, height = 800;
    std::optional<double> px_per_mm; // nothing: from the monitor's own size
    std::string layout_file;         // "": none; else what stands where is written there after each frame
    std::string picture_file; // "": none; else the first settled frame is written there (PPM) and the window closes
    std::function<Between(const Wait&)> between_frames; // the opening check, the day's copy; asked after each frame
};

// Is there a display to open a window on?
bool has_display();

// Opens the window and runs until it is closed. False: there is no display.
bool run_window(const Outside& outside, Door door, const WindowFacts& facts);

} // namespace cotter::ui
