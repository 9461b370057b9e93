#include "known_gaps.hpp"

#include <SQLiteCpp/Statement.h>

#include <set>

namespace cotter::db {

using records::Json;
using records::Record;

namespace {

// What may be unknown is left out of the record.
void put(Json& json, const char* field, std::int64_t value)
{
    if (value != 0)
        json[field] = value;
}

Lost lost_of(const Json& json)
{
    return {json.value("device", ""),
            json.value("first", std::int64_t{0}),
            json.value("last", std::int64_t{0}),
            json.value("after", std::int64_t{0}),
            json.value("before", std::int64_t{0}),
            json.value("public_key", "")};
}

} // namespace

Json json_of(const Lost& lost)
{
    Json json = {{"device", lost.device}, {"first", lost.first}};
    put(json, "last", lost.last);
    put(json, "after", lost.after);
    put(json, "before", lost.before);
    if (!lost.public_key.empty())
        json["public_key"] = lost.public_key;
    return json;
}

std::vector<Lost> named_lost(const Record& first)
{
    const std::string key = first.entry.body.value("public_key", "");
    if (first.seq != 1 || first.entry.kind != "device" || !first.entry.body.contains("lost") ||
        !records::is_signed_by(key, first.bytes, first.sig) || records::sha256(records::from_hex(key)) != first.device)
        return {};
    std::vector<Lost> all;
    for (const Json& each : first.entry.body["lost"])
        all.push_back(lost_of(each));
    return all;
}

const std::vector<Lost>& KnownGaps::all()
{
    if (all_)
        return *all_;
    all_.emplace();
    std::set<std::string> seen;
    for (std::string device = own_; !device.empty() && seen.insert(device).second;) {
        SQLite::Statement query{database_, "SELECT bytes, sig FROM record WHERE device = ? AND seq = 1"};
        query.bind(1, device);
        if (!query.executeStep())
            break;
        const Record first = records::parse_record(query.getColumn(0).getString(), query.getColumn(1).getString());
        for (Lost& each : named_lost(first))
            all_->push_back(std::move(each));
        device = first.entry.body.value("replaces", "");
    }
    return *all_;
}

bool KnownGaps::has(const std::string& device, std::int64_t first, std::int64_t last)
{
    for (const Lost& each : all())
        if (each.device == device && each.first == first && each.last == last)
            return true;
    return false;
}

bool KnownGaps::covers(const std::string& device, std::int64_t seq)
{
    for (const Lost& each : all())
        if (each.device == device && each.first <= seq && (each.last == 0 || seq <= each.last))
            return true;
    return false;
}

std::string KnownGaps::public_key(const std::string& device)
{
    for (const Lost& each : all())
        if (each.device == device && !each.public_key.empty())
            return each.public_key;
    return "";
}

} // namespace cotter::db
