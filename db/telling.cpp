#include "telling.hpp"

#include <sqlite3.h>

namespace cotter::db {

void tell(const records::Watch& watch, std::int64_t done, std::int64_t of)
{
    if (watch && !watch(done, of))
        throw StoppedError{"ended before it was done"};
}

void tell_now_and_then(const records::Watch& watch, std::int64_t done, std::int64_t of)
{
    if (done % 64 == 0)
        tell(watch, done, of);
}

records::Watch part(const records::Watch& whole, std::int64_t k, std::int64_t n)
{
    if (!whole)
        return {};
    return [whole, k, n](std::int64_t done, std::int64_t of) {
        return whole((k * 1000 + (of > 0 ? done * 1000 / of : 0)) / n, 1000);
    };
}

LongStatements::LongStatements(SQLite::Database& database, const records::Watch& watch) : database_{database}
{
    if (!watch)
        return;
    watch_ = [this, watch](std::int64_t done, std::int64_t of) {
        done_ = done;
        of_ = of;
        stopped_ = stopped_ || !watch(done, of);
        return !stopped_;
    };
    constexpr int operations = 20'000;
    sqlite3_progress_handler(database_.getHandle(), operations, &LongStatements::ask, this);
}

LongStatements::~LongStatements() { sqlite3_progress_handler(database_.getHandle(), 0, nullptr, nullptr); }

// Through C: nothing may be thrown.
int LongStatements::ask(void* self)
{
    auto& asked = *static_cast<LongStatements*>(self);
    try {
        return asked.watch_(asked.done_, asked.of_) ? 0 : 1;
    } catch (const std::exception&) {
        return 0;
    }
}

} // namespace cotter::db
