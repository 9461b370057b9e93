#pragma once

// Long work done a few steps at a time, between frames, so that a page never stands still; it can be stopped.

#include "outside.hpp"

#include <functional>

namespace cotter::ui {

class InSteps {
public:
    using Step = std::function<void(std::size_t)>; // the work on one of them

    void begin(std::size_t count);
    // Does steps for about so long and asks for another frame while some are left.
    void work(const Outside& outside, double milliseconds, const Step& step);
    // As `work`: a moment's work at once, then a little each frame.
    void work_on(const Outside& outside, const Step& step);

    void stop() { stopped_ = true; } // leaves the rest as it is
    void go_on() { stopped_ = false; }
    bool is_working() const { return !stopped_ && done_ < count_; }
    bool is_stopped() const { return stopped_ && done_ < count_; }
    std::size_t count() const { return count_; }
    std::size_t done() const { return done_; }

    // "Stop reading" while it works, "Read on" when stopped, "": all is done. And what such a button does.
    const char* button() const;
    void press(const std::string& button);

private:
    std::size_t count_ = 0, done_ = 0;
    bool stopped_ = false;
};

// "Read: 40 of 200 units".
std::string said_of(const InSteps& work);

} // namespace cotter::ui
