#pragma once

#include "store_error.hpp"
#include "watch.hpp"

namespace cotter::db {

// StoppedError if the watch says so.
inline void tell(const records::Watch& watch, std::int64_t done, std::int64_t of)
{
    if (watch && !watch(done, of))
        throw StoppedError{"the work was stopped; nothing has changed"};
}

// As `tell`, of every 64th.
inline void tell_now_and_then(const records::Watch& watch, std::int64_t done, std::int64_t of)
{
    if (done % 64 == 0)
        tell(watch, done, of);
}

} // namespace cotter::db
