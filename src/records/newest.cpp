// The newest body of a kind, and what holds where two devices wrote without knowing of each other.

#include "fold_docs.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace cotter::records {

namespace {

bool weighs(const std::string& field)
{
    static const std::set<std::string> masses{
        "mass_kg",          "stated_kg",          "water_kg",          "mud_kg",
        "shackles_kg",      "bucket_kg",          "nose_radius_mm",    "centre_radius_mm",
        "pin_to_centre_mm", "density_kg_m3",      "allowance_percent", "above_crown_mm",
        "below_invert_mm",  "envelope_length_mm", "barrel_mm",         "socket_mm",
        "overall_mm",       "socket_length_mm",   "warning_days",      "zone_mm",
        "tail_swing_mm"};
    return masses.count(field) > 0;
}

// Where yes is what asks for more, yes holds; elsewhere no.
bool asks_for_more(const std::string& field)
{
    static const std::set<std::string> fields{"off_hire", "scrapped", "someone_enters", "expired_card_stops",
                                              "setting_is_configuration"};
    return fields.count(field) > 0;
}

// Of two numbers the heavier load, the lower rating; of two days the earlier; of anything else nothing is known.
Json safer(const std::string& field, const Json& a, const Json& b)
{
    if (a.is_number_integer() && b.is_number_integer())
        return weighs(field) ? std::max(a, b) : std::min(a, b);
    if (a.is_string() && b.is_string() && rules::parse_day(a.get<std::string>()) &&
        rules::parse_day(b.get<std::string>()))
        return std::min(a, b);
    if (a.is_boolean() && b.is_boolean() && field != "adjusts")
        return asks_for_more(field);
    return {};
}

Json merged(const std::vector<const Record*>& heads)
{
    Json body = heads.front()->entry.body;
    std::set<std::string> disputed;
    for (const Record* head : heads) {
        Json all = body;
        all.update(head->entry.body);
        for (const auto& [field, unused] : all.items()) {
            const Json mine = body.value(field, Json{}), theirs = head->entry.body.value(field, Json{});
            if (mine == theirs)
                continue;
            body[field] = safer(field, mine, theirs);
            disputed.insert(field);
        }
    }
    if (!disputed.empty())
        body["disputed"] = disputed;
    for (const std::string& field : disputed)
        if (body[field].is_null())
            body.erase(field);
    return body;
}

} // namespace

std::set<std::string> known_to(const Said& records, const Said& all)
{
    std::map<std::string, const SaidRecord*> by_hash;
    for (const SaidRecord& each : all)
        by_hash[each.hash] = &each;
    std::set<std::string> known;
    std::vector<std::string> ahead;
    for (const SaidRecord& each : records)
        ahead.insert(ahead.end(), each.entry.after.begin(), each.entry.after.end());
    while (!ahead.empty()) {
        const std::string hash = ahead.back();
        ahead.pop_back();
        const auto found = by_hash.find(hash);
        if (known.insert(hash).second && found != by_hash.end())
            ahead.insert(ahead.end(), found->second->entry.after.begin(), found->second->entry.after.end());
    }
    return known;
}

// A comparison alone settles nothing between two data.
Json newest_body(const Said& said, const std::string& kind)
{
    Said same;
    std::copy_if(said.begin(), said.end(), std::back_inserter(same),
                 [&](const SaidRecord& each) { return each.entry.kind == kind; });
    if (same.empty())
        return Json::object();
    const std::set<std::string> known = known_to(same, said);
    std::vector<const Record*> heads;
    for (const Record& each : same)
        if (known.count(each.hash) == 0)
            heads.push_back(&each);
    return heads.size() > 1 ? merged(heads) : heads.empty() ? same.back().entry.body : heads.front()->entry.body;
}

} // namespace cotter::records
