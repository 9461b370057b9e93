#pragma once

// What the making of a book, its backup, restoring and salvage share.

#include "store.hpp"

namespace cotter::db {

void refuse_what_is_there(const std::filesystem::path& path);

// A file is made under another name, then put in its place. Whatever goes wrong leaves no half of it.
class Unfinished {
public:
    explicit Unfinished(const std::filesystem::path& path); // the place
    Unfinished(const Unfinished&) = delete;
    Unfinished& operator=(const Unfinished&) = delete;
    ~Unfinished();
    std::filesystem::path path() const { return place_.string() + ".new"; }
    void put_in_place() const;

private:
    void clear() const;
    std::filesystem::path place_;
};

void check_whole(const Verified& found, const std::filesystem::path& path); // DamagedError

// The first record of a device.
records::Entry device_entry(const NewBook& facts, const records::DeviceKey& key);

// What is renamed is the file alone, so everything must stand in it.
void write_back_the_log(SQLite::Database& database);

} // namespace cotter::db
