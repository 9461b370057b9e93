#pragma once

// What a set of records means. A fact is folded from all records that touch it, whatever their order: live writing,
// rebuild and merge call the same fold, so their tables are the same.

#include "record.hpp"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace cotter::records {

struct FactKey {
    std::string kind, key;
    friend auto operator<=>(const FactKey&, const FactKey&) = default;
};

struct Fact {
    FactKey key;
    std::vector<std::string> about; // units and others to list it by
    bool open = false;              // still asked for after its day
    std::int64_t at = 0;            // of the newest record
    std::vector<std::string> heads; // records of this fact that no other knows, hashes
    Json doc = Json::object();
};

// Finds a record by its hash, for a correction; nothing if the book has none.
using FindRecord = std::function<std::optional<Record>(const std::string& hash)>;

std::vector<FactKey> touched_by(const Record& record, const FindRecord& find);

// Nothing: the records say nothing any more (all void).
std::optional<Fact> fold(const FactKey& key, std::vector<Record> records);

// Records that no other of the set knows, by hash.
std::vector<std::string> heads_of(const std::vector<Record>& records);

} // namespace cotter::records
