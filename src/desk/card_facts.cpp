#include "card_facts.hpp"

#include "case.hpp"
#include "local_time.hpp"
#include "plan_in_force.hpp"
#include "standing.hpp"

#include <algorithm>
#include <array>
#include <set>

namespace cotter::desk {

using rules::CardFacts;
using rules::HoldPoint;

namespace {

std::optional<double> degrees(const Json& model, const char* field)
{
    return model.contains(field) ? std::optional{model.at(field).get<double>() / 1000} : std::nullopt;
}

HoldPoint point_named(const std::string& name)
{
    constexpr std::array<std::pair<const char*, HoldPoint>, 3> later{{{"just_clear", HoldPoint::just_clear},
                                                                      {"at_trench", HoldPoint::at_trench},
                                                                      {"before_release", HoldPoint::before_release}}};
    for (const auto& [each, point] : later)
        if (name == each)
            return point;
    return HoldPoint::before_grip;
}

void add_model(const Book& book, const LiftAsked& asked, CardFacts& facts)
{
    const Json model = doc(book, "model", doc(book, "unit", asked.unit).value("model", ""));
    facts.test_tilt = degrees(model, "test_tilt_mdeg");
    facts.entry_tilt = degrees(model, "entry_tilt_mdeg");
    facts.tilt_limit = degrees(model, "tilt_limit_mdeg");
    facts.faces_dry = flag(model, "faces_dry");
    facts.may_push = flag(model, "pushing_permitted");
    for (const Json& each : model.value("hold_points", Json::array()))
        facts.own.push_back({point_named(each.value("at", "")), each.value("ask", ""), each.value("if_not", "")});
}

Json place_named(const Json& plan, const std::string& mark)
{
    const Json places = plan.value("places", Json::array());
    const auto found =
        std::find_if(places.begin(), places.end(), [&](const Json& each) { return each.value("id", "") == mark; });
    return found == places.end() ? Json::object() : *found;
}

void add_plan(const Json& plan, CardFacts& facts)
{
    const Json sheet = plan.value("worksheet", Json::object()), place = place_named(plan, facts.place);
    const Json trench = sheet.value("trench", Json::object()), there = place.value("trench", Json::object());
    if (plan.contains("zone_mm"))
        facts.zone_mm = plan.at("zone_mm").get<std::int64_t>();
    if (sheet.contains("wind_limit_mm_s"))
        facts.wind_limit_mm_s = sheet.at("wind_limit_mm_s").get<std::int64_t>();
    facts.light = sheet.value("light", "");
    facts.route = sheet.value("route", "");
    facts.waits_at = trench.value("waits_at", "");
    facts.has_trench = !there.value("none", false);
    facts.someone_enters = there.value("someone_enters", true);
    facts.is_strutted = place.value("thread", Json::object()).value("strutted", true);
    if (facts.is_strutted && sheet.empty())
        facts.entry_tilt.reset(); // nobody has worked out whether it goes between the struts with it
    for (const Json& each : sheet.value("around", Json::array()))
        facts.near.push_back(
            {each.value("what", ""), each.value("whose_rule", ""), each.value("least_mm", std::int64_t{0})});
}

// Lifts done in the open shift, with what each was.
std::vector<records::Fact> done_this_shift(const Book& book)
{
    const Json shift = open_shift(book, current_site(book));
    std::vector<records::Fact> done;
    if (shift.empty())
        return done;
    const auto start = shift.value("start", std::int64_t{0});
    for (auto& lift : book.facts_since("lift", rules::Instant{start}))
        if (lift.doc.value("lift_done_at", std::int64_t{-1}) >= start)
            done.push_back(std::move(lift));
    return done;
}

// The same pipe with the same gear, by the same hands, from the same mark, in the same setting?
bool is_alike(const Json& asked, const rules::Question& now)
{
    const rules::Question then = records::read_question(asked.dump());
    const auto gear = [](const rules::Question& q) {
        std::vector<rules::Id> tags;
        for (const rules::Item& each : q.items)
            tags.push_back(each.tag);
        return tags;
    };
    const auto person = [](const rules::Question& q) {
        const auto found = q.people.find("operator");
        return found != q.people.end() && found->second ? found->second->id : std::nullopt;
    };
    const auto place = [](const rules::Question& q) { return q.place ? q.place->id : std::nullopt; };
    const auto pipe = [](const rules::Question& q) { return q.pipe ? q.pipe->id : std::nullopt; };
    return pipe(then) == pipe(now) && gear(then) == gear(now) && person(then) == person(now) &&
           place(then) == place(now) &&
           rules::standing_of(then.setting_records).state == rules::standing_of(now.setting_records).state;
}

bool is_first_of_type(const Book& book, const rules::Question& now)
{
    constexpr std::size_t of_a_shift = 400;
    std::set<std::string> done;
    for (const auto& lift : done_this_shift(book))
        done.insert(lift.key.key);
    for (const auto& asked : book.newest("lift_asked", done.empty() ? 0 : of_a_shift))
        if (done.count(asked.entry.about) > 0 && is_alike(asked.entry.body.at("question"), now))
            return false;
    return true;
}

} // namespace

int laid_this_shift(const Book& book, const std::string& pipe)
{
    const auto done = done_this_shift(book);
    return static_cast<int>(std::count_if(done.begin(), done.end(), [&](const records::Fact& lift) {
        return pipe.empty() || lift.doc.value("pipe", "") == pipe;
    }));
}

CardFacts card_facts(const Book& book, const LiftAsked& asked, const rules::Question& question)
{
    CardFacts facts;
    facts.pipe = shown_name(book, asked.pipe);
    add_model(book, asked, facts);
    const std::string site = current_site(book);
    facts.first_of_type = is_first_of_type(book, question);
    if (const rules::Item* attachment = rules::find_item(question, rules::Role::attachment);
        attachment && attachment->model && attachment->model->adjusts.value_or(true))
        facts.setting = rules::standing_of(question.setting_records).state;
    facts.place = question.place && question.place->id ? *question.place->id : asked.standing;
    add_plan(plan_for(book, site, local_day(asked.now, zone_of(book, site)), facts.place), facts);
    return facts;
}

} // namespace cotter::desk
