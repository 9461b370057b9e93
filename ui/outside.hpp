#pragma once

// What the program gives the screens: the book, the clock, and a hand to write with.

#include "receipt.hpp"
#include "work.hpp"

#include <functional>
#include <string>

namespace cotter::ui {

// Asks for a PIN where one is needed, then goes on.
struct Signing {
    using Then = std::function<void()>;
    std::function<void(const std::string& person, Then)> in;   // the person holds the screen from now on
    std::function<void(const std::string& person, Then)> once; // for one signature
    std::function<void(const std::string& by, const std::string& person, Then)> choose; // a new PIN
};

struct Outside {
    records::Book& book;
    std::function<rules::Instant()> now;
    std::function<desk::Hand(const std::string& by)> hand;
    std::function<records::Receipt()> receipt; // of the book as it is now
    std::function<double()> ticks;             // seconds of a clock that only runs on
    Signing signing = {};                      // the app's own (lock.hpp)
};

} // namespace cotter::ui
