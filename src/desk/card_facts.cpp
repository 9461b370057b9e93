#include "card_facts.hpp"

#include "local_time.hpp"
#include "plan_in_force.hpp"

#include <algorithm>
#include <array>

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
    const Json records = doc(book, "setting", asked.unit).value("records", Json::array());
    if (model.value("adjusts", true) && !records.empty())
        facts.setting = records.back().value("state", "");
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
    for (const Json& each : sheet.value("around", Json::array()))
        facts.near.push_back(
            {each.value("what", ""), each.value("whose_rule", ""), each.value("least_mm", std::int64_t{0})});
}

} // namespace

int laid_this_shift(const Book& book, const std::string& pipe)
{
    const Json shift = open_shift(book, current_site(book));
    const auto start = shift.value("start", std::int64_t{0});
    int laid = 0;
    for (const auto& lift : book.facts("lift"))
        if (!shift.empty() && lift.doc.value("lift_done_at", std::int64_t{-1}) >= start &&
            (pipe.empty() || lift.doc.value("pipe", "") == pipe))
            ++laid;
    return laid;
}

CardFacts card_facts(const Book& book, const LiftAsked& asked)
{
    CardFacts facts;
    facts.first_of_type = laid_this_shift(book, asked.pipe) == 0;
    facts.pipe = shown_name(book, asked.pipe);
    add_model(book, asked, facts);
    const std::string site = current_site(book);
    const rules::Question question = lift_question(book, asked); // for the standing place that it takes
    facts.place = question.place && question.place->id ? *question.place->id : asked.standing;
    add_plan(plan_for(book, site, local_day(asked.now, zone_of(book, site)), facts.place), facts);
    return facts;
}

} // namespace cotter::desk
