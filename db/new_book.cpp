#include "new_book.hpp"

#include "key_file.hpp"
#include "store_error.hpp"

#include <SQLiteCpp/Exception.h>

namespace cotter::db {

namespace fs = std::filesystem;

void refuse_what_is_there(const fs::path& path)
{
    if (fs::exists(path))
        throw StoreError{path.string() + " is there already; a new name is accepted"};
}

Unfinished::Unfinished(const fs::path& path) : place_{path} { clear(); }

Unfinished::~Unfinished()
try {
    clear();
} catch (const fs::filesystem_error&) { // the disk is gone; there is nothing more to do
}

void Unfinished::clear() const
{
    for (const char* ending : {"", "-wal", "-shm", "-journal"})
        fs::remove(path().string() + ending);
}

void Unfinished::put_in_place() const
{
    sync_path(path());
    fs::rename(path(), place_);
    sync_path(place_.parent_path());
}

void check_whole(const Verified& found, const fs::path& path)
{
    if (!found.damaged.empty())
        throw DamagedError{path.string() + ": " + found.damaged.front().what};
}

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
