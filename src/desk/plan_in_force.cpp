#include "plan_in_force.hpp"

#include <algorithm>
#include <array>
#include <set>
#include <tuple>

namespace cotter::desk {

using records::Fact;

namespace {

bool has_place(const Json& plan, const std::string& standing)
{
    const Json places = plan.value("places", Json::array());
    return std::any_of(places.begin(), places.end(),
                       [&](const Json& each) { return each.value("id", "") == standing; });
}

std::vector<Fact> plans_of(const Book& book, const std::string& site)
{
    std::vector<Fact> plans;
    for (Fact& fact : book.facts("plan"))
        if (fact.doc.value("site", "") == site)
            plans.push_back(std::move(fact));
    return plans;
}

constexpr std::size_t every_record = 1'000'000'000;

// What the newest record about a thing said up to an instant, corrections counted; with when.
struct SaidThen {
    rules::Instant at{-1};
    Json body = Json::object();
};

SaidThen said_by(const Book& book, const std::string& kind, const std::string& about, rules::Instant until)
{
    SaidThen newest;
    std::set<std::string> voided;
    const auto consider = [&](const records::Entry& entry, const Json& body) {
        if (entry.at <= until && entry.at > newest.at)
            newest = {entry.at, body};
    };
    for (const auto& each : book.newest("correction", every_record)) {
        const Json& said = each.entry.body;
        const auto old = book.find(said.value("corrects", ""));
        if (!old || old->entry.kind != kind || old->entry.about != about)
            continue;
        if (said.value("void", false))
            voided.insert(old->hash);
        else if (said.contains("body"))
            consider(each.entry, said.at("body"));
    }
    for (const auto& each : book.newest(kind, every_record))
        if (each.entry.about == about && voided.count(each.hash) == 0)
            consider(each.entry, each.entry.body);
    return newest;
}

// Mass is no size: each lift weighs its pipe anew.
constexpr std::array sizes{"shape",      "bore_mm",      "barrel_mm",       "socket_mm",
                           "overall_mm", "effective_mm", "socket_length_mm"};

bool is_same_size(const Json& a, const Json& b)
{
    return std::all_of(sizes.begin(), sizes.end(),
                       [&](const char* field) { return a.value(field, Json{}) == b.value(field, Json{}); });
}

// As it was planned with; of a plan that was entered by hand, what was said of the pipe before.
Json size_planned(const Book& book, const Json& plan, const std::string& pipe, rules::Instant made)
{
    for (const Json& each : plan.value("pipe_sizes", Json::array()))
        if (each.value("pipe", "") == pipe)
            return each;
    return said_by(book, "pipe", pipe, made - rules::Instant{1}).body;
}

} // namespace

bool is_in_force(const Json& plan, rules::Day day)
{
    const std::string today = rules::to_string(day);
    return plan.value("issued", false) && plan.value("first_day", "9") <= today && today <= plan.value("last_day", "0");
}

Json plan_for(const Book& book, const std::string& site, rules::Day day, const std::string& standing)
{
    Json chosen = Json::object();
    std::tuple<bool, bool, std::int64_t> best{false, false, -1};
    for (const Fact& fact : plans_of(book, site)) {
        const std::tuple mine{is_in_force(fact.doc, day), !standing.empty() && has_place(fact.doc, standing), fact.at};
        if (mine > best) {
            best = mine;
            chosen = fact.doc;
        }
    }
    return chosen;
}

std::vector<Json> plans_for(const Book& book, const std::string& site, rules::Day day)
{
    std::vector<Fact> facts = plans_of(book, site);
    std::stable_sort(facts.begin(), facts.end(), [](const Fact& a, const Fact& b) { return a.at > b.at; });
    std::vector<Json> plans;
    for (const Fact& fact : facts)
        if (is_in_force(fact.doc, day))
            plans.push_back(fact.doc);
    if (plans.empty() && !facts.empty())
        plans.push_back(facts.front().doc);
    return plans;
}

std::vector<Json> places_in_force(const Book& book, const std::string& site, rules::Day day)
{
    std::vector<Json> places;
    std::set<std::string> marks;
    for (const Json& plan : plans_for(book, site, day))
        for (const Json& each : plan.value("places", Json::array()))
            if (is_in_force(plan, day) && marks.insert(each.value("id", "")).second)
                places.push_back(each);
    return places;
}

rules::Instant made_at(const Book& book, const std::string& plan)
{
    return said_by(book, "lift_plan", plan, book.state().newest_record_at).at;
}

Json planned_sizes(const Book& book, const std::string& pipe)
{
    const Json stands = doc(book, "pipe", pipe);
    Json planned{{"pipe", pipe}};
    for (const char* field : sizes)
        if (stands.contains(field))
            planned[field] = stands.at(field);
    return planned;
}

std::vector<rules::Id> pipes_as_planned(const Book& book, const Json& plan, rules::Instant made)
{
    std::vector<rules::Id> pipes;
    for (const auto& each : plan.value("pipes", std::vector<std::string>{}))
        if (is_same_size(size_planned(book, plan, each, made), doc(book, "pipe", each)))
            pipes.push_back(each);
    return pipes;
}

Json planned_gear(const Book& book, const std::string& unit)
{
    const Json stands = doc(book, "unit", unit);
    Json planned{{"unit", unit}};
    for (const char* field : {"model", "mass_kg", "plate_kg", "tail_swing_mm", "pattern"})
        if (stands.contains(field))
            planned[field] = stands.at(field);
    return planned;
}

namespace {

bool is_unchanged(const Json& data, rules::Instant since)
{
    return data.value("changed", Json::object()).value("at", std::int64_t{0}) <= since.count();
}

bool is_gear_unchanged(const Book& book, const Json& plan, rules::Instant made)
{
    const Json gear = plan.value("gear_planned", Json::array());
    return std::all_of(gear.begin(), gear.end(), [&](const Json& each) {
        return planned_gear(book, each.at("unit")) == each &&
               is_unchanged(doc(book, "model", each.value("model", "")), made);
    });
}

} // namespace

bool is_as_planned(const Book& book, const Json& plan, rules::Instant made, const std::vector<std::string>& path,
                   const std::string& chart)
{
    const Json sheet = plan.value("worksheet", Json::object());
    if (sheet.empty())
        return true;
    std::vector<std::string> planned{sheet.value("machine", "")};
    for (const char* field : {"hitch", "headplate"})
        if (sheet.contains(field))
            planned.push_back(sheet.at(field));
    for (const Json& each : sheet.value("hangs", Json::array()))
        planned.push_back(each);
    planned.push_back(sheet.value("attachment", ""));
    return planned == path && chart == sheet.value("chart", "") && is_unchanged(doc(book, "chart", chart), made) &&
           is_gear_unchanged(book, plan, made);
}

std::vector<Reason> changes_since(const Book& book, const Json& plan)
{
    const rules::Instant made = made_at(book, plan.value("id", ""));
    const std::vector<rules::Id> as_planned = pipes_as_planned(book, plan, made);
    std::vector<Reason> changes;
    for (const std::string each : plan.value("pipes", Json::array()))
        if (std::find(as_planned.begin(), as_planned.end(), each) == as_planned.end())
            changes.push_back({shown_name(book, each), "its size is other than planned"});
    for (const Json& each : plan.value("gear_planned", Json::array()))
        if (!is_gear_unchanged(book, {{"gear_planned", {each}}}, made))
            changes.push_back({label_of(book, each.at("unit")), "it, or its model, is other than planned"});
    const std::string chart = plan.value("worksheet", Json::object()).value("chart", "");
    if (!chart.empty() && !is_unchanged(doc(book, "chart", chart), made))
        changes.push_back({shown_name(book, chart), "this chart is other than planned"});
    return changes;
}

std::vector<TakenMark> taken_marks(const Book& book, const std::string& plan, const Json& body)
{
    std::vector<TakenMark> taken;
    for (const Fact& fact : plans_of(book, body.value("site", ""))) {
        const bool meets = fact.doc.value("first_day", "") <= body.value("last_day", "9") &&
                           body.value("first_day", "") <= fact.doc.value("last_day", "9");
        if (fact.key.key == plan || !fact.doc.value("issued", false) || !meets)
            continue;
        for (const Json& ours : body.value("places", Json::array()))
            if (has_place(fact.doc, ours.value("id", "")))
                taken.push_back({ours.value("id", ""), fact.key.key});
    }
    return taken;
}

} // namespace cotter::desk
