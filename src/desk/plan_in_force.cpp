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

bool is_in_force(const Json& plan, const std::string& today)
{
    return plan.value("issued", false) && plan.value("first_day", "9") <= today && today <= plan.value("last_day", "0");
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
    const auto consider = [&](const records::Entry& entry, const Json& body) {
        if (entry.at <= until && entry.at > newest.at)
            newest = {entry.at, body};
    };
    for (const auto& each : book.newest(kind, every_record))
        if (each.entry.about == about)
            consider(each.entry, each.entry.body);
    for (const auto& each : book.newest("correction", every_record)) {
        const auto old = book.find(each.entry.body.value("corrects", ""));
        if (old && old->entry.kind == kind && old->entry.about == about)
            consider(each.entry, each.entry.body.value("body", Json::object()));
    }
    return newest;
}

// Mass is no size: each lift weighs its pipe anew.
bool is_same_size(const Json& a, const Json& b)
{
    constexpr std::array sizes{"shape",      "bore_mm",      "barrel_mm",       "socket_mm",
                               "overall_mm", "effective_mm", "socket_length_mm"};
    return std::all_of(sizes.begin(), sizes.end(),
                       [&](const char* field) { return a.value(field, Json{}) == b.value(field, Json{}); });
}

} // namespace

Json plan_for(const Book& book, const std::string& site, rules::Day day, const std::string& standing)
{
    Json chosen = Json::object();
    std::tuple<bool, bool, std::int64_t> best{false, false, -1};
    for (const Fact& fact : plans_of(book, site)) {
        const std::tuple mine{is_in_force(fact.doc, rules::to_string(day)),
                              !standing.empty() && has_place(fact.doc, standing), fact.at};
        if (mine > best) {
            best = mine;
            chosen = fact.doc;
        }
    }
    return chosen;
}

std::vector<Json> places_in_force(const Book& book, const std::string& site, rules::Day day)
{
    std::vector<Fact> plans = plans_of(book, site);
    std::stable_sort(plans.begin(), plans.end(), [](const Fact& a, const Fact& b) { return a.at > b.at; });
    std::vector<Json> places;
    std::set<std::string> marks;
    for (const Fact& fact : plans)
        for (const Json& each : fact.doc.value("places", Json::array()))
            if (is_in_force(fact.doc, rules::to_string(day)) && marks.insert(each.value("id", "")).second)
                places.push_back(each);
    return places;
}

std::vector<rules::Id> pipes_as_planned(const Book& book, const Json& plan)
{
    const rules::Instant made = said_by(book, "lift_plan", plan.value("id", ""), book.state().newest_record_at).at;
    std::vector<rules::Id> pipes;
    for (const auto& each : plan.value("pipes", std::vector<std::string>{}))
        if (is_same_size(said_by(book, "pipe", each, made).body, doc(book, "pipe", each)))
            pipes.push_back(each);
    return pipes;
}

} // namespace cotter::desk
