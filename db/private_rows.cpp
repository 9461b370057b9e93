#include "private_rows.hpp"

#include <stdexcept>

namespace cotter::db {

using records::PrivateRow;
using records::Record;

PrivateRow private_row(SQLite::Statement& query)
{
    return {query.getColumn(0).getString(), query.getColumn(1).getString(), query.getColumn(2).getString(),
            query.getColumn(3).getString()};
}

void keep_private(SQLite::Database& database, const std::vector<PrivateRow>& rows)
{
    for (const auto& row : rows) {
        SQLite::Statement insert{
            database, "INSERT INTO private(subject, field, salt, value) VALUES (?, ?, ?, ?) "
                      "ON CONFLICT (subject, field) DO UPDATE SET salt = excluded.salt, value = excluded.value"};
        insert.bind(1, row.subject);
        insert.bind(2, row.field);
        insert.bind(3, row.salt);
        insert.bind(4, row.value);
        insert.exec();
    }
}

RecordedValues::RecordedValues(const RecordTable& table)
{
    table.for_each([&](const Record& record) {
        add(record.entry, record.entry.body);
        if (record.entry.kind == "correction" && record.entry.body.contains("body"))
            if (const auto old = table.find(record.entry.body.value("corrects", "")))
                add(old->entry, record.entry.body["body"]);
    });
}

void RecordedValues::add(const records::Entry& entry, const records::Json& body)
{
    for (const auto& [field, value] : body.items())
        if (value.is_string())
            values_.insert(records::private_subject(entry) + " " + field + " " + value.get<std::string>());
}

bool RecordedValues::has(const PrivateRow& row) const
try {
    return values_.count(row.subject + " " + row.field + " " + row.hash()) > 0;
} catch (const std::invalid_argument&) {
    return false;
}

} // namespace cotter::db
