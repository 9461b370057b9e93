#pragma once

#include <string>
#include <utility>
#include <vector>

namespace cotter::records {

// File name without ending, and text, of every file in kinds/; made at build (CMake: cotter_embed).
const std::vector<std::pair<std::string, std::string>>& embedded_kinds();

} // namespace cotter::records
