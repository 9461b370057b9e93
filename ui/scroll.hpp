#pragma once

#include "sheet.hpp"

namespace cotter::ui {

// A thrown list: slows down with time, not with frames; never turns back, comes to rest.
class Fling {
public:
    void start() { speed_ = 0; }
    void drag(float moved, float seconds);
    bool moving() const;
    float advance(float seconds); // px to move by

private:
    float speed_ = 0; // px a second
};

// The place of a list under a finger, px from its top.
struct TouchScroll {
    float at = 0;
    Fling fling;
    bool held = false, dragging = false;
    float most = 0, page = 0; // px: how far it goes, how much is seen at once

    // The button that turns it, for who cannot or will not swipe: "Further down", at the end "To the top"; "" where
    // all is seen.
    const char* button() const;
    void press(const std::string& button);
};

// Moves the list by finger, wheel or Page Up and Down within 0..most px; while it moves the sheet is drawn again.
void touch_scroll(TouchScroll& list, Sheet& sheet, const Box& area, float most);

} // namespace cotter::ui
