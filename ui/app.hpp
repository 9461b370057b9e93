#pragma once

// The whole of the screens: three doors, the places behind them, and what is said when something cannot be done.

#include "cab.hpp"
#include "find_unit.hpp"
#include "lock.hpp"
#include "looks_page.hpp"
#include "site.hpp"
#include "stop.hpp"
#include "today.hpp"
#include "waiting.hpp"
#include "yard.hpp"

#include <optional>
#include <string>

namespace cotter::ui {

enum class Door { none, cab, site, yard, today };

class App {
public:
    App(Outside outside, Door door);
    App(const App&) = delete;
    App& operator=(const App&) = delete;
    void draw(Sheet& sheet);    // within a frame, in a window that fills the glass
    bool hears_fingers() const; // not for a moment after a press
    bool pressed_a_pad() const { return pressed_a_pad_; }

    // Long work has the glass from its beginning to its end; meanwhile the book is not read.
    void begin_work();
    void show_work(const Work& work) { work_ = work; }
    void end_work();
    bool is_work_ended() const { return work_ended_; } // by somebody

private:
    void press_settles();
    void draw_door(Sheet& sheet);
    void first_screen(Sheet& sheet);
    bool is_begun();
    void trouble(Sheet& sheet);
    void locked(Sheet& sheet);
    bool draw_what_is_asked(Sheet& sheet); // false where nothing is
    bool draw_what_is_found(Sheet& sheet); // by a tag
    Outside with_lock();
    void begin_places();

    Outside bare_; // as it was given
    Lock lock_;
    Outside outside_;
    Door door_;
    FindUnit found_;
    std::string trouble_;
    std::size_t turned_ = 0;
    bool is_begun_ = false;
    bool takes_digits_ = false; // the page of the last frame
    double pressed_at_ = -1;    // ticks
    bool pressed_a_pad_ = false;
    std::optional<Work> work_;
    TitleBlock title_; // as it was when the work began
    bool work_ended_ = false;
    std::optional<Cab> cab_;
    std::optional<Site> site_;
    std::optional<Yard> yard_;
    std::optional<Today> today_;
    std::optional<CallStop> stop_;
    std::optional<LooksPage> looks_;
};

// One frame of the app on the current ImGui context; the seconds after which it wants the next by itself.
double frame(App& app, const Theme& theme, const Spy& spy);

} // namespace cotter::ui
