// Which facts a record touches.

#include "fact.hpp"

#include <array>
#include <map>

namespace cotter::records {

namespace {

// Kinds whose fact is named after what they are about.
const std::map<std::string, std::string>& fact_of_kind()
{
    static const std::map<std::string, std::string> facts{{"site", "site"},
                                                          {"shift", "shift"},
                                                          {"stood_down", "shift"},
                                                          {"person", "person"},
                                                          {"admission", "person"},
                                                          {"device", "device"},
                                                          {"model", "model"},
                                                          {"unit", "unit"},
                                                          {"pipe", "pipe"},
                                                          {"chart", "chart"},
                                                          {"check_sheet", "check_sheet"},
                                                          {"examination_report", "report"},
                                                          {"declaration", "declaration"},
                                                          {"interim_statement", "interim"},
                                                          {"event", "event"},
                                                          {"event_assessed", "event"},
                                                          {"event_looked", "event"},
                                                          {"setting_changed", "setting"},
                                                          {"setting_seen", "setting"},
                                                          {"headplate_fitted", "headplate"},
                                                          {"coupled", "coupling"},
                                                          {"uncoupled", "coupling"},
                                                          {"lock_seen", "lock"},
                                                          {"machine_set_up", "set_up"},
                                                          {"devices_proved", "devices"},
                                                          {"rigging", "rigging"},
                                                          {"lift_plan", "plan"},
                                                          {"briefing", "plan"},
                                                          {"lift_asked", "lift"},
                                                          {"picked_up", "lift"},
                                                          {"set_down", "lift"},
                                                          {"lift_done", "lift"},
                                                          {"order", "order"},
                                                          {"dispatched", "whereabouts"},
                                                          {"received", "whereabouts"},
                                                          {"returned", "whereabouts"},
                                                          {"off_hire", "whereabouts"},
                                                          {"head_seen", "head_seen"},
                                                          {"backup_place", "backup_place"},
                                                          {"pipe_laid", "laid"},
                                                          {"unloading_plan", "unloading"},
                                                          {"unloaded", "unloaded"},
                                                          {"pin_set", "pin"},
                                                          {"pin_tried", "pin"}};
    return facts;
}

// Kinds whose fact is named after the record itself, or after the record that they name.
std::optional<FactKey> named_by_hash(const Record& record)
{
    const Entry& e = record.entry;
    const auto text = [&](const char* field) { return e.body.value(field, std::string{}); };
    if (e.kind == "pre_use_check" || e.kind == "defect_found")
        return FactKey{"check", record.hash};
    if (e.kind == "defect_cleared")
        return text("check").empty() ? FactKey{"defect", e.about + " " + text("defect")}
                                     : FactKey{"check", text("check")};
    if (e.kind == "stop_called")
        return FactKey{"stop", record.hash};
    if (e.kind == "stop_lifted")
        return FactKey{"stop", text("stop")};
    if (e.kind == "call")
        return FactKey{"call", record.hash};
    if (e.kind == "call_answered")
        return FactKey{"call", text("call")};
    if (e.kind == "clock_notice")
        return FactKey{"clock", record.hash};
    if (e.kind == "clock_confirmed")
        return FactKey{"clock", text("notice")};
    if (e.kind == "receipt")
        return FactKey{"witness", e.about};
    if (e.kind == "lift_without_answer")
        return FactKey{"without_answer", record.hash};
    if (e.kind == "people_today")
        return FactKey{"people_today", e.about + " " + text("day")};
    if (e.kind == "place_confirmed")
        return FactKey{"place", text("site") + " " + e.about};
    if (e.kind == "trench_inspection" || e.kind == "fall_of_ground")
        return FactKey{"trench", text("site") + " " + e.about};
    if (e.kind == "source_page")
        return FactKey{"page", text("what") + " " + e.about};
    if (e.kind == "compared")
        return FactKey{text("what"), e.about};
    return std::nullopt;
}

std::vector<FactKey> touched_by_correction(const Record& record, const FindRecord& find)
{
    auto old = find(record.entry.body.value("corrects", ""));
    if (!old)
        return {};
    std::vector<FactKey> touched = touched_by(*old, find);
    if (record.entry.body.contains("body")) {
        old->entry.body = record.entry.body["body"];
        for (FactKey& each : touched_by(*old, find))
            touched.push_back(std::move(each));
    }
    return touched;
}

} // namespace

std::vector<FactKey> touched_by(const Record& record, const FindRecord& find)
{
    if (record.entry.kind == "correction")
        return touched_by_correction(record, find);
    if (const auto found = fact_of_kind().find(record.entry.kind); found != fact_of_kind().end()) {
        std::vector<FactKey> touched{{found->second, record.entry.about}};
        if (record.entry.body.value("condition", "") == "not_to_be_used") // a stop like any other: few may lift it
            touched.push_back({"stop", record.hash});
        return touched;
    }
    if (auto named = named_by_hash(record))
        return {std::move(*named)};
    return {};
}

} // namespace cotter::records
