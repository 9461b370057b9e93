#pragma once

// Who has given a PIN at this screen. One person holds it until a time without a touch that the site sets; anybody else
// signs once.

#include "outside.hpp"
#include "pin_pad.hpp"

#include <functional>
#include <string>

namespace cotter::ui {

class Lock {
public:
    explicit Lock(const Outside& outside) : outside_{outside} {}

    desk::Hand hand(const std::string& by); // with the PIN, if that person has given it

    // Each goes on at once where no PIN is asked or it was given, else when it is given.
    void sign_in(const std::string& person, std::function<void()> then); // from now on this person holds the screen
    void sign(const std::string& person, std::function<void()> then);    // for one signature

    // A new PIN, chosen here by the one whose it is; `by`, who sets it, has signed.
    void choose(const std::string& by, const std::string& person, std::function<void()> then);

    void watch(bool may_lock); // before each drawing
    bool has_the_glass() const { return asked_ != Asked::nothing; }
    void let_go(); // nobody holds the screen any more

    enum class Left { nothing, back, somebody_else, stop };
    Left draw(Sheet& sheet); // what was pressed other than the PIN

private:
    enum class Asked { nothing, pin, locked, leaving, chosen, again, none };

    void ask(const std::string& person, bool holds, std::function<void()> then);
    PinPad::Words words() const;
    Left leave(Sheet& sheet); // what the one before has begun would be lost
    void take(const std::string& digits);
    void try_it(const std::string& digits);
    void set_it(const std::string& digits);
    void open();
    double seconds_to_lock() const;

    const Outside& outside_;
    PinPad pad_;
    Asked asked_ = Asked::nothing;
    std::string person_, by_, chosen_, said_;
    bool holds_ = false;
    std::function<void()> then_;
    std::string holder_, once_;
    double touched_ = 0; // by the clock that only runs on
};

} // namespace cotter::ui
