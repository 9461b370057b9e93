#pragma once

// What the program gives the screens: the book, the clock, and a hand to write with.

#include "receipt.hpp"
#include "work.hpp"

#include <functional>
#include <string>

namespace cotter::ui {

struct Outside {
    records::Book& book;
    std::function<rules::Instant()> now;
    std::function<desk::Hand(const std::string& by)> hand;
    std::function<records::Receipt()> receipt; // of the book as it is now
    std::function<double()> ticks;             // seconds of a clock that only runs on
};

} // namespace cotter::ui
