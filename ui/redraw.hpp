#pragma once

namespace cotter::ui {

// Says how long the loop may sleep. Dear ImGui needs a few frames after each event before all of it has settled.
class Redraw {
public:
    static constexpr int settle_frames = 3;
    static constexpr double idle_seconds = 20; // the clock on screen is at most this late

    void woken() { owed_ = settle_frames; } // an event came, or the data changed
    void drew() { owed_ -= owed_ > 0 ? 1 : 0; }
    bool owes_a_frame() const { return owed_ > 0; }
    double seconds_to_wait(bool moving) const { return owed_ > 0 || moving ? 0 : idle_seconds; }

private:
    int owed_ = settle_frames;
};

} // namespace cotter::ui
