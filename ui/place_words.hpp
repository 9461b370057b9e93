#pragma once

#include "book.hpp"

#include <string>

namespace cotter::ui {

// Where a unit is, as a person says it: a site by its name, on the way there, refused there, "" as not known.
std::string place_in_words(const records::Book& book, const std::string& place);

} // namespace cotter::ui
