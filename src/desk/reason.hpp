#pragma once

// A sentence that waits for its language: its text is a key of the catalogues, with a place {} for each value. The
// layers over desk say it (words::said).

#include <string>
#include <vector>

namespace cotter::desk {

struct Reason {
    std::string about; // what it is about, by name; "": nothing by itself
    std::string text;
    std::vector<std::string> values = {};
    friend bool operator==(const Reason&, const Reason&) = default;
};

std::string in_english(const Reason& reason); // for files

// Marks a literal for the catalogues.
constexpr const char* key(const char* english) { return english; }

} // namespace cotter::desk
