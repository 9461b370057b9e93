#pragma once

namespace cotter::tests {

// SQLite's allocator, which can fail at the n-th allocation (0: the next) and from then on; -1: never. To be installed
// before SQLite is used.
class Allocator {
public:
    static void install();
    static void fail_at(long n);
    static bool has_failed();
};

} // namespace cotter::tests
