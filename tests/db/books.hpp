#pragma once

// Small books to test with: invented data, a fixed day.

#include "kinds.hpp"
#include "scratch.hpp"
#include "store.hpp"
#include "store_error.hpp"

#include <memory>
#include <stdexcept>
#include <string>
#include <vector>

namespace cotter::tests {

using records::Entry;
using records::Json;

inline constexpr rules::Instant morning{1795590000}; // 2026-11-25T07:00:00Z

inline Entry entry(const std::string& kind, const std::string& about, Json body, std::int64_t seconds = 60)
{
    Entry made;
    made.kind = kind;
    made.about = about;
    made.who = made.by = "quill";
    made.how = "name only";
    made.at = morning + rules::Instant{seconds};
    made.day = rules::utc_day(made.at);
    made.body = std::move(body);
    return made;
}

inline Entry pipe(const std::string& id, std::int64_t stated_kg, std::int64_t seconds = 60)
{
    return entry("pipe", id, {{"name", "DN 450 (invented)"}, {"stated_kg", stated_kg}}, seconds);
}

inline Entry person(const std::string& id, const std::string& name, std::int64_t seconds = 60)
{
    return entry("person", id, {{"name", name}}, seconds);
}

// The example of every kind, a minute apart.
inline std::vector<Entry> one_of_each_kind()
{
    std::vector<Entry> all;
    for (const auto& kind : records::kinds())
        if (kind.name != "device")
            all.push_back(entry(kind.name, kind.schema.at("x-example-about").get<std::string>(),
                                kind.schema.at("examples").at(0), 60 * static_cast<std::int64_t>(all.size() + 1)));
    return all;
}

inline std::unique_ptr<db::Store> make_book(const fs::path& path, bool sample = true)
{
    return db::Store::make(path, {"cab tablet", sample, morning, rules::utc_day(morning)});
}

// A closed book with its device, two pipes and a person: records 1 to 4.
inline void make_small_book(const fs::path& path)
{
    make_book(path)->append(
        {pipe("sk-450", 690), pipe("sk-600", 1290, 120), person("hallam", "O. Hallam (invented)", 180)});
}

// What `act` throws as a StoreError; "" if it does not.
template <class Act> std::string store_error_of(Act act)
{
    try {
        act();
        return "";
    } catch (const db::StoreError& e) {
        return e.what();
    }
}

inline bool contains(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

} // namespace cotter::tests
