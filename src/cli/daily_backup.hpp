#pragma once

// A copy of the book each day, in the place that the book's record names.

#include "session.hpp"

#include <string>

namespace cotter::cli {

// Why there is no copy, or no newer one, and what mends it; "": there is one, or no place is named.
struct NotCopied {
    std::string why, mend;
};

// Is there a copy of today? Also true where no place is named.
bool is_backed_up_today(const Session& session, const db::Store& store);

// Makes today's copy, in place of an older one of today, and lets go of the oldest. A missing stick stops no lift. The
// watch must not use the book.
NotCopied back_up_today(const Session& session, const db::Store& store, const std::string& path,
                        const records::Watch& watch = {});

} // namespace cotter::cli
