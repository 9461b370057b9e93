#pragma once

// A shift from an empty store on: what the site has, then what a gang writes down in a day. Invented.

#include "work.hpp"

#include <vector>

namespace cotter::tests {

// With so many pipes laid. Each list is one signing, in order.
std::vector<std::vector<records::Entry>> a_shift(int pipes);

} // namespace cotter::tests
