#pragma once

// Several devices that write, each knowing what it has seen: their records, and the facts folded from them.

#include "fact.hpp"
#include "kinds.hpp"
#include "record.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace cotter::tests {

using records::Entry;
using records::Fact;
using records::FactKey;
using records::Json;
using records::Record;

class Devices {
public:
    Devices()
    {
        for (const char* name : {"cab", "site", "yard"}) // the same devices in every run
            devices_.push_back({records::DeviceKey::from_seed(records::sha256(name)), {}, {}});
    }

    // A record by one device. It names the heads of its fact that the device has seen.
    Record write(std::size_t device, const std::string& kind, const std::string& about, Json body, std::int64_t seconds,
                 const std::string& who = "quill")
    {
        Device& it = devices_.at(device);
        Entry entry;
        entry.kind = kind;
        entry.about = about;
        entry.who = entry.by = who;
        entry.how = "name only";
        entry.body = std::move(body);
        entry.at = rules::Instant{1795590000 + seconds};
        entry.day = rules::utc_day(entry.at);
        entry.after = known_heads(it, entry);
        const Record record = records::sign(entry, it.key, it.head);
        it.head = {record.seq, record.hash};
        it.seen.insert(record.hash);
        all_.push_back(record);
        return record;
    }

    // Everybody sees everything.
    void meet()
    {
        for (Device& each : devices_)
            for (const Record& record : all_)
                each.seen.insert(record.hash);
    }

    std::set<FactKey> keys() const
    {
        std::set<FactKey> keys;
        for (const Record& each : all_)
            for (FactKey& key : touched(each))
                keys.insert(std::move(key));
        return keys;
    }

    std::vector<Record> records_of(const FactKey& key) const
    {
        std::vector<Record> found;
        for (const Record& each : all_) {
            const auto touches = touched(each);
            if (std::find(touches.begin(), touches.end(), key) != touches.end())
                found.push_back(each);
        }
        return found;
    }

    std::optional<Fact> fact(const std::string& kind, const std::string& key) const
    {
        return records::fold({kind, key}, records_of({kind, key}));
    }
    Json doc(const std::string& kind, const std::string& key) const
    {
        const auto found = fact(kind, key);
        return found ? found->doc : Json{};
    }

private:
    struct Device {
        records::DeviceKey key;
        records::Head head;
        std::set<std::string> seen;
    };

    std::vector<FactKey> touched(const Record& record) const
    {
        return touched_by(record, [this](const std::string& hash) -> std::optional<Record> {
            const auto found =
                std::find_if(all_.begin(), all_.end(), [&](const Record& each) { return each.hash == hash; });
            return found == all_.end() ? std::nullopt : std::optional{*found};
        });
    }

    std::vector<std::string> known_heads(const Device& device, const Entry& entry) const
    {
        Record draft;
        draft.entry = entry;
        std::vector<std::string> heads;
        for (const FactKey& key : touched(draft)) {
            std::vector<Record> known = records_of(key);
            std::erase_if(known, [&](const Record& each) { return device.seen.count(each.hash) == 0; });
            for (std::string& head : records::heads_of(known))
                heads.push_back(std::move(head));
        }
        return heads;
    }

    std::vector<Device> devices_;
    std::vector<Record> all_;
};

// All that a fact says, as text.
inline std::string text_of(const std::optional<Fact>& fact)
{
    if (!fact)
        return "nothing";
    auto about = fact->about;
    std::sort(about.begin(), about.end());
    return fact->key.kind + " " + fact->key.key + (fact->open ? " open " : " ") + std::to_string(fact->at) +
           Json(about).dump() + Json(fact->heads).dump() + fact->doc.dump();
}

} // namespace cotter::tests
