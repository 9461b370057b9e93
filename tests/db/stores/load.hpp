#pragma once

// A store as a past version of the tables left it, with its key: NNNN.sql beside this file.

#include "db/raw.hpp"
#include "db/scratch.hpp"

#include <cstdio>
#include <string>

namespace cotter::tests {

// `stores` is this folder.
inline void load_store(const fs::path& stores, int version, const fs::path& book)
{
    char name[8];
    std::snprintf(name, sizeof name, "%04d", version);
    {
        Raw raw{book};
        raw.run(bytes_of(stores / (std::string{name} + ".sql")));
        raw.run("PRAGMA locking_mode = EXCLUSIVE; PRAGMA journal_mode = WAL"); // needs no shared memory
    }
    const fs::path key = book.string() + ".key";
    write_bytes(key, bytes_of(stores / (std::string{name} + ".key")));
    fs::permissions(key, fs::perms::owner_read | fs::perms::owner_write);
}

} // namespace cotter::tests
