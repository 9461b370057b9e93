#pragma once

// Records that were lost from a damaged book: the device that carries it on names them in its first record. Only the
// book's own device is believed, the one that it replaces, and so on: anybody can make a key and sign with it.

#include "form.hpp"
#include "record.hpp"

#include <SQLiteCpp/Database.h>

#include <optional>
#include <string>
#include <vector>

namespace cotter::db {

// Records `first` to `last` of a device; `last` 0: from `first` on, to an end that nobody knows.
struct Lost {
    std::string device;
    std::int64_t first = 0, last = 0;
    std::int64_t after = 0, before = 0; // UTC seconds of the records kept on both sides; 0 for none
    std::string public_key;             // of the device, where its first record is lost
};

records::Json json_of(const Lost& lost);

// What a device's first record names, if that device signed it.
std::vector<Lost> named_lost(const records::Record& first);

class KnownGaps {
public:
    KnownGaps(SQLite::Database& database, std::string own) : database_{database}, own_{std::move(own)} {}
    bool has(const std::string& device, std::int64_t first, std::int64_t last);
    bool covers(const std::string& device, std::int64_t seq);
    std::string public_key(const std::string& device); // "" if it is not named
    const std::vector<Lost>& all();                    // read once one is asked for

private:
    SQLite::Database& database_;
    std::string own_; // device
    std::optional<std::vector<Lost>> all_;
};

} // namespace cotter::db
