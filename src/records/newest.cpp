// The newest body of a kind, and what holds where two devices wrote without knowing of each other.

#include "fold_docs.hpp"

#include <algorithm>
#include <set>

namespace cotter::records {

namespace {

bool weighs(const std::string& field)
{
    static const std::set<std::string> masses{"mass_kg", "stated_kg", "water_kg", "mud_kg", "shackles_kg", "bucket_kg",
                                              "nose_radius_mm", "centre_radius_mm", "pin_to_centre_mm", "density_kg_m3",
                                              "allowance_percent", "above_crown_mm", "below_invert_mm", "envelope_length_mm",
                                              "barrel_mm", "socket_mm", "overall_mm"};
    return masses.count(field) > 0;
}

// Of two numbers the heavier load, the lower rating; of two days the earlier; of anything else nothing is known.
Json safer(const std::string& field, const Json& a, const Json& b)
{
    if (a.is_number_integer() && b.is_number_integer())
        return weighs(field) ? std::max(a, b) : std::min(a, b);
    if (a.is_string() && b.is_string() && rules::parse_day(a.get<std::string>()) && rules::parse_day(b.get<std::string>()))
        return std::min(a, b);
    if (a.is_boolean() && b.is_boolean())
        return field == "off_hire" || field == "scrapped" || field == "someone_enters";
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
    return body;
}

} // namespace

Json newest_body(const std::vector<Record>& said, const std::string& kind)
{
    std::vector<Record> same;
    std::copy_if(said.begin(), said.end(), std::back_inserter(same),
                 [&](const Record& each) { return each.entry.kind == kind; });
    if (same.empty())
        return Json::object();
    std::set<std::string> known;
    for (const Record& each : said)
        known.insert(each.entry.after.begin(), each.entry.after.end());
    std::vector<const Record*> heads;
    for (const Record& each : same)
        if (known.count(each.hash) == 0)
            heads.push_back(&each);
    return heads.size() > 1 ? merged(heads) : same.back().entry.body;
}

} // namespace cotter::records
