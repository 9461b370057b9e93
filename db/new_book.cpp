#include "new_book.hpp"

#include "store_error.hpp"

#include <SQLiteCpp/Exception.h>

namespace cotter::db {

void write_back_the_log(SQLite::Database& database)
try {
    if (database.execAndGet("PRAGMA wal_checkpoint(TRUNCATE)").getInt() != 0)
        throw StoreError{"the new book cannot be written back whole; try again"};
} catch (const SQLite::Exception& e) {
    throw StoreError{std::string{"the new book is not made: "} + e.what()};
}

records::Entry device_entry(const NewBook& facts, const records::DeviceKey& key)
{
    records::Entry entry;
    entry.kind = "device";
    entry.about = entry.who = entry.by = key.device();
    entry.how = "name only";
    entry.at = facts.at;
    entry.day = facts.day;
    entry.body = {{"name", facts.device_name}, {"public_key", key.public_hex()}, {"sample", facts.sample}};
    return entry;
}

} // namespace cotter::db
