#include "allocator.hpp"

#include <sqlite3.h>

namespace cotter::tests {

namespace {

sqlite3_mem_methods real{};
long left = -1;
bool failed = false;

bool fails()
{
    if (left < 0)
        return false;
    if (left > 0) {
        --left;
        return false;
    }
    return failed = true;
}

void* allocate(int size) { return fails() ? nullptr : real.xMalloc(size); }
void* reallocate(void* old, int size) { return fails() ? nullptr : real.xRealloc(old, size); }

} // namespace

void Allocator::install()
{
    sqlite3_config(SQLITE_CONFIG_GETMALLOC, &real);
    sqlite3_mem_methods failing = real;
    failing.xMalloc = allocate;
    failing.xRealloc = reallocate;
    sqlite3_config(SQLITE_CONFIG_MALLOC, &failing);
}

void Allocator::fail_at(long n)
{
    left = n;
    failed = false;
}

bool Allocator::has_failed() { return failed; }

} // namespace cotter::tests
