// What `verify` and the opening check find.

#include "kinds.hpp"
#include "known_gaps.hpp"
#include "migrate.hpp"
#include "private_rows.hpp"
#include "store.hpp"
#include "telling.hpp"

#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>

#include <map>

namespace cotter::db {

namespace {

using records::Record;

struct Row {
    std::string device;
    std::int64_t seq;
    std::string hash, kind, about;
    std::int64_t at;
    std::string bytes, sig;
};

Row read_row(SQLite::Statement& query)
{
    return {query.getColumn(0).getString(), query.getColumn(1).getInt64(),  query.getColumn(2).getString(),
            query.getColumn(3).getString(), query.getColumn(4).getString(), query.getColumn(5).getInt64(),
            query.getColumn(6).getString(), query.getColumn(7).getString()};
}

// Walks the chain of each device and says what is wrong with a row; "" if nothing is.
class ChainWalk {
public:
    ChainWalk(SQLite::Database& database, const std::string& own, bool with_signatures)
        : gaps_{database, own}, with_signatures_{with_signatures}
    {
    }

    std::string look_at(const Row& row)
    try {
        const Record record = records::parse_record(row.bytes, row.sig);
        records::Head& head = heads_[row.device];
        if (record.hash != row.hash)
            return "its bytes are not those that were hashed";
        if (record.seq != row.seq || record.device != row.device || record.entry.kind != row.kind ||
            record.entry.about != row.about || record.entry.at.count() != row.at)
            return "a column differs from its bytes";
        const bool after_a_gap = row.seq != head.seq + 1;
        if (after_a_gap && !gaps_.has(row.device, head.seq + 1, row.seq - 1))
            return "a record before it is missing";
        if (!after_a_gap && record.prev != head.hash)
            return "it does not follow the record before it";
        head = {row.seq, row.hash};
        return with_signatures_ ? look_inside(record) : "";
    } catch (const records::FormError& e) {
        return e.what();
    }

    records::Head head_of(const std::string& device) const
    {
        const auto found = heads_.find(device);
        return found == heads_.end() ? records::Head{} : found->second;
    }

private:
    std::string look_inside(const Record& record)
    {
        std::string& key = keys_[record.device];
        if (key.empty())
            key = record.seq == 1 ? record.entry.body.value("public_key", "") : gaps_.public_key(record.device);
        if (key.empty() || records::sha256(records::from_hex(key)) != record.device)
            return "its device's key is not the one it is named after";
        if (!records::is_signed_by(key, record.bytes, record.sig))
            return "its signature does not fit";
        const records::Kind* kind = records::find_kind(record.entry.kind);
        if (!kind)
            return "its kind is not known";
        records::check_body(*kind, record.entry.body);
        return "";
    }

