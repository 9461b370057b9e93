#pragma once

// The whole of the screens: three doors, the places behind them, and what is said when something cannot be done.

#include "cab.hpp"
#include "site.hpp"
#include "yard.hpp"

#include <string>

namespace cotter::ui {

enum class Door { none, cab, site, yard };

class App {
public:
    App(Outside outside, Door door);
    void draw(Sheet& sheet); // within a frame, in a window that fills the glass

private:
    void draw_door(Sheet& sheet);
    void first_screen(Sheet& sheet);
    void trouble(Sheet& sheet);

    Outside outside_;
    Door door_;
    std::string trouble_;
    std::size_t turned_ = 0;
    Cab cab_;
    Site site_;
    Yard yard_;
};

// One frame of the app on the current ImGui context.
void frame(App& app, const Theme& theme, const Spy& spy);

} // namespace cotter::ui
