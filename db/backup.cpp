// A copy of the whole book, made inside the program while it is in use; and a book that carries on from one.

#include "key_file.hpp"
#include "new_book.hpp"
#include "opening.hpp"
#include "private_copy.hpp"
#include "stops_on_all.hpp"
#include "store.hpp"
#include "telling.hpp"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/Exception.h>

#include <sqlite3.h>

namespace cotter::db {

namespace fs = std::filesystem;

namespace {

constexpr const char* why =
    "The book was restored from a copy. What was recorded after the copy is not in it, perhaps a "
    "stop. Look at the unit, and at what is written elsewhere, before this stop is lifted";

// What is wrong is said of the file that was given.
std::unique_ptr<Store> open_copy(const fs::path& copy, const fs::path& of)
try {
    return Store::open(copy);
} catch (const DamagedError&) {
    throw DamagedError{of.string() + ": damaged; `cotter salvage` carries on from what can still be read of it"};
} catch (const StoreError& e) {
    std::string said = e.what();
    if (const auto at = said.find(copy.string()); at != std::string::npos)
        said.replace(at, copy.string().size(), of.string());
    throw StoreError{said};
}

} // namespace

void Store::copy_to(const fs::path& path, const records::Watch& watch) const
try {
    constexpr int pages = 256; // at once
    SQLite::Database copy{path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
    SQLite::Backup backup{copy, *database_};
    int step = SQLite::OK;
    while ((step = backup.executeStep(pages)) == SQLite::OK)
        tell(watch, backup.getTotalPageCount() - backup.getRemainingPageCount(), backup.getTotalPageCount());
    if (step != SQLITE_DONE)
        throw StoreError{path.string() + ": the copy is not made: the book is in use"};
} catch (const SQLite::Exception& e) {
    throw StoreError{path.string() + ": the copy is not made: " + e.what()};
}

// Under another name first, opened and verified there, synced, then renamed.
records::Head Store::back_up(const fs::path& given, const records::Watch& watch) const
{
    const fs::path path = fs::absolute(given);
    refuse_what_is_there(path);
    const Unfinished copy{path};
    copy_to(copy.path(), part(watch, 0, 2));
    check_whole(open(copy.path())->verify(part(watch, 1, 2)), path);
    copy.put_in_place();
    return state().head;
}

// The copied key would fork the device's records: the book carries on as a new device, which says whom it replaces, and
// up to which record. What was recorded after the copy is not in it, so every unit is stopped. The copy is left as it
// is.
std::unique_ptr<Store> Store::restore(const fs::path& backup, const fs::path& given, const NewBook& facts)
try {
    const fs::path path = fs::absolute(given);
    refuse_what_is_there(path);
    refuse_what_is_there(key_path(path));
    const Unfinished made{path};
    refuse_in_use(backup);
    const PrivateCopy copy{backup};
    const auto source = open_copy(copy.path(), backup);
    check_whole(source->verify(), backup);
    source->copy_to(made.path());
    const records::DeviceKey key = records::DeviceKey::make();
    {
        Store store{open_file(made.path()), key};
        store.rebuild(); // sealed by the new key
        records::Entry entry = device_entry(facts, key);
        entry.body["sample"] = source->sample_;
        entry.body["replaces"] = source->device_;
        const records::Head head = source->state().head;
        entry.body["replaced_head"] = {{"seq", head.seq}, {"hash", head.hash}};
        std::vector<records::Entry> entries =
            stops_on_all([&](const auto& visit) { source->table_.for_each(visit); }, facts, "restore", why);
        entries.insert(entries.begin(), std::move(entry));
        store.append(std::move(entries));
        write_back_the_log(*store.database_);
    }
    write_key(path, key);
    made.put_in_place();
    return open(path);
} catch (const SQLite::Exception& e) {
    throw StoreError{given.string() + ": the book is not made: " + e.what()};
}

} // namespace cotter::db
