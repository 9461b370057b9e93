#pragma once

// What a person chose for this glass: sheet, size of text, language, gloves at a desk. It is the glass's, not the
// book's.

#include "language.hpp"

#include <array>
#include <string>

namespace cotter::ui {

using words::say;
using words::say_many;

inline constexpr std::array text_sizes{100, 125, 150}; // percent

struct Looks {
    bool night = false;
    int text_percent = 100; // one of text_sizes
    words::Language language = words::Language::english;
    bool gloves = false; // in Site and Yard; the Cab is always for gloves
    bool operator==(const Looks&) const = default;
};

const Looks& looks();
void set_looks(const Looks& looks); // a language without its catalogue is left as it was

// A word a line, for the file beside the book; what is not known in it is passed over.
std::string to_text(const Looks& looks);
Looks read_looks(const std::string& text);

} // namespace cotter::ui
