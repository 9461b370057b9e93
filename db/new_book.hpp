#pragma once

// What the making of a book and the restoring of one share.

#include "store.hpp"

namespace cotter::db {

// The first record of a device.
records::Entry device_entry(const NewBook& facts, const records::DeviceKey& key);

// What is renamed is the file alone, so everything must stand in it.
void write_back_the_log(SQLite::Database& database);

} // namespace cotter::db