    KnownGaps gaps_;
    bool with_signatures_;
    std::map<std::string, records::Head> heads_;
    std::map<std::string, std::string> keys_;
};

std::vector<Damage> walk(SQLite::Database& database, ChainWalk& chain, std::int64_t& good, const records::Watch& watch)
{
    const std::int64_t all = database.execAndGet("SELECT count(*) FROM record").getInt64();
    tell(watch, 0, all);
    SQLite::Statement query{database,
                            "SELECT device, seq, hash, kind, about, at, bytes, sig FROM record ORDER BY device, seq"};
    while (query.executeStep()) {
        const Row row = read_row(query);
        if (std::string what = chain.look_at(row); !what.empty())
            return {{row.device, row.seq, row.about, row.at, std::move(what)}};
        tell_now_and_then(watch, ++good, all);
    }
    return {};
}

// A book that was restored names the last record that its copy held: what is missing since was cut off,
// unless it is known to be lost.
std::vector<Damage> look_at_replaced(SQLite::Database& database, KnownGaps gaps)
{
    SQLite::Statement query{database, "SELECT device, at, bytes, sig FROM record WHERE kind = 'device' AND seq = 1"};
    SQLite::Statement held{database, "SELECT 1 FROM record WHERE device = ? AND seq = ? AND hash = ?"};
    while (query.executeStep()) {
        const auto body =
            records::parse_record(query.getColumn(2).getString(), query.getColumn(3).getString()).entry.body;
        const auto head = body.value("replaced_head", records::Json::object());
        if (head.empty())
            continue;
        held.reset();
        held.bind(1, body.value("replaces", ""));
        held.bind(2, head.value("seq", std::int64_t{0}));
        held.bind(3, head.value("hash", ""));
        if (!held.executeStep() && !gaps.covers(body.value("replaces", ""), head.value("seq", std::int64_t{0})))
            return {{body.value("replaces", ""), head.value("seq", std::int64_t{0}), "", query.getColumn(1).getInt64(),
                     "the book that this one carries on is not the one that it carried on"}};
    }
    return {};
}

// Every private value is one that a record holds the hash of.
std::vector<Damage> look_at_private(SQLite::Database& database, const RecordTable& table)
{
    const RecordedValues recorded{table};
    SQLite::Statement query{database, all_private_rows};
    while (query.executeStep())
        if (const records::PrivateRow row = private_row(query); !recorded.has(row))
            return {{"", 0, row.subject, 0, "private " + row.field + " is not the one that was recorded"}};
    return {};
}

// Pages, and whether each index has what its table has: a lift is asked by way of indices.
std::string page_check(SQLite::Database& database, const char* pragma)
{
    const std::string said = database.execAndGet(pragma).getString();
    return said == "ok" ? "" : said;
}

std::string schema_of(SQLite::Database& database)
{
    std::string text;
    SQLite::Statement query{database, "SELECT type, name, tbl_name, sql FROM sqlite_schema ORDER BY type, name"};
    while (query.executeStep())
        for (int i = 0; i < 4; ++i)
            text += query.getColumn(i).getString() + '\n';
    return text;
}

// Tables, indices and triggers as the migrations make them, none more and none less.
bool has_own_schema(SQLite::Database& database)
{
    static const std::string own = [] {
        SQLite::Database fresh{":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
        migrate(fresh);
        return schema_of(fresh);
    }();
    return schema_of(database) == own;
}

} // namespace

bool Store::check_on_opening(const records::Watch& watch)
{
    const LongStatements long_ones{*database_, watch};
    try {
        tell(long_ones.watch(), 0, 1);
        ChainWalk chain{*database_, device_, false};
        std::int64_t good = 0;
        damaged_ = !page_check(*database_, "PRAGMA integrity_check(1)").empty() || !has_own_schema(*database_) ||
                   !walk(*database_, chain, good, long_ones.watch()).empty() ||
                   !look_at_replaced(*database_, {*database_, device_}).empty();
        if (!damaged_ && !projection_.is_sealed())
            derive_anew(long_ones.watch());
        checked_ = true;
    } catch (const std::exception&) {
        checked_ = !long_ones.stopped();
        damaged_ = damaged_ || checked_;
    }
    return checked_;
}

// Whoever changed a derived table, the records are what they were, if their signatures say so.
void Store::derive_anew(const records::Watch& watch)
{
    ChainWalk chain{*database_, device_, true};
    std::int64_t good = 0;
    damaged_ = !walk(*database_, chain, good, part(watch, 0, 2)).empty();
    if (!damaged_ && (key_ || !is_derived_right(part(watch, 1, 2))))
        rebuild(part(watch, 1, 2));
}

// Derives the tables anew in a transaction that is not committed, and compares.
bool Store::is_derived_right(const records::Watch& watch) const
{
    const std::string before = projection_.dump();
    SQLite::Transaction tried{*database_, SQLite::TransactionBehavior::IMMEDIATE};
    Projection again{*database_, table_, ""};
    again.rebuild(watch);
    return again.dump() == before;
}

Verified Store::verify(const records::Watch& watch) const
{
    const LongStatements long_ones{*database_, watch};
    try {
        return look_at_all(long_ones.watch());
    } catch (const std::exception& e) {
        if (long_ones.stopped())
            throw StoppedError{"reading the book was ended"};
        return {0, {}, {{device_, 0, "", 0, e.what()}}, {}};
    }
}

Verified Store::look_at_all(const records::Watch& watch) const
{
    Verified found;
    ChainWalk chain{*database_, device_, true};
    found.damaged = walk(*database_, chain, found.records, part(watch, 0, 2));
    found.head = chain.head_of(device_);
    if (found.damaged.empty())
        found.lost = KnownGaps{*database_, device_}.all();
    if (found.damaged.empty())
        found.damaged = look_at_replaced(*database_, {*database_, device_});
    if (found.damaged.empty())
        found.damaged = look_at_private(*database_, table_);
    if (found.damaged.empty() && !page_check(*database_, "PRAGMA integrity_check(1)").empty())
        found.damaged = {{device_, 0, "", 0, "pages of the file are damaged"}};
    if (found.damaged.empty() && !has_own_schema(*database_))
        found.damaged = {{device_, 0, "", 0, "the tables, indices or triggers are not those that Cotter made"}};
    if (found.damaged.empty() && !is_derived_right(part(watch, 1, 2)))
        found.damaged = {
            {device_, 0, "", 0, "a derived table differs from what the records say; `cotter rebuild` mends it"}};
    return found;
}

} // namespace cotter::db
