// The JSON of a site's day, as `cotter day` prints it.

#include "local_time.hpp"
#include "site_day.hpp"

namespace cotter::desk {

namespace {

Json text_or_null(const std::string& text) { return text.empty() ? Json{} : Json(text); }
Json instant_or_null(std::optional<rules::Instant> at) { return at ? Json(to_string(*at)) : Json{}; }
Json name_or_null(const Book& book, const std::string& id) { return id.empty() ? Json{} : Json(shown_name(book, id)); }

const char* name(CheckState state)
{
    switch (state) {
    case CheckState::not_asked: return "not asked";
    case CheckState::none: return "not done";
    case CheckState::stale: return "to do again";
    case CheckState::stands: return "done";
    }
    return "not done";
}

Json unit_json(const DayUnit& unit, const Book& book)
{
    Json json = to_json(unit.row);
    json.update({{"paper", text_or_null(unit.newest_report)},
                 {"examined", unit.examined ? Json(rules::to_string(*unit.examined)) : Json{}},
                 {"evidence_here", unit.row.evidence_here},
                 {"check", name(unit.check)},
                 {"checked_by", name_or_null(book, unit.checked_by)},
                 {"checked_at", instant_or_null(unit.checked_at)}});
    return json;
}

Json plan_json(const DayPlan& plan)
{
    Json json = {{"in_force", plan.in_force}, {"outside_now", Json::array()}};
    for (const Reason& each : plan.changes)
        json["outside_now"].push_back(in_english(each));
    for (const char* field : {"id", "title", "issue", "first_day", "last_day"})
        json[field] = plan.doc.value(field, Json{});
    return json;
}

} // namespace

Json to_json(const SiteDay& day, const Book& book)
{
    Json json = {{"site", shown_name(book, day.site)},
                 {"at", to_string(day.at)},
                 {"day", rules::to_string(day.day)},
                 {"plans", Json::array()},
                 {"units", Json::array()},
                 {"people", Json::array()},
                 {"trenches", Json::array()},
                 {"stops", Json::array()}};
    for (const DayPlan& each : day.plans)
        json["plans"].push_back(plan_json(each));
    for (const DayUnit& each : day.units)
        json["units"].push_back(unit_json(each, book));
    for (const DayPerson& each : day.people)
        json["people"].push_back(
            {{"role", each.role}, {"person", shown_name(book, each.person)}, {"briefed", each.briefed}});
    for (const DayTrench& each : day.trenches)
        json["trenches"].push_back({{"place", each.place},
                                    {"needed", each.needed},
                                    {"inspected_by", name_or_null(book, each.inspected_by)},
                                    {"inspected_at", instant_or_null(each.inspected_at)},
                                    {"safe", each.safe},
                                    {"holds", each.holds}});
    for (const DayStop& each : day.stops)
        json["stops"].push_back({{"unit", label_of(book, each.unit)},
                                 {"why", each.why},
                                 {"by", shown_name(book, each.by)},
                                 {"at", to_string(each.at)}});
    return json;
}

} // namespace cotter::desk
