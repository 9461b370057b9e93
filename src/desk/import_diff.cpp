#include "import_diff.hpp"

#include <map>
#include <set>

namespace cotter::desk {

namespace {

void add_changes(const std::vector<Column>& columns, const Json& before, const Json& now, const std::string& of,
                 std::vector<Change>& changes)
{
    for (const Column& column : columns) {
        const std::string was = text_of(column, before), is = text_of(column, now);
        if (was != is)
            changes.push_back({of + column.heading(), was, is});
    }
}

std::map<std::string, Json> parts_by_key(const Shape& shape, const Json& thing)
{
    std::map<std::string, Json> found;
    for (const Json& each : parts_of(shape, thing))
        found.try_emplace(key_of(shape, each), each);
    return found;
}

void add_part_changes(const Shape& shape, const Json& before, const Json& now, std::vector<Change>& changes)
{
    const auto old = parts_by_key(shape, before), fresh = parts_by_key(shape, now);
    std::set<std::string> keys;
    for (const auto* each : {&old, &fresh})
        for (const auto& [key, unused] : *each)
            keys.insert(key);
    for (const std::string& key : keys) {
        const std::string name = shape.part + " " + key;
        const auto was = old.find(key), is = fresh.find(key);
        if (is == fresh.end())
            changes.push_back({name, "there", "gone"});
        else if (was == old.end())
            changes.push_back({name, "not there", "new"});
        else
            add_changes(shape.parts, was->second, is->second, name + " ", changes);
    }
}

} // namespace

std::vector<Change> changes_between(const Shape& shape, const Json& before, const Json& now)
{
    std::vector<Change> changes;
    add_changes(shape.own, before, now, "", changes);
    add_part_changes(shape, before, now, changes);
    return changes;
}

} // namespace cotter::desk
