#include "site_day.hpp"

#include "decide.hpp"
#include "entitled.hpp"
#include "lift_question.hpp"
#include "local_time.hpp"
#include "papers.hpp"
#include "plan_in_force.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace cotter::desk {

using namespace rules;

namespace {

using Ids = std::vector<std::string>;

std::string role_of(const Book& book, const std::string& unit) { return doc(book, "unit", unit).value("role", ""); }

bool is_here(const Book& book, const std::string& unit, const std::string& site)
{
    const Json whereabouts = doc(book, "whereabouts", unit);
    return whereabouts.value("at_site", "") == site && !whereabouts.value("scrapped", false);
}

// The newest shift that began on that day or lasts until then, also one that is over: its checks were done all the
// same.
Known<Shift> shift_of(const Book& book, const SiteDay& day)
{
    const std::string zone = zone_of(book, day.site);
    Known<Shift> newest;
    for (const auto& fact : book.facts("shift")) {
        if (fact.doc.value("site", "") != day.site)
            continue;
        const Shift shift = records::read_shift(fact.doc);
        const bool is_of_today = shift.start && *shift.start <= day.at &&
                                 (local_day(*shift.start, zone) == day.day || (shift.end && day.at <= *shift.end));
        if (is_of_today && (!newest || *shift.start > *newest->start))
            newest = shift;
    }
    return newest;
}

// After the end of a shift it is asked as at its end.
void in_its_shift(Question& question, const Book& book, const SiteDay& day)
{
    question.shift = shift_of(book, day);
    question.now = question.shift && question.shift->end ? std::min(day.at, *question.shift->end) : day.at;
}

// The newest check of a unit on that day.
std::optional<records::Fact> newest_check(const Book& book, const std::string& unit, const std::string& zone, Day day)
{
    std::optional<records::Fact> newest;
    for (auto& fact : book.facts_about("check", unit))
        if (fact.doc.contains("machine") && local_day(Instant{fact.doc.value("at", std::int64_t{0})}, zone) == day &&
            (!newest || fact.doc["at"] > newest->doc["at"]))
            newest = std::move(fact);
    return newest;
}

// What hangs on a machine, with what was answered about it: the same question as for a lift.
class OnMachine {
public:
    OnMachine(const Book& book, const SiteDay& day, const std::string& machine, const std::string& on_the_levers)
    {
        LiftAsked asked;
        asked.unit = doc(book, "coupling", machine).value("attachment", "");
        asked.machine = machine;
        asked.on_the_levers = on_the_levers;
        asked.now = day.at;
        try {
            question_ = lift_question(book, asked);
            units_ = load_path(book, asked);
            if (asked.unit.empty()) { // the machine alone
                units_.pop_back();
                question_.items.pop_back();
            }
        } catch (const NotFound&) { // what hangs there cannot be: nothing in it counts as checked
            question_ = unit_question(book, machine, day.at, day.day);
            units_ = {machine};
        }
        in_its_shift(question_, book, day);
    }

    const Ids& units() const { return units_; }

