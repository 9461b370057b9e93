#include "in_steps.hpp"

#include "language.hpp"

#include <chrono>

namespace cotter::ui {

void InSteps::begin(std::size_t count)
{
    count_ = count;
    done_ = 0;
    stopped_ = false;
}

void InSteps::work(const Outside& outside, double milliseconds, const Step& step)
{
    using Clock = std::chrono::steady_clock;
    const auto until = Clock::now() + std::chrono::duration_cast<Clock::duration>(
                                          std::chrono::duration<double, std::milli>{milliseconds});
    while (is_working() && Clock::now() < until) {
        stopped_ = true; // should it fail: it is not passed over, and not tried again and again
        step(done_);
        stopped_ = false;
        ++done_;
    }
    if (is_working() && outside.keep_drawing)
        outside.keep_drawing();
}

void InSteps::work_on(const Outside& outside, const Step& step)
{
    constexpr double at_once = 300, a_frame = 30; // ms
    work(outside, done_ == 0 ? at_once : a_frame, step);
}

const char* InSteps::button() const { return is_working() ? "Stop reading" : is_stopped() ? "Read on" : ""; }

void InSteps::press(const std::string& button)
{
    if (button == "Stop reading")
        stop();
    if (button == "Read on")
        go_on();
}

std::string said_of(const InSteps& work) { return say("Read: {} of {} units", work.done(), work.count()); }

} // namespace cotter::ui
