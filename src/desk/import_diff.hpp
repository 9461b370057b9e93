#pragma once

// What changes between two states of a thing, field by field, as an export would have them.

#include "import.hpp"
#include "thing.hpp"

namespace cotter::desk {

std::vector<Change> changes_between(const Shape& shape, const Json& before, const Json& now);

} // namespace cotter::desk
