#pragma once

// The derived tables: facts folded from the records that touch them.

#include "fact.hpp"
#include "seal.hpp"
#include "statements.hpp"
#include "watch.hpp"

#include <SQLiteCpp/Database.h>

#include <functional>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace cotter::db {

class RecordTable;

class Projection {
public:
    // `seal_key` is the device's; "" for a book without its key, whose seal proves nothing.
    Projection(SQLite::Database& database, const RecordTable& records, std::string seal_key);

    // Notes which facts the record touches; `refold` then writes what they say now. Within the caller's transaction.
    void touch(const records::Record& record, std::set<records::FactKey>& touched);
    void refold(const std::set<records::FactKey>& touched, const records::Watch& watch = {});
    void rebuild(const records::Watch& watch = {}); // StoppedError: roll back, and open it anew

    std::optional<records::Fact> fact(const records::FactKey& key) const;
    std::vector<records::Fact> facts(const std::string& kind) const;
    std::vector<records::Fact> facts_about(const std::string& kind, const std::string& about) const;
    std::vector<std::string> heads(const records::FactKey& key) const;
    std::vector<records::Fact> open_facts(const std::string& kind) const;
    std::vector<records::Fact> facts_since(const std::string& kind,
                                           std::int64_t first) const; // first: seconds since 1970
    std::vector<std::string> keys(const std::string& kind) const;
    std::size_t units_with_tag(const std::string& tag) const;

    // All rows of the three tables as text, in key order: the same before and after a rebuild.
    std::string dump() const;

    // Are all rows those that this device wrote?
    bool is_sealed() const;
    bool was_ever_sealed() const; // by whichever device

private:
    records::FindRecord finder() const;
    void note(const records::Record& record, std::set<records::FactKey>& touched);
    void write(const records::Fact& fact);
    void forget(const records::FactKey& key);
    void for_each_row(const std::function<void(const std::string&)>& visit) const;
    std::vector<std::string> rows_of(const records::FactKey& key) const;
    void open_seal();
    void write_seal();
    std::string mark_of(const std::string& sum) const;
    std::vector<records::Record> records_of(const records::FactKey& key) const;

    SQLite::Database& database_;
    Statements statements_;
    const RecordTable& records_;
    std::string seal_key_;
    Seal seal_; // of the transaction that runs
};

} // namespace cotter::db
