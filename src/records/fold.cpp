#include "fact.hpp"

#include "fold_docs.hpp"
#include "withdrawn.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace cotter::records {

namespace {

bool is_earlier(const Record& a, const Record& b)
{
    return std::tie(a.entry.at, a.device, a.seq) < std::tie(b.entry.at, b.device, b.seq);
}

// What a record knows comes before it; else by time, device and number. Any order in gives the same order out.
std::vector<Record> in_order(std::vector<Record> records)
{
    std::sort(records.begin(), records.end(), is_earlier);
    std::set<std::string> here, placed;
    for (const Record& each : records)
        here.insert(each.hash);
    std::vector<Record> ordered;
    while (ordered.size() < records.size()) {
        const auto ready = std::find_if(records.begin(), records.end(), [&](const Record& each) {
            return placed.count(each.hash) == 0 &&
                   std::all_of(each.entry.after.begin(), each.entry.after.end(), [&](const std::string& known) {
                       return here.count(known) == 0 || placed.count(known) > 0;
                   });
        });
        const auto next =
            ready != records.end() ? ready : std::find_if(records.begin(), records.end(), [&](const Record& each) {
                return placed.count(each.hash) == 0; // a circle cannot be signed
            });
        placed.insert(next->hash);
        ordered.push_back(*next);
    }
    return ordered;
}

// Null and missing are one: not known.
Json known_only(const Json& json)
{
    if (!json.is_structured())
        return json;
    Json known = json.is_object() ? Json::object() : Json::array();
    for (const auto& [key, each] : json.items()) {
        if (json.is_array())
            known.push_back(known_only(each));
        else if (!each.is_null())
            known[key] = known_only(each);
    }
    return known;
}

Record with_new_body(Record old, const Record& correction)
{
    old.entry.body = correction.entry.body["body"];
    old.entry.at = correction.entry.at;
    old.entry.by = correction.entry.by;
    return old;
}

// A correction may have moved a record to another fact.
bool touches(const Record& record, const FactKey& key)
{
    const auto touched = touched_by(record, [](const std::string&) { return std::optional<Record>{}; });
    return std::find(touched.begin(), touched.end(), key) != touched.end();
}

// The newest correction of each record decides what it says now; a void one says nothing. What stops is not taken away
// so (withdrawn.hpp).
std::vector<Record> corrected(const std::vector<Record>& ordered)
{
    std::map<std::string, const Record*> corrections;
    for (const Record& each : ordered)
        if (each.entry.kind == "correction")
            corrections[each.entry.body.value("corrects", "")] = &each;
    std::vector<Record> said;
    for (const Record& each : ordered) {
        if (each.entry.kind == "correction")
            continue;
        const auto found = corrections.find(each.hash);
        if (found != corrections.end() && may_stop(each)) {
            for (Record& left : withdrawn(each, *found->second))
                said.push_back(std::move(left));
            continue;
        }
        if (found != corrections.end() && is_void(*found->second))
            continue;
        said.push_back(found != corrections.end() ? with_new_body(each, *found->second) : each);
    }
    for (Record& each : said)
        each.entry.body = known_only(each.entry.body);
    return said;
}

} // namespace

std::vector<std::string> heads_of(const std::vector<Record>& records)
{
    std::set<std::string> known;
    for (const Record& each : records)
        known.insert(each.entry.after.begin(), each.entry.after.end());
    std::vector<std::string> heads;
    for (const Record& each : records)
        if (known.count(each.hash) == 0)
            heads.push_back(each.hash);
    std::sort(heads.begin(), heads.end());
    return heads;
}

std::optional<Fact> fold(const FactKey& key, std::vector<Record> records)
{
    const std::vector<Record> ordered = in_order(std::move(records));
    Fact fact;
    fact.key = key;
    fact.heads = heads_of(ordered);
    for (const Record& each : ordered)
        fact.at = std::max(fact.at, each.entry.at.count());
    auto said = corrected(ordered);
    std::erase_if(said, [&](const Record& each) { return !touches(each, key); });
    if (said.empty())
        return std::nullopt;
    fill(fact, said);
    return fact;
}

} // namespace cotter::records
