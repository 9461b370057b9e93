#pragma once

#include <cstddef>
#include <vector>

namespace cotter::rules {

using Links = std::vector<std::vector<std::size_t>>; // for each thing those that it names
using Past = std::vector<std::vector<bool>>;         // a row a thing: what it names, what those name, and so on

Past past_of(const Links& links);

} // namespace cotter::rules
