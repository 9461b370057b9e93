#pragma once

// How far long work in a store is, told to whoever waits for it.

#include "store_error.hpp"
#include "watch.hpp"

#include <SQLiteCpp/Database.h>

namespace cotter::db {

// StoppedError if the watch says so.
void tell(const records::Watch& watch, std::int64_t done, std::int64_t of);

// As `tell`, of every 64th.
void tell_now_and_then(const records::Watch& watch, std::int64_t done, std::int64_t of);

// The k-th of n parts, from 0, as a share of the whole in thousandths.
records::Watch part(const records::Watch& whole, std::int64_t k, std::int64_t n);

// While it lives a long statement asks the watch too, with what it was told last; one that is stopped throws SQLite's
// error. The watch must not use the database then.
class LongStatements {
public:
    LongStatements(SQLite::Database& database, const records::Watch& watch);
    LongStatements(const LongStatements&) = delete;
    LongStatements& operator=(const LongStatements&) = delete;
    ~LongStatements();

    const records::Watch& watch() const { return watch_; } // to be told by
    bool stopped() const { return stopped_; }

private:
    static int ask(void* self);

    SQLite::Database& database_;
    records::Watch watch_;
    std::int64_t done_ = 0, of_ = 0;
    bool stopped_ = false;
};

} // namespace cotter::db
