#include "stops_on_all.hpp"

#include "kinds.hpp"

#include <set>

namespace cotter::db {

using records::Entry;
using records::Json;
using records::Record;

namespace {

// Ids that a value names as units, by its schema.
void add_units(const Json& schema, const Json& value, std::set<std::string>& units)
{
    if (value.is_string() && schema.value("x-refers", "") == "unit")
        units.insert(value.get<std::string>());
    if (value.is_array() && schema.contains("items"))
        for (const Json& each : value)
            add_units(schema["items"], each, units);
    if (!value.is_object() || !schema.contains("properties"))
        return;
    for (const auto& [name, property] : schema["properties"].items())
        if (value.contains(name))
            add_units(property, value[name], units);
}

std::set<std::string> units_of(const EachRecord& each_record)
{
    std::set<std::string> units;
    each_record([&](const Record& record) {
        const Json& schema = records::find_kind(record.entry.kind)->schema;
        if (record.entry.kind == "unit" || schema.value("x-about-refers", "") == "unit")
            units.insert(record.entry.about);
        add_units(schema, record.entry.body, units);
    });
    return units;
}

} // namespace

std::vector<Entry> stops_on_all(const EachRecord& each_record, const NewBook& facts, const std::string& by,
                                const std::string& why)
{
    std::vector<Entry> entries;
    for (const std::string& unit : units_of(each_record)) {
        Entry stop;
        stop.kind = "stop_called";
        stop.about = unit;
        stop.who = stop.by = by; // the program's own hand
        stop.how = "name only";
        stop.at = facts.at;
        stop.day = facts.day;
        stop.body = {{"why", why}};
        entries.push_back(std::move(stop));
    }
    return entries;
}

} // namespace cotter::db
