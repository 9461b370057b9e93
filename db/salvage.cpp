#include "salvage.hpp"

#include "found_records.hpp"
#include "key_file.hpp"
#include "kinds.hpp"
#include "new_book.hpp"
#include "opening.hpp"
#include "private_copy.hpp"
#include "private_rows.hpp"
#include "stops_on_all.hpp"
#include "store_error.hpp"

#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Transaction.h>

#include <algorithm>
#include <fstream>
#include <set>

namespace cotter::db {

namespace fs = std::filesystem;
using records::Entry;
using records::Json;
using records::Record;

namespace {

constexpr const char* why_stopped =
    "The book was damaged and records are lost, perhaps of this unit. Look at the unit, and at "
    "what is written elsewhere, before this stop is lifted";

// Bytes of a file's heading that are the same in every book. Source: SQLite, "Database File Format", 1.3.
const std::vector<std::pair<std::streamoff, std::string>> heading{
    {0, std::string{"SQLite format 3\0\x10\x00\x02\x02\x00\x40\x20\x20", 24}},
    {44, std::string{"\0\0\0\x04", 4}},
    {56, std::string{"\0\0\0\x01", 4}}};

// One wrong bit there, and SQLite takes the file for another's.
void mend_the_heading(const fs::path& copy)
{
    std::fstream file{copy, std::ios::binary | std::ios::in | std::ios::out};
    for (const auto& [offset, bytes] : heading)
        if (fs::file_size(copy) > 100)
            file.seekp(offset).write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
}

std::optional<records::DeviceKey> key_if_there(const fs::path& store)
try {
    return read_key(store);
} catch (const StoreError&) { // of a medium that keeps no access rights, say
    return std::nullopt;
}

// Is the book as sound as one that is restored? Asked of a copy of its own: opening writes.
bool is_whole(const fs::path& damaged)
try {
    const PrivateCopy copy{damaged};
    return Store::open(copy.path())->verify().damaged.empty();
} catch (const StoreError&) {
    return false;
}

FoundRecords find_records(const fs::path& copy, const fs::path& damaged)
try {
    mend_the_heading(copy);
    FoundRecords found{copy, key_if_there(damaged)};
    if (found.is_empty())
        throw StoreError{"no record of a Cotter book can be read; a backup is accepted by `cotter restore`"};
    return found;
} catch (const StoreError& e) {
    throw StoreError{damaged.string() + ": " + e.what()};
}

bool is_sample(const FoundRecords& found)
{
    bool sample = false;
    found.for_each([&](const Record& record) {
        sample = sample || (record.entry.kind == "device" && record.entry.body.value("sample", false));
    });
    return sample;
}

Entry first_entry(const NewBook& facts, const records::DeviceKey& key, const FoundRecords& found,
                  const std::vector<Lost>& lost, const std::string& replaces)
{
    Entry entry = device_entry(facts, key);
    entry.body["sample"] = is_sample(found);
    entry.body["replaces"] = replaces;
    for (const Lost& each : lost)
        entry.body["lost"].push_back(json_of(each));
    return entry;
}

std::int64_t count_private_fields(const FoundRecords& found)
{
    std::set<std::string> fields;
    found.for_each([&](const Record& record) {
        for (const std::string& field : records::private_fields(*records::find_kind(record.entry.kind)))
            if (record.entry.body.contains(field))
                fields.insert(records::private_subject(record.entry) + " " + field);
    });
    return static_cast<std::int64_t>(fields.size());
}

// A row that is not there was erased, unless not all could be read.
void carry_private(SQLite::Database& database, const RecordTable& table, const FoundRecords& found, Salvaged& result)
{
    const RecordedValues recorded{table};
    std::vector<records::PrivateRow> good;
    for (const records::PrivateRow& row : found.private_rows())
        if (recorded.has(row))
            good.push_back(row);
    keep_private(database, good);
    result.private_values = static_cast<std::int64_t>(good.size());
    result.private_lost = found.all_private_read()
                              ? static_cast<std::int64_t>(found.private_rows().size() - good.size())
                              : std::max(std::int64_t{0}, count_private_fields(found) - result.private_values);
}

} // namespace

// Into the tables of an empty store.
void Store::carry(const FoundRecords& found, Salvaged& result)
{
    SQLite::Transaction transaction{*database_, SQLite::TransactionBehavior::IMMEDIATE};
    found.for_each([&](const Record& record) {
        table_.insert(record);
        ++result.records;
    });
    carry_private(*database_, table_, found, result);
    projection_.rebuild();
    transaction.commit();
}

Salvaged Store::salvage(const fs::path& damaged, const fs::path& given, const NewBook& facts)
try {
    const fs::path path = fs::absolute(given);
    refuse_what_is_there(path);
    refuse_what_is_there(key_path(path));
    refuse_in_use(damaged);
    const PrivateCopy copy{damaged};
    const FoundRecords found = find_records(copy.path(), damaged);
    const records::DeviceKey key = records::DeviceKey::make();
    Salvaged result;
    result.device = key.device();
    if (found.is_cut() || !is_whole(damaged))
        result.lost = found.lost();
    const auto own = key_if_there(damaged);
    const Unfinished made{path};
    {
        Store store{make_file(made.path()), key};
        store.carry(found, result);
        std::vector<Entry> entries{
            first_entry(facts, key, found, result.lost, own ? own->device() : found.newest_device())};
        if (!result.lost.empty())
            for (Entry& stop :
                 stops_on_all([&](const auto& visit) { found.for_each(visit); }, facts, "salvage", why_stopped)) {
                result.stopped.push_back(stop.about);
                entries.push_back(std::move(stop));
            }
        store.append(std::move(entries));
        check_whole(store.verify(), path);
        write_back_the_log(*store.database_);
    }
    write_key(path, key);
    made.put_in_place();
    return result;
} catch (const SQLite::Exception& e) {
    throw StoreError{given.string() + ": the book is not made: " + e.what()};
}

} // namespace cotter::db
