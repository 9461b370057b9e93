#include "work.hpp"

#include "decide.hpp"
#include "decision_form.hpp"
#include "entitled.hpp"
#include "local_time.hpp"
#include "question_form.hpp"
#include "receipt.hpp"

#include <algorithm>
#include <cstdlib>

namespace cotter::desk {

namespace {

std::string at_text(const Hand& hand) { return to_string(hand.at); }

} // namespace

Entry entry(const Hand& hand, std::string kind, std::string about, Json body)
{
    Entry made;
    made.kind = std::move(kind);
    made.about = std::move(about);
    made.who = made.by = hand.by;
    made.how = hand.how;
    made.with_pin = hand.with_pin;
    made.at = hand.at;
    made.day = hand.day;
    made.boot = hand.boot;
    made.boot_seconds = hand.boot_seconds;
    made.body = std::move(body);
    return made;
}

Entry open_a_shift(const Hand& hand, const std::string& site, std::int64_t seconds, const std::string& zone)
{
    const rules::Instant end = hand.at + rules::Instant{std::min(seconds, longest_shift_seconds)};
    return entry(hand, "shift", "shift " + at_text(hand),
                 {{"site", site},
                  {"start", hand.at.count()},
                  {"end", end.count()},
                  {"last_day", rules::to_string(local_day(end, zone))}});
}

Entry stand_down(const Hand& hand, const std::string& shift)
{
    return entry(hand, "stood_down", shift, Json::object());
}

Entry check_a_unit(const Hand& hand, const Book& book, const std::string& unit, const std::string& machine,
                   const std::vector<CheckAnswer>& answers)
{
    const std::string sheet = doc(book, "unit", unit).value("sheet", "");
    Json list = Json::array();
    for (const CheckAnswer& each : answers) {
        Json answer = {{"item", each.item}, {"answer", each.answer}};
        if (!each.note.empty())
            answer["note"] = each.note;
        list.push_back(std::move(answer));
    }
    Json body = {{"machine", machine}, {"answers", list}};
    if (!sheet.empty())
        body.update({{"sheet", sheet}, {"edition", doc(book, "check_sheet", sheet).value("edition", 1)}});
    return entry(hand, "pre_use_check", unit, std::move(body));
}

Entry see_the_setting(const Hand& hand, const std::string& unit, const std::string& state)
{
    return entry(hand, "setting_seen", unit, {{"state", state}, {"by_eye", true}, {"at_unit", true}});
}

// Only with the unit parked, the machine isolated, nobody beneath and the model's steps gone through.
Entry change_the_setting(const Hand& hand, const std::string& unit, const std::string& state)
{
    return entry(hand, "setting_changed", unit,
                 {{"state", state},
                  {"parked", true},
                  {"isolated", true},
                  {"clear", true},
                  {"steps_done", true},
                  {"by_eye", true},
                  {"at_unit", true}});
}

Entry see_the_lock(const Hand& hand, const std::string& hitch, bool locked)
{
    return entry(hand, "lock_seen", hitch, {{"own_eyes", true}, {"locked", locked}});
}

Entry prove_devices(const Hand& hand, const std::string& machine, bool valves, bool warning)
{
    return entry(hand, "devices_proved", machine, {{"valves", valves}, {"overload_warning", warning}});
}

Entry confirm_place(const Hand& hand, const std::string& site, const std::string& place, bool level, bool ground,
                    bool services, bool zone)
{
    return entry(
        hand, "place_confirmed", place,
        {{"site", site}, {"level", level}, {"ground_and_edge", ground}, {"services", services}, {"zone_closed", zone}});
}

Entry inspect_trench(const Hand& hand, const std::string& site, const std::string& place, bool safe)
{
    return entry(hand, "trench_inspection", place, {{"site", site}, {"safe", safe}});
}

Entry name_people(const Hand& hand, const Book& book, const std::string& site,
                  const std::map<std::string, std::string>& roles)
{
    return entry(hand, "people_today", site,
                 {{"day", rules::to_string(working_day(book, site, hand.at))}, {"roles", roles}});
}

Entry brief(const Hand& hand, const Json& plan, const std::string& person)
{
    return entry(hand, "briefing", plan.value("id", ""), {{"issue", plan.value("issue", 1)}, {"person", person}});
}

Entry show_page(const Hand& hand, const std::string& what, const std::string& id, const std::string& sha256,
                const std::string& says, bool legible)
{
    Json body{{"what", what}, {"sha256", sha256}, {"says", says}};
    if (legible)
        body["legible"] = true;
    return entry(hand, "source_page", id, std::move(body));
}

Entry compare(const Hand& hand, const std::string& what, const std::string& id)
{
    return entry(hand, "compared", id, {{"what", what}});
}

Entry call_a_stop(const Hand& hand, const std::string& unit, const std::string& why)
{
    return entry(hand, "stop_called", unit, {{"why", why}});
}

namespace {

Json with_photos(Json body, const std::vector<std::string>& photos)
{
    if (!photos.empty())
        body["photos"] = photos;
    return body;
}

} // namespace

Entry something_happened(const Hand& hand, const std::string& kind, const std::string& unit, const std::string& what,
                         const std::vector<std::string>& photos)
{
    return entry(hand, "event", kind + " " + at_text(hand) + " " + unit,
                 with_photos({{"kind", kind},
                              {"day", rules::to_string(hand.day)},
                              {"at", hand.at.count()},
                              {"units", Json::array({unit})},
                              {"what", what}},
                             photos));
}

Entry find_a_defect(const Hand& hand, const std::string& unit, const std::string& answer, const std::string& what,
                    const std::vector<std::string>& photos)
{
    return entry(hand, "defect_found", unit, with_photos({{"answer", answer}, {"what", what}}, photos));
}

Entry ask_for_a_lift(const Hand& hand, const rules::Question& question, Json decision)
{
    Json body = records::in_whole_numbers(std::move(decision));
    body.update({{"question", records::write_question(question)}, {"edition", rules::edition}});
    return entry(hand, "lift_asked", "lift " + at_text(hand), std::move(body));
}

Entry lift_step(const Hand& hand, const std::string& kind, const std::string& lift)
{
    return entry(hand, kind, lift, Json::object());
}

Entry witness(const Hand& hand, const std::string& receipt)
{
    const records::Receipt read = records::read_receipt(receipt);
    return entry(hand, "head_seen", read.device,
                 {{"receipt", records::to_text(read)}, {"records", read.head.seq}, {"head", read.head.hash}});
}

Entry give_a_receipt(const Hand& hand, const Book& book, const records::Head& head, const std::string& to)
{
    return entry(hand, "receipt", book.state().device, {{"records", head.seq}, {"head", head.hash}, {"to", to}});
}

} // namespace cotter::desk
