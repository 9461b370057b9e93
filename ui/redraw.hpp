#pragma once

#include "quantity.hpp"

namespace cotter::ui {

// Says how long the loop may sleep. Dear ImGui needs a few frames after each event before all of it has settled.
class Redraw {
public:
    static constexpr int settle_frames = 3;

    void woken() { owed_ = settle_frames; } // an event came, or the data changed
    void drew() { owed_ -= owed_ > 0 ? 1 : 0; }
    bool owes_a_frame() const { return owed_ > 0; }

    // At rest until the minute turns: the clock on screen shows no seconds.
    double seconds_to_wait(bool moving, rules::Instant now) const
    {
        return owed_ > 0 || moving ? 0 : static_cast<double>(60 - now.count() % 60);
    }

private:
    int owed_ = settle_frames;
};

} // namespace cotter::ui
