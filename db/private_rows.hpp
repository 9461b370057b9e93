#pragma once

// The rows of the table `private`, and which of them the records hold the hash of.

#include "private_data.hpp"
#include "record_table.hpp"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <set>
#include <string>
#include <vector>

namespace cotter::db {

inline constexpr const char* all_private_rows =
    "SELECT subject, field, salt, value FROM private ORDER BY subject, field";
records::PrivateRow private_row(SQLite::Statement& query); // of a row of the above

void keep_private(SQLite::Database& database, const std::vector<records::PrivateRow>& rows);

// What records say of private values, as they and their corrections say it.
class RecordedValues {
public:
    explicit RecordedValues(const RecordTable& table);
    bool has(const records::PrivateRow& row) const; // also false for a salt that is none

private:
    void add(const records::Entry& entry, const records::Json& body);
    std::set<std::string> values_; // subject, field and hash
};

} // namespace cotter::db
