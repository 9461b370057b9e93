#pragma once

#include "book.hpp"

#include <string>
#include <vector>

namespace cotter::ui {

// People whose admission has `wanted` in that list: roles, models, setting_models.
std::vector<std::string> people_with(const records::Book& book, const char* list, const std::string& wanted);

} // namespace cotter::ui
