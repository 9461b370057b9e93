#include "store.hpp"

#include "key_file.hpp"
#include "kinds.hpp"
#include "new_book.hpp"
#include "opening.hpp"
#include "private_rows.hpp"
#include "store_error.hpp"

#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>

namespace cotter::db {

namespace fs = std::filesystem;
using records::Entry;
using records::Record;

namespace {

fs::path unfinished(const fs::path& path) { return path.string() + ".new"; }

// A making that was cut off left a store that nobody was told of; a key without any store is another matter.
void clear_unfinished(const fs::path& path)
{
    if (fs::exists(unfinished(path))) {
        for (const char* ending : {"", "-wal", "-shm"})
            fs::remove(unfinished(path).string() + ending);
        fs::remove(key_path(path));
    }
    if (fs::exists(key_path(path)))
        throw StoreError{key_path(path).string() +
                         " stands without its book; bring the book back, or move the key away"};
}

const records::Kind& kind_of(const Entry& entry)
{
    const records::Kind* kind = records::find_kind(entry.kind);
    if (!kind)
        throw records::FormError{"kind: \"" + entry.kind +
                                 "\" is not a kind of record; `cotter help record` lists them"};
    return *kind;
}

// Without its key a book is that of the device that was the last to begin.
std::string newest_device(SQLite::Database& database)
{
    SQLite::Statement query{
        database, "SELECT device FROM record WHERE seq = 1 AND kind = 'device' ORDER BY at DESC, device LIMIT 1"};
    return query.executeStep() ? query.getColumn(0).getString() : "";
}

// What cannot be read is damage.
template <class Read> auto reading(Read read)
try {
    return read();
} catch (const SQLite::Exception& e) {
    throw DamagedError{std::string{"the book cannot be read: "} + e.what()};
}

} // namespace

Store::Store(std::unique_ptr<SQLite::Database> database, std::optional<records::DeviceKey> key)
    : database_{std::move(database)}, key_{std::move(key)}, table_{*database_}, projection_{*database_, table_,
                                                                                            key_ ? seal_key(*key_) : ""}
{
    device_ = key_ ? key_->device() : newest_device(*database_);
    SQLite::Statement first{*database_, "SELECT bytes, sig FROM record WHERE device = ? AND seq = 1"};
    first.bind(1, device_);
    if (!first.executeStep())
        return;
    const Record record = records::parse_record(first.getColumn(0).getString(), first.getColumn(1).getString());
    sample_ = record.entry.body.value("sample", false);
}

std::unique_ptr<Store> Store::open(const fs::path& path)
{
    auto database = open_file(path);
    try {
        std::unique_ptr<Store> store{new Store{std::move(database), read_key(fs::canonical(path))}};
        if (!store->projection_.was_ever_sealed()) // a migration made the tables, or another fold filled them
            store->derive_anew();
        return store;
    } catch (const StoreError&) {
        throw;
    } catch (const std::exception& e) {
        throw DamagedError{path.string() + ": damaged (" + e.what() + ")"};
    }
}

std::unique_ptr<Store> Store::make(const fs::path& given, const NewBook& facts)
{
    const fs::path folder = fs::absolute(given).parent_path();
    std::error_code failed;
    fs::create_directories(folder, failed);
    if (failed)
        throw StoreError{folder.string() + ": cannot be made; a folder that you may write is accepted"};
    const fs::path path = folder / given.filename();
    if (fs::exists(path))
        throw StoreError{path.string() + " is there already; a new name is accepted"};
    clear_unfinished(path);
    const records::DeviceKey key = records::DeviceKey::make();
    {
        Store store{make_file(unfinished(path)), key};
        store.append({device_entry(facts, key)});
        write_back_the_log(*store.database_);
    }
    fs::remove(unfinished(path).string() + "-wal"); // written back; closing may have failed to
    write_key(path, key);
    sync_path(unfinished(path));
    fs::rename(unfinished(path), path);
    sync_path(folder);
    return open(path);
}

records::BookState Store::state() const
{
    records::BookState state;
    state.sample = sample_;
    state.checked = checked_;
    state.damaged = damaged_;
    state.device = device_;
    reading([&] {
        state.head = table_.head_of(device_);
        state.newest_record_at = rules::Instant{table_.newest_at()};
    });
    return state;
}

// The new body in a correction is of the old record's kind.
void Store::check_correction(const Entry& entry) const
{
    if (entry.kind != "correction" || !entry.body.contains("body"))
        return;
    if (const auto old = table_.find(entry.body.value("corrects", "")))
        records::check_body(kind_of(old->entry), entry.body["body"]);
}

void Store::check(Entry& entry) const
{
    records::check_body(kind_of(entry), entry.body);
    check_correction(entry);
    if (entry.about.empty())
        throw records::FormError{"about: the id of what the record is about is needed"};
    acceptance_(*this, entry);
}

// The heads of the fact that the entry replaces; none for a fact named after the record itself.
void Store::know_heads(Entry& entry) const
{
    Record draft;
    draft.entry = entry;
    for (const auto& key : touched_by(draft, [this](const std::string& hash) { return table_.find(hash); }))
        if (!key.key.empty())
            for (std::string& head : projection_.heads(key))
                entry.after.push_back(std::move(head));
}

// In a correction the private values are those of the old record's kind.
std::vector<records::PrivateRow> Store::set_private_apart(Entry& entry) const
{
    const auto old = entry.kind == "correction" && entry.body.contains("body")
                         ? table_.find(entry.body.value("corrects", ""))
                         : std::nullopt;
    if (!old)
        return records::set_apart(entry, kind_of(entry));
    Entry inner = old->entry;
    inner.body = entry.body["body"];
    auto rows = records::set_apart(inner, kind_of(inner));
    entry.body["body"] = inner.body;
    return rows;
}

Record Store::write(Entry entry)
{
    const auto rows = set_private_apart(entry);
    know_heads(entry);
    const Record record = records::sign(entry, *key_, table_.head_of(device_));
    table_.insert(record);
    keep_private(*database_, rows);
    std::set<records::FactKey> touched;
    projection_.touch(record, touched);
    projection_.refold(touched);
    return record;
}

std::vector<Record> Store::append(std::vector<Entry> entries)
try {
    if (!key_)
        throw StoreError{"this book has no device key beside it; it can be read, not written"};
    std::vector<Record> written;
    SQLite::Transaction transaction{*database_, SQLite::TransactionBehavior::IMMEDIATE};
    for (std::size_t i = 0; i < entries.size(); ++i)
        try {
            check(entries[i]); // it may name what an entry before it brought
            written.push_back(write(std::move(entries[i])));
        } catch (const records::FormError& e) {
            throw records::EntryError{i, e};
        }
    transaction.commit();
    return written;
} catch (const SQLite::Exception& e) {
    throw StoreError{std::string{"the record is not written: "} + e.what()};
}

std::optional<records::Fact> Store::fact(const std::string& kind, const std::string& key) const
{
    return reading([&] { return projection_.fact({kind, key}); });
}

std::vector<records::Fact> Store::facts(const std::string& kind) const
{
    return reading([&] { return projection_.facts(kind); });
}

std::vector<records::Fact> Store::facts_about(const std::string& kind, const std::string& about) const
{
    return reading([&] { return projection_.facts_about(kind, about); });
}

std::vector<records::Fact> Store::open_facts(const std::string& kind) const
{
    return reading([&] { return projection_.open_facts(kind); });
}

std::vector<records::Fact> Store::facts_since(const std::string& kind, rules::Instant first) const
{
    return reading([&] { return projection_.facts_since(kind, first.count()); });
}

std::vector<std::string> Store::keys(const std::string& kind) const
{
    return reading([&] { return projection_.keys(kind); });
}

std::size_t Store::units_with_tag(const std::string& tag) const
{
    return reading([&] { return projection_.units_with_tag(tag); });
}

std::optional<std::string> Store::private_value(const std::string& subject, const std::string& field) const
{
    return reading([&]() -> std::optional<std::string> {
        SQLite::Statement query{*database_, "SELECT value FROM private WHERE subject = ? AND field = ?"};
        query.bind(1, subject);
        query.bind(2, field);
        return query.executeStep() ? std::optional{query.getColumn(0).getString()} : std::nullopt;
    });
}

std::optional<Record> Store::find(const std::string& hash) const
{
    return reading([&] { return table_.find(hash); });
}

std::vector<Record> Store::newest(const std::string& kind, std::size_t count) const
{
    return reading([&] { return table_.newest(kind, count); });
}

std::string Store::derived_tables() const
{
    return reading([&] { return projection_.dump(); });
}

void Store::rebuild(const records::Watch& watch)
try {
    SQLite::Transaction transaction{*database_, SQLite::TransactionBehavior::IMMEDIATE};
    projection_.rebuild(watch);
    transaction.commit();
} catch (const SQLite::Exception& e) {
    throw StoreError{std::string{"the tables are not derived anew: "} + e.what()};
}

} // namespace cotter::db
