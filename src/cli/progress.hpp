#pragma once

#include "terminal.hpp"

#include <chrono>
#include <cstddef>
#include <string>

namespace cotter::cli {

// Says on standard error how far something is, where that is a terminal and it takes over half a second, and whether
// it was cancelled with Ctrl-C.
class Progress {
public:
    Progress() = default;
    ~Progress();
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;

    // "reading 300 of 1000"; false once it is cancelled.
    bool at(const std::string& doing, std::size_t done, std::size_t total);

private:
    using Clock = std::chrono::steady_clock;

    Interrupts interrupts_;
    bool shows_ = shows_to_a_person();
    Clock::time_point next_ = Clock::now() + std::chrono::milliseconds{500};
    bool shown_ = false;
};

} // namespace cotter::cli
