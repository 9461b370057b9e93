// A copy of the whole book, made inside the program while it is in use; and a book that carries on from one.

#include "key_file.hpp"
#include "new_book.hpp"
#include "opening.hpp"
#include "store.hpp"
#include "store_error.hpp"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/Exception.h>

namespace cotter::db {

namespace fs = std::filesystem;

namespace {

fs::path unfinished(const fs::path& path) { return path.string() + ".new"; }

void refuse_what_is_there(const fs::path& path)
{
    if (fs::exists(path))
        throw StoreError{path.string() + " is there already; a new name is accepted"};
}

void clear_unfinished(const fs::path& path)
{
    for (const char* ending : {"", "-wal", "-shm", "-journal"})
        fs::remove(unfinished(path).string() + ending);
}

// Whatever goes wrong leaves no half copy.
class ClearsUp {
public:
    explicit ClearsUp(const fs::path& path) : path_{path} { clear_unfinished(path_); }
    ClearsUp(const ClearsUp&) = delete;
    ClearsUp& operator=(const ClearsUp&) = delete;
    ~ClearsUp()
    try {
        clear_unfinished(path_);
    } catch (const fs::filesystem_error&) { // the disk is gone; there is nothing more to do
    }

private:
    fs::path path_;
};

void put_in_place(const fs::path& path)
{
    sync_path(unfinished(path));
    fs::rename(unfinished(path), path);
    sync_path(path.parent_path());
}

void check_whole(const Verified& found, const fs::path& path)
{
    if (!found.damaged.empty())
        throw DamagedError{path.string() + ": " + found.damaged.front().what};
}

} // namespace

void Store::copy_to(const fs::path& path) const
try {
    SQLite::Database copy{path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
    SQLite::Backup backup{copy, *database_};
    backup.executeStep(-1);
} catch (const SQLite::Exception& e) {
    throw StoreError{path.string() + ": the copy is not made: " + e.what()};
}

// Under another name first, opened and verified there, synced, then renamed.
records::Head Store::back_up(const fs::path& given) const
{
    const fs::path path = fs::absolute(given);
    refuse_what_is_there(path);
    const ClearsUp clears_up{path};
    copy_to(unfinished(path));
    const Verified found = open(unfinished(path))->verify();
    check_whole(found, path);
    put_in_place(path);
    return state().head;
}

// The copied key would fork the device's records: the book carries on as a new device, which says whom it replaces.
std::unique_ptr<Store> Store::restore(const fs::path& backup, const fs::path& given, const NewBook& facts)
{
    const fs::path path = fs::absolute(given);
    refuse_what_is_there(path);
    refuse_what_is_there(key_path(path));
    const ClearsUp clears_up{path};
    const auto source = open(backup);
    check_whole(source->verify(), backup);
    source->copy_to(unfinished(path));
    const records::DeviceKey key = records::DeviceKey::make();
    {
        Store store{open_file(unfinished(path)), key};
        store.rebuild(); // sealed by the new key
        records::Entry entry = device_entry(facts, key);
        entry.body["sample"] = source->sample_;
        entry.body["replaces"] = source->device_;
        store.append({entry});
        write_back_the_log(*store.database_);
    }
    write_key(path, key);
    put_in_place(path);
    return open(path);
}

} // namespace cotter::db
