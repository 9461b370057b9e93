#pragma once

#include "record.hpp"
#include "statements.hpp"

#include <SQLiteCpp/Database.h>

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace cotter::db {

// The table of records: added to, read, never changed.
class RecordTable {
public:
    explicit RecordTable(SQLite::Database& database) : database_{database}, statements_{database} {}

    void insert(const records::Record& record);
    std::optional<records::Record> find(const std::string& hash) const;
    std::vector<records::Record> newest(const std::string& kind, std::size_t count) const;
    records::Head head_of(const std::string& device) const;
    std::int64_t newest_at() const; // UTC seconds, 0 for an empty table
    std::int64_t count() const;
    void for_each(const std::function<void(const records::Record&)>& visit) const; // by device and number

private:
    SQLite::Database& database_;
    Statements statements_;
};

} // namespace cotter::db
