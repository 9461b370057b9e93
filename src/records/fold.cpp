#include "fact.hpp"

#include "fold_docs.hpp"

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
            return placed.count(each.hash) == 0
                   && std::all_of(each.entry.after.begin(), each.entry.after.end(), [&](const std::string& known) {
                          return here.count(known) == 0 || placed.count(known) > 0;
                      });
        });
        const auto next = ready != records.end() ? ready
                                                 : std::find_if(records.begin(), records.end(), [&](const Record& each) {
                                                       return placed.count(each.hash) == 0; // a circle cannot be signed
                                                   });
        placed.insert(next->hash);
        ordered.push_back(*next);
    }
    return ordered;
}

// The newest correction of each record decides what it says now; a void one says nothing.
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
        Record now = each;
        if (const auto found = corrections.find(each.hash); found != corrections.end()) {
            const Json& body = found->second->entry.body;
            if (body.value("void", false) || !body.contains("body"))
                continue;
            now.entry.body = body["body"];
            now.entry.at = found->second->entry.at;
            now.entry.by = found->second->entry.by;
        }
        said.push_back(std::move(now));
    }
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
    const auto said = corrected(ordered);
    if (said.empty())
        return std::nullopt;
    fill(fact, said);
    return fact;
}

} // namespace cotter::records
