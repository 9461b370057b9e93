#pragma once

#include "book.hpp"

#include <string>
#include <vector>

namespace cotter::ui {

// People whose admission has `wanted` in that list: roles, models, setting_models.
std::vector<std::string> people_with(const records::Book& book, const char* list, const std::string& wanted);

// People who may write a record of that kind, by its x-by; everybody where it names none.
std::vector<std::string> who_may_write(const records::Book& book, const std::string& kind);

} // namespace cotter::ui
