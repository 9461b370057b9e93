#pragma once

#include <ostream>
#include <string>

namespace cotter::cli {

std::string names_of_lists(); // "units, people, pipes, charts or plans"

// How a list is written, and the columns of each kind of list.
void explain_import(std::ostream& out);

// The columns of one: what their cells hold and what else they are called. BadInput for a list that is none.
void explain_list(const std::string& name, std::ostream& out);

} // namespace cotter::cli
