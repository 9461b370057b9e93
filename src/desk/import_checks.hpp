#pragma once

// Does a thing make sense as a whole, besides its cells?

#include "thing.hpp"

#include <functional>
#include <vector>

namespace cotter::desk {

struct Fault {
    std::string field; // a column's; "" for the whole thing
    std::string why;
};

// Has the row something in the column of that field?
using Says = std::function<bool(const std::string& field)>;

// A wall thickness is taken into the barrel.
std::vector<Fault> take_wall(Json& pipe, const Says& says);

std::vector<Fault> faults_in(const Shape& shape, const Json& before, const Json& now);

} // namespace cotter::desk
