#include "fold_docs.hpp"

#include <algorithm>
#include <functional>
#include <map>

namespace cotter::records {

namespace {

constexpr std::size_t looks_kept = 40; // of this shift's looks at most a few are asked for

Json at_and_by(const Entry& e) { return {{"at", e.at.count()}, {"by", e.by}}; }

Json with_id(Json body, const Fact& fact)
{
    body["id"] = fact.key.key;
    return body;
}

void add_capped(Json& list, Json value)
{
    list.push_back(std::move(value));
    if (list.size() > looks_kept)
        list.erase(list.begin());
}

bool is_comparison(const SaidRecord& record) { return record.entry.kind == "compared"; }

bool share_a_hand(const Entry& a, const Entry& b)
{
    return a.who == b.who || a.who == b.by || a.by == b.who || a.by == b.by;
}

// A comparison proves what it knew: it came after every change, and is no work of who made the last one.
bool proves(const SaidRecord& comparison, const SaidRecord& last_change, const Said& said)
{
    const auto known = known_to({comparison}, said);
    const bool knows_all = std::all_of(said.begin(), said.end(), [&](const SaidRecord& each) {
        return is_comparison(each) || known.count(each.as_of) > 0;
    });
    return knows_all && !share_a_hand(comparison.entry, last_change.entry) &&
           !share_a_hand(comparison.entry, last_change.worded);
}

const SaidRecord& last_change_in(const Said& said)
{
    const SaidRecord* last = nullptr;
    for (const SaidRecord& each : said)
        if (!is_comparison(each) && (!last || each.worded.at >= last->worded.at))
            last = &each;
    return last ? *last : said.back();
}

// A model, chart, pipe or report: its newest data, when they last changed, and who has compared them since.
void fill_data(Fact& fact, const Said& said)
{
    const SaidRecord& last = last_change_in(said);
    fact.doc = with_id(newest_body(said, last.entry.kind), fact);
    fact.doc["changed"] = at_and_by(last.worded);
    fact.doc["compared"] = Json::array();
    for (const SaidRecord& each : said)
        if (is_comparison(each) && proves(each, last, said))
            fact.doc["compared"].push_back(at_and_by(each.entry));
    for (const Json& unit : fact.doc.value("units", Json::array()))
        fact.about.push_back(unit.get<std::string>());
}

// A unit's paper: listed by its unit.
void fill_paper(Fact& fact, const Said& said)
{
    fact.doc = with_id(newest_body(said, said.back().entry.kind), fact);
    fact.about.push_back(fact.doc.value("unit", ""));
}

void fill_newest(Fact& fact, const Said& said)
{
    fact.doc = with_id(newest_body(said, said.back().entry.kind), fact);
    fact.doc["at"] = said.back().entry.at.count();
    fact.doc["by"] = said.back().entry.who;
}

// Listed by its tag, which two firms may use.
void fill_unit(Fact& fact, const Said& said)
{
    fill_newest(fact, said);
    fact.about.push_back("tag " + fact.doc.value("tag", ""));
}

void fill_without_answer(Fact& fact, const Said& said)
{
    fill_newest(fact, said);
    fact.doc["machine"] = said.back().entry.about;
    fact.about.push_back(said.back().entry.about);
}

void fill_shift(Fact& fact, const Said& said)
{
    fact.doc = with_id(newest_body(said, "shift"), fact);
    for (const Record& each : said)
        if (each.entry.kind == "stood_down")
            fact.doc["ended_at"] = each.entry.at.count();
}

void fill_person(Fact& fact, const Said& said)
{
    fact.doc = with_id(newest_body(said, "person"), fact);
    fact.doc["admission"] = newest_body(said, "admission");
}

Json with_photos(Json doc, const Entry& e)
{
    if (e.body.contains("photos"))
        doc["photos"] = e.body["photos"];
    return doc;
}

Json cleared_by(const Entry& e)
{
    return with_photos({{"by", e.who}, {"roles", e.roles}, {"remedy", e.body["remedy"]}}, e);
}

void fill_check(Fact& fact, const Said& said)
{
    for (const Record& each : said) {
        const Entry& e = each.entry;
        if (e.kind == "pre_use_check") {
            Json others = fact.doc.value("answers", Json::array()); // of a correction that does not know of this one
            fact.doc = e.body;
            for (Json& other : others)
                fact.doc["answers"].push_back(std::move(other));
        } else if (e.kind == "defect_found")
            fact.doc = with_photos(
                {{"answers",
                  Json::array({{{"item", "defect"}, {"answer", e.body["answer"]}, {"note", e.body["what"]}}})}},
                e);
        if (e.kind == "defect_cleared")
            continue;
        fact.doc.update({{"unit", e.about}, {"at", e.at.count()}, {"by", e.who}, {"record", each.hash}});
        fact.about.push_back(e.about);
    }
    for (Json& answer : fact.doc["answers"]) {
        answer["cleared"] = Json::array();
        for (const Record& each : said)
            if (each.entry.kind == "defect_cleared" && each.entry.body.value("item", "defect") == answer["item"])
                answer["cleared"].push_back(cleared_by(each.entry));
        fact.open = fact.open || answer["answer"] != "right";
    }
}

void fill_stop(Fact& fact, const Said& said)
{
    fact.open = true;
    fact.doc["lifted"] = Json::array();
    for (const Record& each : said) {
        const Entry& e = each.entry;
        if (e.kind != "stop_lifted") { // called, or received as not to be used
            fact.doc.update({{"id", each.hash},
                             {"unit", e.about},
                             {"why", e.body.value("why", "received as not to be used")},
                             {"by", e.who},
                             {"at", e.at.count()}});
            fact.about.push_back(e.about);
        } else {
            fact.doc["lifted"].push_back({{"by", e.who}, {"roles", e.roles}, {"why", e.body["why"]}});
        }
    }
}

void fill_event(Fact& fact, const Said& said)
{
    fact.doc = with_id(newest_body(said, "event"), fact);
    fact.doc["assessments"] = fact.doc["looked_by"] = Json::array();
    for (const Record& each : said) {
        if (each.entry.kind == "event_assessed")
            fact.doc["assessments"].push_back({{"at", each.entry.at.count()},
                                               {"by", each.entry.who},
                                               {"roles", each.entry.roles},
                                               {"fit", each.entry.body["fit"]}});
        if (each.entry.kind == "event_looked")
            fact.doc["looked_by"].push_back(each.entry.who);
    }
    for (const Json& unit : fact.doc.value("units", Json::array()))
        fact.about.push_back(unit.get<std::string>());
}

void fill_setting(Fact& fact, const Said& said)
{
    fact.doc["records"] = Json::array();
    for (const SaidRecord& each : said) {
        const Entry& e = each.entry;
        const bool own = e.who == e.by && !each.is_corrected(); // nobody signed another's words
        fact.doc["records"].push_back({{"id", each.hash},
                                       {"kind", e.kind == "setting_changed" ? "changed" : "seen"},
                                       {"state", e.body["state"]},
                                       {"at", e.at.count()},
                                       {"by", e.who},
                                       {"after", e.after},
                                       {"own_hand", own && (e.how == "pin" || e.how == "name only")},
                                       {"own_pin", own && e.how == "pin"},
                                       {"by_eye", e.body.value("by_eye", Json{})},
                                       {"at_unit", e.body.value("at_unit", Json{})}});
    }
}

void fill_looks(Fact& fact, const Said& said)
{
    fact.doc["looks"] = Json::array();
    for (const Record& each : said) {
        Json look = each.entry.body;
        look.update({{"at", each.entry.at.count()}, {"by", each.entry.who}});
        add_capped(fact.doc["looks"], std::move(look));
    }
}

void fill_coupling(Fact& fact, const Said& said)
{
    fact.doc = said.back().entry.kind == "coupled" ? newest_body(said, "coupled") : Json::object();
    fact.doc["at"] = said.back().entry.at.count();
    if (fact.doc.contains("attachment"))
        fact.about.push_back(fact.doc["attachment"].get<std::string>());
}

void fill_devices(Fact& fact, const Said& said)
{
    for (const Record& each : said)
        for (const char* device : {"valves", "overload_warning"})
            fact.doc[std::string{device} + "_proved_at"] =
                each.entry.body[device] == true ? Json(each.entry.at.count()) : Json{};
}

void fill_trench(Fact& fact, const Said& said)
{
    fact.doc["inspections"] = fact.doc["disturbed_at"] = Json::array();
    for (const Record& each : said) {
        const Entry& e = each.entry;
        if (e.kind == "trench_inspection")
            add_capped(fact.doc["inspections"],
                       {{"at", e.at.count()}, {"by", e.who}, {"roles", e.roles}, {"safe", e.body["safe"]}});
        else
            add_capped(fact.doc["disturbed_at"], e.body.value("time_known", true) ? Json(e.at.count()) : Json{});
    }
}

void fill_plan(Fact& fact, const Said& said)
{
    fact.doc = with_id(newest_body(said, "lift_plan"), fact);
    fact.doc["briefed"] = Json::array();
    for (const Record& each : said)
        if (each.entry.kind == "briefing")
            fact.doc["briefed"].push_back({{"person", each.entry.body["person"]}, {"issue", each.entry.body["issue"]}});
}

void fill_lift(Fact& fact, const Said& said)
{
    for (const Record& each : said) {
        const Entry& e = each.entry;
        if (e.kind == "lift_asked")
            fact.doc.update({{"asked_at", e.at.count()},
                             {"asked_by", e.who},
                             {"outcome", e.body["outcome"]},
                             {"pipe", e.body["question"].value("pipe", Json::object()).value("id", "")}});
        else
            fact.doc[e.kind + "_at"] = e.at.count();
    }
    fact.doc["day"] = rules::to_string(said.front().entry.day);
    fact.open =
        fact.doc.contains("picked_up_at") && !fact.doc.contains("set_down_at") && !fact.doc.contains("lift_done_at");
}

void fill_whereabouts(Fact& fact, const Said& said)
{
    for (const Record& each : said) {
        const Entry& e = each.entry;
        if (e.kind == "off_hire") {
            fact.doc["off_hire"] = true;
            continue;
        }
        if (e.kind == "dispatched" && e.body["purpose"] == "scrap")
            fact.doc["scrapped"] = true;
        if (e.kind != "dispatched")
            fact.doc.erase("off_hire");
        const std::string site = e.body.value("site", "");
        fact.doc["at_site"] = e.kind == "dispatched"                      ? "on the way to " + e.body.value("to", "")
                              : e.body.value("condition", "") == "refused" ? "refused at " + site
                                                                           : site;
        for (const char* field : {"photos", "without_dispatch"}) { // of its newest arrival
            fact.doc.erase(field);
            if (e.body.contains(field))
                fact.doc[field] = e.body[field];
        }
    }
}

// Open until the yard has answered it.
void fill_call(Fact& fact, const Said& said)
{
    fact.open = true;
    for (const Record& each : said) {
        const Entry& e = each.entry;
        if (e.kind == "call") {
            fact.doc.update(e.body);
            fact.doc.update({{"id", each.hash}, {"unit", e.about}, {"by", e.who}, {"at", e.at.count()}});
            fact.about.push_back(e.about);
        } else {
            fact.doc["answer"] = e.body;
            fact.doc["answer"].update({{"by", e.who}, {"at", e.at.count()}});
            fact.open = false;
        }
    }
}

void fill_clock(Fact& fact, const Said& said)
{
    fact.open = true;
    fact.doc["confirmed"] = Json::array();
    for (const Record& each : said) {
        const Entry& e = each.entry;
        if (e.kind == "clock_notice")
            fact.doc["kind"] = e.body["kind"];
        else
            fact.doc["confirmed"].push_back({{"by", e.who},
                                             {"roles", e.roles},
                                             {"at", e.at.count()},
                                             {"how", e.body.value("how", Json{})},
                                             {"to", e.body["to"]}});
    }
}

void fill_pages(Fact& fact, const Said& said)
{
    fact.doc["pages"] = Json::array();
    for (const Record& each : said)
        add_capped(fact.doc["pages"],
                   {{"sha256", each.entry.body["sha256"]},
                    {"says", each.entry.body.value("says", "")},
                    {"legible", each.entry.body.value("legible", false)}});
}

// Wrong tries since the PIN was last set or given rightly.
void fill_pin(Fact& fact, const Said& said)
{
    std::int64_t wrong = 0;
    for (const Record& each : said) {
        const Entry& e = each.entry;
        const bool is_wrong = e.kind == "pin_tried" && e.body["right"] == false;
        wrong = is_wrong ? wrong + 1 : 0;
        fact.doc[is_wrong ? "wrong_at" : e.kind == "pin_set" ? "set_at" : "right_at"] = e.at.count();
    }
    fact.doc["wrong"] = wrong;
}

void fill_defect(Fact& fact, const Said& said)
{
    fact.doc["cleared"] = Json::array();
    for (const Record& each : said) {
        fact.doc["cleared"].push_back(cleared_by(each.entry));
        fact.doc.update({{"id", each.entry.body.value("defect", "")}, {"unit", each.entry.about}});
        fact.about.push_back(each.entry.about);
    }
}

} // namespace

void fill(Fact& fact, const Said& said)
{
    static const std::map<std::string, void (*)(Fact&, const Said&)> by_kind{{"model", fill_data},
                                                                             {"chart", fill_data},
                                                                             {"pipe", fill_data},
                                                                             {"report", fill_data},
                                                                             {"declaration", fill_paper},
                                                                             {"interim", fill_paper},
                                                                             {"shift", fill_shift},
                                                                             {"person", fill_person},
                                                                             {"check", fill_check},
                                                                             {"stop", fill_stop},
                                                                             {"event", fill_event},
                                                                             {"setting", fill_setting},
                                                                             {"lock", fill_looks},
                                                                             {"place", fill_looks},
                                                                             {"coupling", fill_coupling},
                                                                             {"devices", fill_devices},
                                                                             {"trench", fill_trench},
                                                                             {"plan", fill_plan},
                                                                             {"lift", fill_lift},
                                                                             {"whereabouts", fill_whereabouts},
                                                                             {"clock", fill_clock},
                                                                             {"call", fill_call},
                                                                             {"unit", fill_unit},
                                                                             {"defect", fill_defect},
                                                                             {"pin", fill_pin},
                                                                             {"page", fill_pages},
                                                                             {"without_answer", fill_without_answer}};
    const auto found = by_kind.find(fact.key.kind);
    (found == by_kind.end() ? fill_newest : found->second)(fact, said);
}

} // namespace cotter::records
