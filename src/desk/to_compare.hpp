#pragma once

// What decides lifts, was typed from a page, and was not yet compared with it by a second person.

#include "register.hpp"

#include <string>
#include <utility>
#include <vector>

namespace cotter::desk {

struct Typed {
    std::string what, id, name;                             // model, chart, pipe or report
    std::string by;                                         // who wrote it down
    std::vector<std::string> pages;                         // pictures, by their SHA-256, newest last
    std::vector<std::pair<std::string, std::string>> lines; // what is said of it, and the value
};

// Newest change first.
std::vector<Typed> to_compare(const Book& book);

// Every picture that a record names: pages, photos, the copy of a report.
std::vector<std::string> pages_of(const Book& book);

} // namespace cotter::desk
