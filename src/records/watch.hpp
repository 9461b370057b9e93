#pragma once

// Long work says now and then how far it is, and may be told to stop.

#include <cstdint>
#include <functional>

namespace cotter::records {

// So many are done, of so many; false: stop.
using Watch = std::function<bool(std::int64_t done, std::int64_t of)>;

} // namespace cotter::records
