#pragma once

// What the program gives the screens: the book, the clock, and a hand to write with.

#include "work.hpp"

#include <functional>
#include <string>

namespace cotter::ui {

struct Outside {
    records::Book& book;
    std::function<rules::Instant()> now;
    std::function<desk::Hand(const std::string& by)> hand;
};

} // namespace cotter::ui
