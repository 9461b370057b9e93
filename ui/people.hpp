#pragma once

#include "choice.hpp"

#include "book.hpp"

#include <string>
#include <vector>

namespace cotter::ui {

// People whose admission has `wanted` in that list: roles, models, setting_models.
std::vector<std::string> people_with(const records::Book& book, const char* list, const std::string& wanted);

// People who may write a record of that kind, by its x-by; everybody where it names none.
std::vector<std::string> who_may_write(const records::Book& book, const std::string& kind);

// A question whose answers are people by their names; `if_none` is what to do where there is nobody.
Choice choice_of_people(const records::Book& book, const std::string& question, const std::vector<std::string>& people,
                        const std::string& if_none = "");

} // namespace cotter::ui
