#pragma once

// The book on SQLite: one process, one connection, nothing acknowledged is lost.

#include "book.hpp"
#include "known_gaps.hpp"
#include "private_data.hpp"
#include "projection.hpp"
#include "receipt.hpp"
#include "record_table.hpp"
#include "watch.hpp"

#include <SQLiteCpp/Database.h>

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace cotter::db {

class FoundRecords;
struct Salvaged;

struct NewBook {
    std::string device_name;
    bool sample = false;
    rules::Instant at{0};
    rules::Day day{};
};

// The first thing in a store that is not as it was written.
struct Damage {
    std::string device;
    std::int64_t seq = 0;
    std::string unit; // what the record is about
    std::int64_t at = 0;
    std::string what;
};

struct Verified {
    std::int64_t records = 0; // that are good, up to the first damage
    records::Head head;
    std::vector<Damage> damaged;
    std::vector<Lost> lost; // from a book that this one carries on; not damage of this one
};

class Store final : public records::Book {
public:
    // Opens the book at `path`; StoreError in one line if it cannot.
    static std::unique_ptr<Store> open(const std::filesystem::path& path);

    // Makes a book with its device key and first record.
    static std::unique_ptr<Store> make(const std::filesystem::path& path, const NewBook& facts);

    // What is asked of each entry before it is written, besides its form; throws FormError, or completes the entry.
    // Nothing is asked by default.
    using Acceptance = std::function<void(const records::Book&, records::Entry&)>;
    void accept_by(Acceptance acceptance) { acceptance_ = std::move(acceptance); }

    // Makes a whole copy of the book in use, without its key, and verifies it; gives the head that it holds.
    // StoppedError, and no copy, if the watch says so.
    records::Head back_up(const std::filesystem::path& path, const records::Watch& watch = {}) const;

    // Makes a book that carries on from a backup, as a new device. StoreError or DamagedError if it cannot.
    static std::unique_ptr<Store> restore(const std::filesystem::path& backup, const std::filesystem::path& path,
                                          const NewBook& facts);

    // Makes a book of all that can still be read of a damaged one, as a new device, and says what is lost
    // (salvage.hpp). The damaged file is left as it is. StoreError if nothing can be read.
    static Salvaged salvage(const std::filesystem::path& damaged, const std::filesystem::path& path,
                            const NewBook& facts);

    records::BookState state() const override;
    std::vector<records::Record> append(std::vector<records::Entry> entries) override;
    std::optional<records::Fact> fact(const std::string& kind, const std::string& key) const override;
    std::vector<records::Fact> facts(const std::string& kind) const override;
    std::vector<records::Fact> facts_about(const std::string& kind, const std::string& about) const override;
    std::vector<records::Fact> open_facts(const std::string& kind) const override;
    std::vector<records::Fact> facts_since(const std::string& kind, rules::Instant first) const override;
    std::vector<std::string> keys(const std::string& kind) const override;
    std::size_t units_with_tag(const std::string& tag) const override;
    std::optional<std::string> private_value(const std::string& subject, const std::string& field) const override;
    std::optional<records::Record> find(const std::string& hash) const override;
    std::vector<records::Record> newest(const std::string& kind, std::size_t count) const override;

    // Pages, indices, schema, the chain of hashes and the seal of the derived tables; where the seal does not fit, the
    // signatures too, and the tables are derived anew. No lift before it is done. False: the watch stopped it;
    // it must not use the book.
    bool check_on_opening(const records::Watch& watch = {});

    // Every hash, link, number, signature, copy, body, private row and derived table.
    // StoppedError if the watch says so; it must not use the book.
    Verified verify(const records::Watch& watch = {}) const;

    // "" if the book still holds what the receipt says it held; else what is wrong.
    std::string compare(const records::Receipt& receipt) const;

    bool has_records_of(const std::string& device) const;

    records::Receipt receipt(rules::Instant at) const; // of all records; StoreError without the device's key

    std::string sign(const std::string& text) const; // by the device, over prefix and text; StoreError without its key

    void rebuild(const records::Watch& watch = {});
    std::string derived_tables() const;
    SQLite::Database& database() { return *database_; }

private:
    Store(std::unique_ptr<SQLite::Database> database, std::optional<records::DeviceKey> key);
    records::Record write(records::Entry entry);
    void check(records::Entry& entry) const;
    void derive_anew(const records::Watch& watch = {});
    Verified look_at_all(const records::Watch& watch) const;
    void carry(const FoundRecords& found, Salvaged& result);
    bool is_derived_right(const records::Watch& watch = {}) const;
    void copy_to(const std::filesystem::path& path, const records::Watch& watch = {}) const;
    void check_correction(const records::Entry& entry) const;
    std::vector<records::PrivateRow> set_private_apart(records::Entry& entry) const;
    void know_heads(records::Entry& entry) const;

    std::unique_ptr<SQLite::Database> database_;
    std::optional<records::DeviceKey> key_;
    RecordTable table_;
    Projection projection_;
    Acceptance acceptance_ = [](const records::Book&, records::Entry&) {};
    std::string device_;
    bool sample_ = false;
    bool checked_ = false, damaged_ = false;
};

} // namespace cotter::db
