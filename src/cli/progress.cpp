#include "progress.hpp"

#include <iostream>

namespace cotter::cli {

namespace {

constexpr auto erase_line = "\r\x1b[K";

}

Progress::~Progress()
{
    if (shown_)
        std::cerr << erase_line << std::flush;
}

bool Progress::at(const std::string& doing, std::size_t done, std::size_t total)
{
    if (shows_ && Clock::now() >= next_) {
        next_ = Clock::now() + std::chrono::milliseconds{100};
        shown_ = true;
        std::cerr << erase_line << doing << ' ' << done << " of " << total << std::flush;
    }
    return !interrupts_.asked();
}

} // namespace cotter::cli
