#include "found_records.hpp"

#include "kinds.hpp"
#include "migrate.hpp"
#include "private_rows.hpp"
#include "seal.hpp"
#include "store_error.hpp"

#include <SQLiteCpp/Exception.h>

#include <array>

namespace cotter::db {

using records::Record;

namespace {

constexpr std::array by_table{"SELECT bytes, sig FROM record ORDER BY device, seq",
                              "SELECT bytes, sig FROM record ORDER BY device DESC, seq DESC"};
constexpr std::array by_index{"SELECT device, seq FROM record INDEXED BY record_by_time ORDER BY at, device, seq",
                              "SELECT device, seq FROM record INDEXED BY record_by_time ORDER BY at DESC",
                              "SELECT device, seq FROM record ORDER BY hash",
                              "SELECT device, seq FROM record ORDER BY hash DESC",
                              "SELECT device, seq FROM fact_record"};

bool is_device(const std::string& text)
{
    return text.size() == 64 && text.find_first_not_of("0123456789abcdef") == std::string::npos;
}

// Damage in the schema hides as little as may be.
void read_what_can_be_read(SQLite::Database& database)
{
    for (const char* pragma : {"PRAGMA locking_mode = EXCLUSIVE", "PRAGMA writable_schema = ON",
                               "PRAGMA trusted_schema = OFF", "PRAGMA cell_size_check = OFF"})
        database.exec(pragma);
}

void refuse_newer(SQLite::Database& database)
{
    if (const int version = version_of(database); version > newest_version())
        throw StoreError{"written by a newer Cotter (tables " + std::to_string(version) + "); up to " +
                         std::to_string(newest_version()) + " is accepted"};
}

} // namespace

FoundRecords::FoundRecords(const std::filesystem::path& file, std::optional<records::DeviceKey> own_key)
try : database_{file.string(), SQLite::OPEN_READWRITE}, own_key_{std::move(own_key)} {
    read_what_can_be_read(database_);
    refuse_newer(database_);
    read_rows();
    keep_what_is_signed();
    read_places();
    look_into_gaps();
    keep_what_is_signed();
    drop_what_does_not_follow();
    read_private();
    read_seal();
} catch (const SQLite::Exception&) {
    throw StoreError{"not a Cotter book; a file that Cotter made is accepted"};
}

bool FoundRecords::each_row(const char* sql, const std::function<void(SQLite::Statement&)>& visit)
try {
    SQLite::Statement query{database_, sql};
    while (query.executeStep())
        visit(query);
    return true;
} catch (const SQLite::Exception&) {
    return false;
}

void FoundRecords::take(SQLite::Statement& row)
try {
    const Record record = records::parse_record(row.getColumn(0).getString(), row.getColumn(1).getString());
    candidates_.emplace(Place{record.device, record.seq},
                        Found{record.bytes, record.sig, record.hash, record.prev, record.entry.at.count()});
} catch (const records::FormError&) { // no record any more
}

// From the other end only where the first way broke off.
void FoundRecords::read_rows()
{
    for (const char* sql : by_table)
        if (each_row(sql, [this](SQLite::Statement& row) { take(row); }))
            return;
}

void FoundRecords::read_places()
{
    for (const char* sql : by_index)
        each_row(sql, [this](SQLite::Statement& row) {
            if (std::string device = row.getColumn(0).getString(); is_device(device))
                places_.emplace(std::move(device), row.getColumn(1).getInt64());
        });
}

void FoundRecords::look_at(const Place& place)
try {
    if (kept_.count(place) > 0)
        return;
    SQLite::Statement query{database_, "SELECT bytes, sig FROM record WHERE device = ? AND seq = ?"};
    query.bind(1, place.first);
    query.bind(2, place.second);
    if (query.executeStep())
        take(query);
} catch (const SQLite::Exception&) { // its page cannot be read
}

void FoundRecords::look_into_gaps()
{
    std::set<Place> missing = places_;
    for (const auto& [device, numbers] : by_device()) {
        std::int64_t next = 1;
        for (const auto& [seq, unused] : numbers) {
            for (; next < seq; ++next)
                missing.emplace(device, next);
            next = seq + 1;
        }
    }
    for (const Place& place : missing)
        look_at(place);
}

// A device is named after its public key.
void FoundRecords::know_keys()
{
    if (own_key_)
        keys_[own_key_->device()] = own_key_->public_hex();
    named_.clear();
    for (const auto& [place, found] : candidates_) {
        if (place.second != 1)
            continue;
        const Record first = records::parse_record(found.bytes, found.sig);
        keys_.emplace(first.device, first.entry.body.value("public_key", ""));
        for (Lost& each : named_lost(first)) {
            if (!each.public_key.empty())
                keys_.emplace(each.device, each.public_key);
            named_.push_back(std::move(each));
        }
    }
}

// What `verify` will ask of it in the new book.
bool FoundRecords::is_good(const Found& found) const
try {
    const Record record = records::parse_record(found.bytes, found.sig);
    const auto key = keys_.find(record.device);
    const records::Kind* kind = records::find_kind(record.entry.kind);
    if (!kind || record.seq < 1 || key == keys_.end() || !records::is_signed_by(key->second, found.bytes, found.sig) ||
        records::sha256(records::from_hex(key->second)) != record.device)
        return false;
    records::check_body(*kind, record.entry.body);
    return true;
} catch (const records::FormError&) {
    return false;
}

void FoundRecords::keep_what_is_signed()
{
    know_keys();
    for (auto& [place, found] : candidates_)
        if (is_good(found))
            kept_.emplace(place, found);
}

// Signed, but not in this chain: written by a copy of the key.
void FoundRecords::drop_what_does_not_follow()
{
    for (auto at = kept_.begin(); at != kept_.end();) {
        const auto before = kept_.find({at->first.first, at->first.second - 1});
        at = before != kept_.end() && before->second.hash != at->second.prev ? kept_.erase(at) : std::next(at);
    }
    candidates_.clear();
}

void FoundRecords::read_private()
{
    std::set<std::pair<std::string, std::string>> read;
    const auto add = [&](SQLite::Statement& query) {
        records::PrivateRow row = private_row(query);
        if (read.emplace(row.subject, row.field).second)
            private_rows_.push_back(std::move(row));
    };
    all_private_read_ = each_row(all_private_rows, add);
    if (!all_private_read_)
        each_row("SELECT subject, field, salt, value FROM private ORDER BY subject DESC, field DESC", add);
}

void FoundRecords::read_seal()
{
    each_row("SELECT sum, mark FROM seal", [this](SQLite::Statement& query) {
        sum_ = query.getColumn(0).getString();
        mark_ = query.getColumn(1).getString();
    });
}

bool FoundRecords::is_end_sealed() const
{
    std::string heads;
    for (const auto& [device, numbers] : by_device())
        heads += head_line(device, numbers.rbegin()->second->hash);
    return own_key_ && !mark_.empty() && mark_ == seal_mark(seal_key(*own_key_), sum_, heads);
}

void FoundRecords::for_each(const std::function<void(const Record&)>& visit) const
{
    for (const auto& [place, found] : kept_)
        visit(records::parse_record(found.bytes, found.sig));
}

std::string FoundRecords::newest_device() const
{
    const std::pair<const Place, Found>* newest = nullptr;
    for (const auto& each : kept_)
        if (!newest || each.second.at >= newest->second.at)
            newest = &each;
    return newest ? newest->first.first : "";
}

std::map<std::string, FoundRecords::Numbers> FoundRecords::by_device() const
{
    std::map<std::string, Numbers> all;
    for (const auto& [place, found] : kept_)
        all[place.first][place.second] = &found;
    return all;
}

bool FoundRecords::is_named(const Lost& gap) const
{
    for (const Lost& each : named_)
        if (each.device == gap.device && each.first == gap.first && each.last == gap.last)
            return true;
    return false;
}

void FoundRecords::add_gaps(const std::string& device, const Numbers& numbers, std::vector<Lost>& lost) const
{
    std::int64_t next = 1, after = 0;
    for (const auto& [seq, found] : numbers) {
        Lost gap{device, next, seq - 1, after, found->at, ""};
        if (const auto key = keys_.find(device); next == 1 && key != keys_.end())
            gap.public_key = key->second;
        if (next < seq && !is_named(gap))
            lost.push_back(gap);
        next = seq + 1;
        after = found->at;
    }
    if (const Lost end{device, next, 0, after, 0, ""}; !is_end_sealed() && !is_named(end))
        lost.push_back(end);
}

std::vector<Lost> FoundRecords::lost() const
{
    auto devices = by_device();
    for (const Place& place : places_)
        devices.try_emplace(place.first);
    std::vector<Lost> lost;
    for (const auto& [device, numbers] : devices)
        add_gaps(device, numbers, lost);
    return lost;
}

} // namespace cotter::db