    CheckState state_of(const std::string& unit) const
    {
        const auto place = static_cast<std::size_t>(std::find(units_.begin(), units_.end(), unit) - units_.begin());
        if (place == units_.size() || question_.items[place].role == Role::headplate)
            return CheckState::not_asked;
        CheckState state = CheckState::stands;
        for (const Finding& each : decide(question_).findings)
            if (each.about == question_.items[place].tag) {
                if (each.code == Code::check_none)
                    state = CheckState::none;
                if (each.code == Code::check_stale && state == CheckState::stands)
                    state = CheckState::stale;
            }
        return state;
    }

private:
    Question question_;
    Ids units_;
};

// Named for the day where there is one machine; else whoever checked the machine last.
std::string on_the_levers(const Book& book, const SiteDay& day, const std::string& zone, const std::string& machine,
                          bool alone)
{
    for (const DayPerson& each : day.people)
        if (alone && each.role == "operator")
            return each.person;
    const auto check = newest_check(book, machine, zone, day.day);
    return check ? check->doc.value("by", "") : "";
}

bool is_briefed(const SiteDay& day, const std::string& who)
{
    return !day.plans.empty() && std::all_of(day.plans.begin(), day.plans.end(), [&](const DayPlan& plan) {
        const Json briefed = plan.doc.value("briefed", Json::array());
        return std::any_of(briefed.begin(), briefed.end(), [&](const Json& each) {
            return each["person"] == who && each["issue"] == plan.doc.value("issue", Json{});
        });
    });
}

void add_people(const Book& book, SiteDay& day)
{
    const Json roles = doc(book, "people_today", day.site + " " + rules::to_string(working_day(book, day.site, day.at)))
                           .value("roles", Json::object());
    for (const auto& [role, person] : roles.items())
        day.people.push_back({role, person.get<std::string>(), is_briefed(day, person)});
}

void add_plans(const Book& book, SiteDay& day)
{
    for (Json& each : plans_for(book, day.site, day.day)) {
        const bool in_force = is_in_force(each, day.day) && each.value("signed", false);
        auto changes = changes_since(book, each);
        day.plans.push_back({std::move(each), in_force, std::move(changes)});
    }
}

DayUnit unit_of(const Book& book, const BoardRow& row, const SiteDay& day, const std::string& zone,
                const std::vector<OnMachine>& machines)
{
    DayUnit unit;
    unit.row = row;
    const Question question = unit_question(book, row.unit, day.at, day.day);
    const Papers papers = papers_of(question, question.items.front(), day.day);
    if (papers.governing && papers.governing.id)
        unit.newest_report = *papers.governing.id;
    unit.examined = papers.governing.examined;
    for (const OnMachine& each : machines)
        if (unit.check == CheckState::not_asked)
            unit.check = each.state_of(row.unit);
    if (const auto check = newest_check(book, row.unit, zone, day.day)) {
        unit.checked_by = check->doc.value("by", "");
        unit.checked_at = Instant{check->doc.value("at", std::int64_t{0})};
    }
    return unit;
}

void add_units(const Book& book, SiteDay& day, const std::string& zone)
{
    std::set<std::string> here;
    Ids machine_ids;
    for (const std::string& unit : book.keys("unit"))
        if (is_here(book, unit, day.site)) {
            here.insert(unit);
            if (role_of(book, unit) == "machine")
                machine_ids.push_back(unit);
        }
    std::vector<OnMachine> machines;
    for (const std::string& each : machine_ids)
        machines.emplace_back(book, day, each, on_the_levers(book, day, zone, each, machine_ids.size() == 1));
    for (const OnMachine& each : machines)
        here.insert(each.units().begin(), each.units().end());
    for (const BoardRow& row : board_of(book, {here.begin(), here.end()}, day.at, day.day))
        day.units.push_back(unit_of(book, row, day, zone, machines));
}

// The same question as before a lift at that place.
bool is_inspected(const SiteDay& day, const Book& book, const Json& place, Json trench)
{
    for (Json& each : trench["inspections"])
        each["by_competent"] = is_competent(each);
    Question question;
    question.purpose = Purpose::lift;
    question.day = day.day;
    in_its_shift(question, book, day);
    question.trench = records::read_trench(trench);
    question.place = Place{place.value("id", ""), {}, {}};
    const auto findings = decide(question).findings;
    return std::none_of(findings.begin(), findings.end(),
                        [](const Finding& each) { return each.code == Code::trench_unchecked; });
}

DayTrench trench_of(const Book& book, const Json& place, const SiteDay& day)
{
    DayTrench trench;
    trench.place = place.value("id", "");
    Json facts = place.value("trench", Json::object());
    trench.needed = !facts.value("none", false) && facts.value("someone_enters", true);
    facts.update(doc(book, "trench", day.site + " " + trench.place));
    for (const Json& each : facts.value("inspections", Json::array())) {
        const Instant at{each.value("at", std::int64_t{0})};
        if (trench.inspected_at && *trench.inspected_at > at)
            continue;
        trench.inspected_at = at;
        trench.inspected_by = each.value("by", "");
        trench.safe = each.value("safe", false);
    }
    trench.holds = is_inspected(day, book, place, std::move(facts));
    return trench;
}

void add_trenches(const Book& book, SiteDay& day)
{
    std::set<std::string> marks; // a mark that stands in two plans is that of the newer
    for (const DayPlan& plan : day.plans)
        for (const Json& place : plan.doc.value("places", Json::array()))
            if (marks.insert(place.value("id", "")).second)
                day.trenches.push_back(trench_of(book, place, day));
}

// Also of a unit that nobody has received anywhere: it may stand here.
bool may_be_here(const Book& book, const SiteDay& day, const std::string& unit)
{
    return doc(book, "whereabouts", unit).value("at_site", "").empty() ||
           std::any_of(day.units.begin(), day.units.end(), [&](const DayUnit& each) { return each.row.unit == unit; });
}

void add_stops(const Book& book, SiteDay& day)
{
    for (const auto& fact : book.facts("stop"))
        if (const std::string unit = fact.doc.value("unit", ""); !is_lifted(fact.doc) && may_be_here(book, day, unit))
            day.stops.push_back(
                {unit, fact.doc.value("why", ""), fact.doc.value("by", ""), Instant{fact.doc.value("at", fact.at)}});
}

} // namespace

SiteDay site_day(const Book& book, const std::string& site, Instant at)
{
    const std::string zone = zone_of(book, site);
    SiteDay day;
    day.site = site;
    day.at = at;
    day.day = local_day(at, zone);
    add_plans(book, day);
    add_people(book, day);
    add_units(book, day, zone);
    add_trenches(book, day);
    add_stops(book, day);
    return day;
}

} // namespace cotter::desk
