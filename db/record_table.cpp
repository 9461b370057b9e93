#include "record_table.hpp"

#include <SQLiteCpp/Statement.h>

namespace cotter::db {

using records::Record;

namespace {

Record read_record(SQLite::Statement& row)
{
    return records::parse_record(row.getColumn(0).getString(), row.getColumn(1).getString());
}

} // namespace

void RecordTable::insert(const Record& record)
{
    const auto insert = statements_.use("INSERT INTO record(device, seq, hash, kind, about, at, bytes, sig) "
                                        "VALUES (?, ?, ?, ?, ?, ?, ?, ?)");
    insert->bind(1, record.device);
    insert->bind(2, record.seq);
    insert->bind(3, record.hash);
    insert->bind(4, record.entry.kind);
    insert->bind(5, record.entry.about);
    insert->bind(6, record.entry.at.count());
    insert->bind(7, record.bytes.data(), static_cast<int>(record.bytes.size()));
    insert->bind(8, record.sig);
    insert->exec();
}

std::optional<Record> RecordTable::find(const std::string& hash) const
{
    const auto query = statements_.use("SELECT bytes, sig FROM record WHERE hash = ?");
    query->bind(1, hash);
    return query->executeStep() ? std::optional{read_record(*query)} : std::nullopt;
}

std::vector<Record> RecordTable::newest(const std::string& kind, std::size_t count) const
{
    const auto query = statements_.use("SELECT bytes, sig FROM record WHERE ?1 = '' OR kind = ?1 "
                                       "ORDER BY at DESC, device DESC, seq DESC LIMIT ?2");
    query->bind(1, kind);
    query->bind(2, static_cast<std::int64_t>(count));
    std::vector<Record> found;
    while (query->executeStep())
        found.push_back(read_record(*query));
    return found;
}

records::Head RecordTable::head_of(const std::string& device) const
{
    const auto query = statements_.use("SELECT seq, hash FROM record WHERE device = ? ORDER BY seq DESC LIMIT 1");
    query->bind(1, device);
    if (!query->executeStep())
        return {};
    return {query->getColumn(0).getInt64(), query->getColumn(1).getString()};
}

std::int64_t RecordTable::newest_at() const
{
    return database_.execAndGet("SELECT coalesce(max(at), 0) FROM record").getInt64();
}

std::int64_t RecordTable::count() const { return database_.execAndGet("SELECT count(*) FROM record").getInt64(); }

void RecordTable::for_each(const std::function<void(const Record&)>& visit) const
{
    const auto query = statements_.use("SELECT bytes, sig FROM record ORDER BY device, seq");
    while (query->executeStep())
        visit(read_record(*query));
}

} // namespace cotter::db
