#pragma once

#include <string>
#include <utility>
#include <vector>

namespace cotter::cli {

// An example of each command that runs as it stands; BOOK stands for the path of a sample book, CHART for a chart file.
const std::vector<std::pair<std::string, std::string>>& examples();

} // namespace cotter::cli
