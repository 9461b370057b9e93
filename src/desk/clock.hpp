#pragma once

// Is the device's time believed? A notice doubts it, until somebody has compared it with another clock.

#include "work.hpp"

namespace cotter::desk {

// All notices with their confirmations, as a lift is asked with them; none in a sample book.
rules::Clock clock_of(const Book& book, rules::Instant now);
bool is_confirmed(const Book& book, const records::Fact& notice, rules::Instant now);

// Today's supervisor has compared the clock with another; `notice` is the hash of the record that doubted it.
Entry confirm_clock(const Hand& hand, const Book& book, const std::string& notice);

// A notice if the wall clock stands before the newest record or the program's building, or drifted from the boot clock;
// nothing if it is believed, or an unconfirmed notice says the same.
struct ClockFacts {
    rules::Instant wall{0};
    rules::Instant built{0}; // the program; no clock that is right stands before it
    std::string boot;
    std::int64_t boot_seconds = 0;
};
inline constexpr std::int64_t clock_drift_seconds = 120; // source: firm's own rule
std::vector<Entry> watch_the_clock(const Hand& hand, const Book& book, const ClockFacts& facts);

} // namespace cotter::desk
