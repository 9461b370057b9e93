#pragma once

// A new book with all that can still be read of a damaged one.

#include "store.hpp"

#include <filesystem>
#include <string>
#include <vector>

namespace cotter::db {

struct Salvaged {
    std::string device; // the new one
    std::int64_t records = 0;
    std::vector<Lost> lost;
    std::int64_t private_values = 0;
    std::int64_t private_lost = 0;    // values that cannot be read, or are not those that were recorded
    std::vector<std::string> stopped; // units: all of them, if any record is lost
    bool is_whole() const { return lost.empty() && private_lost == 0; }
};

} // namespace cotter::db
