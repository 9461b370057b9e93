#pragma once

// What the program gives the screens: the book, the clock, and a hand to write with.

#include "compat.hpp"
#include "looks.hpp"
#include "picture.hpp"
#include "receipt.hpp"
#include "work.hpp"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

// Asks for a PIN where one is needed, then goes on.
struct Signing {
    using Then = std::function<void()>;
    std::function<void(const std::string& person, Then)> in;   // the person holds the screen from now on
    std::function<void(const std::string& person, Then)> once; // for one signature
    std::function<void(const std::string& by, const std::string& person, Then)> choose; // a new PIN
};

// Pictures that can be taken along: dropped on the window, or newly in the watched folder.
struct Photos {
    std::function<std::vector<std::string>()> found;                     // paths, newest first
    std::function<std::optional<std::string>(const std::string&)> bytes; // of a path
    std::function<std::string(const std::string& bytes)> keep;           // beside the book; gives its SHA-256
    std::function<void()> watch = {}; // draw again once others are found; asked for on each frame
};

// What it is, and what mends it; "": nothing is wrong.
struct Notice {
    std::string what, mend;
};

struct Outside {
    records::Book& book;
    std::function<rules::Instant()> now;
    std::function<desk::Hand(const std::string& by)> hand;
    std::function<records::Receipt()> receipt; // of the book as it is now
    std::function<double()> ticks;             // seconds of a clock that only runs on
    std::function<std::optional<std::string>(const std::string& sha256)> page = {}; // bytes of a picture, if it is here
    std::function<ImTextureID(const Picture&)> texture = {};                        // the window's own; one at a time
    std::function<std::string()> print_day = {}; // this site's day as a page; gives the file's name. Empty: no printing
    std::function<Notice()> notice = {};         // what the site should know of the device
    std::function<void()> day_is_over = {};      // somebody has stood down, and seen the receipt
    std::function<void(const Looks&)> keep_looks = {}; // for the next start
    Photos photos = {};
    std::function<void()> find = {};         // opens the search by tag
    std::function<void()> keep_drawing = {}; // more is to be done than one frame has time for
    Signing signing = {};                    // the app's own (lock.hpp)
};

// What a page was worked out from: the newest record, the minute, the language. Another one, and it is worked out anew.
std::string looked_at(const Outside& outside);
// Of so many units: those of a great fleet wait for the next record, day or language; a page says since when they
// stand.
std::string looked_at(const Outside& outside, std::size_t units);

// Chosen from now on, and kept for the next start.
void choose_looks(const Outside& outside, const Looks& looks);

} // namespace cotter::ui
