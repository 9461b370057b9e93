#include "projection.hpp"

#include "record_table.hpp"
#include "signing.hpp"
#include "telling.hpp"

#include <SQLiteCpp/Statement.h>

#include <array>

namespace cotter::db {

using records::Fact;
using records::FactKey;
using records::Json;
using records::Record;

namespace {

Fact read_fact(SQLite::Statement& row)
{
    Fact fact;
    fact.key = {row.getColumn(0).getString(), row.getColumn(1).getString()};
    fact.open = row.getColumn(2).getInt() != 0;
    fact.at = row.getColumn(3).getInt64();
    fact.heads = Json::parse(row.getColumn(4).getString()).get<std::vector<std::string>>();
    fact.doc = Json::parse(row.getColumn(5).getString());
    return fact;
}

std::vector<Fact> read_facts(SQLite::Statement& query)
{
    std::vector<Fact> facts;
    while (query.executeStep())
        facts.push_back(read_fact(query));
    return facts;
}

void bind(SQLite::Statement& statement, const FactKey& key)
{
    statement.bind(1, key.kind);
    statement.bind(2, key.key);
}

// A row as text, its columns parted by tabs.
std::string row_text(SQLite::Statement& query)
{
    std::string text;
    for (int i = 0; i < query.getColumnCount(); ++i)
        text += query.getColumn(i).getString() + '\t';
    return text;
}

constexpr std::array all_rows{
    "SELECT 'fact', kind, key, open, at, heads, doc FROM fact ORDER BY kind, key",
    "SELECT 'about', about, kind, key FROM fact_about ORDER BY about, kind, key",
    "SELECT 'record', kind, key, device, seq FROM fact_record ORDER BY kind, key, device, seq"};
constexpr std::array rows_of_fact{"SELECT 'fact', kind, key, open, at, heads, doc FROM fact WHERE kind = ? AND key = ?",
                                  "SELECT 'about', about, kind, key FROM fact_about WHERE kind = ? AND key = ?"};

// From one device to the next: to group all records would take longer with each that is written.
constexpr auto heads_of_devices =
    "WITH RECURSIVE d(device) AS (SELECT min(device) FROM record UNION ALL "
    "SELECT (SELECT min(device) FROM record WHERE device > d.device) FROM d WHERE d.device IS NOT NULL) "
    "SELECT r.device, r.seq, r.hash FROM d JOIN record r ON r.device = d.device "
    "AND r.seq = (SELECT max(seq) FROM record WHERE device = d.device) ORDER BY r.device";

} // namespace

Projection::Projection(SQLite::Database& database, const RecordTable& records, std::string seal_key)
    : database_{database}, statements_{database}, records_{records}, seal_key_{std::move(seal_key)}, seal_{seal_key_}
{
}

records::FindRecord Projection::finder() const
{
    return [this](const std::string& hash) { return records_.find(hash); };
}

void Projection::touch(const Record& record, std::set<FactKey>& touched)
{
    open_seal();
    note(record, touched);
}

void Projection::note(const Record& record, std::set<FactKey>& touched)
{
    for (FactKey& key : touched_by(record, finder())) {
        const auto insert =
            statements_.use("INSERT OR IGNORE INTO fact_record(kind, key, device, seq) VALUES (?, ?, ?, ?)");
        bind(*insert, key);
        insert->bind(3, record.device);
        insert->bind(4, record.seq);
        if (insert->exec() > 0)
            seal_.add("record\t" + key.kind + '\t' + key.key + '\t' + record.device + '\t' +
                      std::to_string(record.seq) + '\t');
        touched.insert(std::move(key));
    }
}

std::vector<Record> Projection::records_of(const FactKey& key) const
{
    const auto query = statements_.use("SELECT r.bytes, r.sig FROM fact_record f JOIN record r USING (device, seq) "
                                       "WHERE f.kind = ? AND f.key = ? ORDER BY r.device, r.seq");
    bind(*query, key);
    std::vector<Record> found;
    while (query->executeStep())
        found.push_back(records::parse_record(query->getColumn(0).getString(), query->getColumn(1).getString()));
    return found;
}

void Projection::forget(const FactKey& key)
{
    for (const char* sql :
         {"DELETE FROM fact WHERE kind = ? AND key = ?", "DELETE FROM fact_about WHERE kind = ? AND key = ?"}) {
        const auto statement = statements_.use(sql);
        bind(*statement, key);
        statement->exec();
    }
}

void Projection::write(const Fact& fact)
{
    const auto insert = statements_.use("INSERT INTO fact(kind, key, open, at, heads, doc) VALUES (?, ?, ?, ?, ?, ?)");
    bind(*insert, fact.key);
    insert->bind(3, fact.open ? 1 : 0);
    insert->bind(4, fact.at);
    insert->bind(5, Json(fact.heads).dump());
    insert->bind(6, fact.doc.dump());
    insert->exec();
    for (const std::string& about : fact.about) {
        const auto list = statements_.use("INSERT OR IGNORE INTO fact_about(kind, key, about) VALUES (?, ?, ?)");
        bind(*list, fact.key);
        list->bind(3, about);
        list->exec();
    }
}

void Projection::refold(const std::set<FactKey>& touched, const records::Watch& watch)
{
    for (std::int64_t done = 0; const FactKey& key : touched) {
        tell_now_and_then(watch, done++, static_cast<std::int64_t>(touched.size()));
        for (const std::string& row : rows_of(key))
            seal_.take(row);
        forget(key);
        if (const auto fact = records::fold(key, records_of(key)))
            write(*fact);
        for (const std::string& row : rows_of(key))
            seal_.add(row);
    }
    write_seal();
}

void Projection::rebuild(const records::Watch& watch)
{
    database_.exec("DELETE FROM fact; DELETE FROM fact_about; DELETE FROM fact_record");
    seal_ = Seal{seal_key_};
    std::set<FactKey> touched;
    std::int64_t seen = 0;
    records_.for_each([&, all = records_.count(), to_note = part(watch, 0, 2)](const Record& record) {
        tell_now_and_then(to_note, seen++, all);
        note(record, touched);
    });
    refold(touched, part(watch, 1, 2));
}

std::optional<Fact> Projection::fact(const FactKey& key) const
{
    const auto query = statements_.use("SELECT kind, key, open, at, heads, doc FROM fact WHERE kind = ? AND key = ?");
    bind(*query, key);
    return query->executeStep() ? std::optional{read_fact(*query)} : std::nullopt;
}

std::vector<Fact> Projection::facts(const std::string& kind) const
{
    const auto query = statements_.use("SELECT kind, key, open, at, heads, doc FROM fact WHERE kind = ? ORDER BY key");
    query->bind(1, kind);
    return read_facts(*query);
}

std::vector<Fact> Projection::facts_about(const std::string& kind, const std::string& about) const
{
    // CROSS keeps the order: first what it is about, else every fact of the kind is read.
    const auto query =
        statements_.use("SELECT f.kind, f.key, f.open, f.at, f.heads, f.doc FROM fact_about a "
                        "CROSS JOIN fact f USING (kind, key) WHERE a.about = ? AND a.kind = ? ORDER BY a.key");
    query->bind(1, about);
    query->bind(2, kind);
    return read_facts(*query);
}

std::vector<Fact> Projection::open_facts(const std::string& kind) const
{
    const auto query =
        statements_.use("SELECT kind, key, open, at, heads, doc FROM fact WHERE kind = ? AND open ORDER BY key");
    query->bind(1, kind);
    return read_facts(*query);
}

std::vector<Fact> Projection::facts_since(const std::string& kind, std::int64_t first) const
{
    const auto query =
        statements_.use("SELECT kind, key, open, at, heads, doc FROM fact WHERE kind = ? AND at >= ? ORDER BY key");
    query->bind(1, kind);
    query->bind(2, first);
    return read_facts(*query);
}

std::vector<std::string> Projection::keys(const std::string& kind) const
{
    const auto query = statements_.use("SELECT key FROM fact WHERE kind = ? ORDER BY key");
    query->bind(1, kind);
    std::vector<std::string> all;
    while (query->executeStep())
        all.push_back(query->getColumn(0).getString());
    return all;
}

std::size_t Projection::units_with_tag(const std::string& tag) const
{
    const auto query = statements_.use("SELECT count(*) FROM fact_about WHERE about = ? AND kind = 'unit'");
    query->bind(1, "tag " + tag);
    return query->executeStep() ? static_cast<std::size_t>(query->getColumn(0).getInt64()) : 0;
}

std::vector<std::string> Projection::heads(const FactKey& key) const
{
    const auto found = fact(key);
    return found ? found->heads : std::vector<std::string>{};
}

void Projection::for_each_row(const std::function<void(const std::string&)>& visit) const
{
    for (const char* sql : all_rows) {
        const auto query = statements_.use(sql);
        while (query->executeStep())
            visit(row_text(*query));
    }
}

std::vector<std::string> Projection::rows_of(const FactKey& key) const
{
    std::vector<std::string> rows;
    for (const char* sql : rows_of_fact) {
        const auto query = statements_.use(sql);
        bind(*query, key);
        while (query->executeStep())
            rows.push_back(row_text(*query));
    }
    return rows;
}

std::string Projection::dump() const
{
    std::string text;
    for_each_row([&](const std::string& row) { text += row + '\n'; });
    return text;
}

// As the last transaction left it.
void Projection::open_seal()
{
    const auto query = statements_.use("SELECT sum FROM seal");
    if (query->executeStep())
        seal_.read(query->getColumn(0).getString());
}

// Over the sum and the last record of every device.
std::string Projection::mark_of(const std::string& sum) const
{
    std::string heads;
    const auto query = statements_.use(heads_of_devices);
    while (query->executeStep())
        heads += head_line(query->getColumn(0).getString(), query->getColumn(2).getString());
    return seal_mark(seal_key_, sum, heads);
}

void Projection::write_seal()
{
    const auto write = statements_.use("INSERT INTO seal(one, sum, mark) VALUES (1, ?, ?) "
                                       "ON CONFLICT (one) DO UPDATE SET sum = excluded.sum, mark = excluded.mark");
    write->bind(1, seal_.text());
    write->bind(2, mark_of(seal_.text()));
    write->exec();
}

bool Projection::was_ever_sealed() const { return database_.execAndGet("SELECT count(*) FROM seal").getInt() > 0; }

bool Projection::is_sealed() const
{
    if (seal_key_.empty()) // anybody could have written it
        return false;
    Seal found{seal_key_};
    for_each_row([&](const std::string& row) { found.add(row); });
    const auto query = statements_.use("SELECT sum, mark FROM seal");
    return query->executeStep() && query->getColumn(0).getString() == found.text() &&
           query->getColumn(1).getString() == mark_of(found.text());
}

} // namespace cotter::db
