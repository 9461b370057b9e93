#pragma once

#include <SQLiteCpp/Database.h>

#include <string>
#include <utility>
#include <vector>

namespace cotter::db {

// File name without ending, and text, of every file in migrations/, in order; made at build (CMake: cotter_embed).
const std::vector<std::pair<std::string, std::string>>& embedded_migrations();

int newest_version();
int version_of(SQLite::Database& database); // user_version

// Brings the tables up to the newest version, each step in a transaction of its own.
void migrate(SQLite::Database& database);

} // namespace cotter::db
