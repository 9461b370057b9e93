#pragma once

// How a store file is opened and made. Why each step is there: DEVELOPERS.md, "Opening a store".

#include <SQLiteCpp/Database.h>

#include <filesystem>
#include <memory>

namespace cotter::db {

inline constexpr int application_id = 0x434F5452; // "COTR"

// Opens an existing store; StoreError, with the file left byte for byte as it was, if it is foreign, newer, held by
// another program or not readable. Every setting is read back.
std::unique_ptr<SQLite::Database> open_file(const std::filesystem::path& path);

// Makes an empty store at a path where there is none, in WAL mode and with the newest tables.
std::unique_ptr<SQLite::Database> make_file(const std::filesystem::path& path);

} // namespace cotter::db
