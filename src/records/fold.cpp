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

// Of records in order of time, which wait for which: by place, those that know it; and how many each waits for.
struct Waiting {
    std::vector<std::vector<std::size_t>> followers;
    std::vector<std::size_t> open;
};

Waiting waiting_in(const std::vector<Record>& records)
{
    std::map<std::string, std::size_t> places;
    for (std::size_t i = 0; i < records.size(); ++i)
        places[records[i].hash] = i;
    Waiting waiting{std::vector<std::vector<std::size_t>>(records.size()), std::vector<std::size_t>(records.size(), 0)};
    for (std::size_t i = 0; i < records.size(); ++i)
        for (const std::string& known : records[i].entry.after)
            if (const auto found = places.find(known); found != places.end()) {
                waiting.followers[found->second].push_back(i);
                ++waiting.open[i];
            }
    return waiting;
}

// What a record knows comes before it; else by time, device and number. Any order in gives the same order out.
std::vector<Record> in_order(std::vector<Record> records)
{
    std::sort(records.begin(), records.end(), is_earlier);
    Waiting waiting = waiting_in(records);
    std::set<std::size_t> left, ready;
    for (std::size_t i = 0; i < records.size(); ++i)
        (waiting.open[i] == 0 ? ready : left).insert(i);
    std::vector<Record> ordered;
    while (!ready.empty() || !left.empty()) {
        const std::size_t next = !ready.empty() ? *ready.begin() : *left.begin(); // a circle cannot be signed
        ready.erase(next);
        left.erase(next);
        for (const std::size_t each : waiting.followers[next])
            if (--waiting.open[each] == 0 && left.erase(each) > 0)
                ready.insert(each);
        ordered.push_back(std::move(records[next]));
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
    return old;
}

bool is_void(const Record& correction)
{
    return correction.entry.body.value("void", false) || !correction.entry.body.contains("body");
}

// A correction may have moved a record to another fact.
bool touches(const Record& record, const FactKey& key)
{
    const auto touched = touched_by(record, [](const std::string&) { return std::optional<Record>{}; });
    return std::find(touched.begin(), touched.end(), key) != touched.end();
}

using Corrections = std::map<std::string, std::vector<Record>>; // by the hash of what they correct

Corrections corrections_in(const std::vector<Record>& ordered)
{
    Corrections found;
    for (const Record& each : ordered)
        if (each.entry.kind == "correction")
            found[each.entry.body.value("corrects", "")].push_back(each);
    return found;
}

// Those that no other correction of the same record knows of; where one takes the record away and one does not, only
// the latter.
std::vector<Record> standing(std::vector<Record> corrections)
{
    const auto heads = heads_of(corrections);
    std::erase_if(corrections,
                  [&](const Record& each) { return std::find(heads.begin(), heads.end(), each.hash) == heads.end(); });
    if (!std::all_of(corrections.begin(), corrections.end(), is_void))
        std::erase_if(corrections, is_void);
    return corrections;
}

// What a record says now. Of two bodies that do not know of each other both are said, and the fold finds the safer.
void say(const Record& record, const std::vector<Record>& corrections, Said& said)
{
    if (corrections.empty())
        said.push_back({record, record.hash, record.entry});
    for (const Record& each : standing(corrections))
        if (!is_void(each))
            said.push_back({with_new_body(record, each), each.hash, each.entry});
}

// Adds to what each record knew what was known to those that do not speak for themselves any more.
void know_through(const std::vector<Record>& ordered, Said& said)
{
    std::map<std::string, std::vector<std::string>> silent;
    for (const Record& each : ordered) {
        silent[each.hash] = each.entry.after;
        if (each.entry.kind == "correction")
            silent[each.hash].push_back(each.entry.body.value("corrects", ""));
    }
    for (const SaidRecord& each : said)
        silent.erase(each.hash);
    for (SaidRecord& each : said) {
        std::vector<std::string>& after = each.entry.after;
        for (std::size_t i = 0; i < after.size(); ++i)
            if (const auto found = silent.find(after[i]); found != silent.end())
                for (const std::string& hash : found->second)
                    if (std::find(after.begin(), after.end(), hash) == after.end())
                        after.push_back(hash);
    }
}

// The newest correction of each record decides what it says now; a void one says nothing.
Said corrected(const std::vector<Record>& ordered)
{
    const Corrections corrections = corrections_in(ordered);
    Said said;
    for (const Record& each : ordered) {
        const auto found = corrections.find(each.hash);
        if (each.entry.kind != "correction")
            say(each, found == corrections.end() ? std::vector<Record>{} : found->second, said);
    }
    know_through(ordered, said);
    for (SaidRecord& each : said)
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
    Said said = corrected(ordered);
    std::erase_if(said, [&](const SaidRecord& each) { return !touches(each, key); });
    if (said.empty())
        return std::nullopt;
    fill(fact, said);
    return fact;
}

} // namespace cotter::records
