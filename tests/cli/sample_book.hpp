#pragma once

// A sample book in which one pipe may be lifted on 25 November 2026: all of it invented.

#include "program.hpp"

namespace cotter::tests {

struct SampleLine {
    const char *clock, *who, *kind, *about, *body;
};

// PARTICULARS and CHART stand for what would be said again and again.
inline const std::vector<SampleLine>& sample_lines()
{
    static const std::vector<SampleLine> lines{
        {"05:00", "", "device", "sample-tablet", R"json({"name": "sample tablet", "sample": true})json"},
        {"05:01", "", "site", "marsh-lane",
         R"json({"name": "Marsh Lane outfall (invented)", "zone": "Europe/London", "warning_days": 14,
         "expired_card_stops": true})json"},
        {"05:02", "", "person", "quill",
         R"json({"name": "P. Quill (invented)", "card": "card", "card_last_day": "2027-03-31"})json"},
        {"05:02", "", "person", "hallam",
         R"json({"name": "O. Hallam (invented)", "card": "card", "card_last_day": "2027-03-31"})json"},
        {"05:02", "", "person", "iqbal",
         R"json({"name": "S. Iqbal (invented)", "card": "card", "card_last_day": "2027-03-31"})json"},
        {"05:02", "", "person", "farrow",
         R"json({"name": "I. Farrow (invented)", "card": "card", "card_last_day": "2027-03-31"})json"},
        {"05:02", "", "person", "penrose",
         R"json({"name": "A. Penrose (invented)", "card": "card", "card_last_day": "2027-03-31"})json"},
        {"05:03", "", "admission", "quill",
         R"json({"site": "marsh-lane", "card_seen": true, "models": [], "roles": ["manager", "appointed"]})json"},
        {"05:03", "", "admission", "farrow",
         R"json({"site": "marsh-lane", "card_seen": true, "models": ["digger-21", "clasper-90"], "roles": ["operator"],
         "setting_models": ["clasper-90"]})json"},
        {"05:03", "", "admission", "hallam",
         R"json({"site": "marsh-lane", "card_seen": true, "models": [], "roles": ["supervisor"],
         "setting_models": ["clasper-90"]})json"},
        {"05:03", "", "admission", "iqbal",
         R"json({"site": "marsh-lane", "card_seen": true, "models": [], "roles": ["signaller"]})json"},
        {"05:03", "", "admission", "penrose",
         R"json({"site": "marsh-lane", "card_seen": true, "models": [], "roles": ["competent"]})json"},
        {"05:04", "", "check_sheet", "machine",
         R"json({"name": "Machine", "edition": 1, "role": "machine", "items": [{"id": "hoses", "text": "Hoses dry",
         "if_not": "Stop"}]})json"},
        {"05:04", "", "check_sheet", "attachment",
         R"json({"name": "Attachment", "edition": 1, "role": "attachment", "items": [{"id": "marking",
         "text": "Plate legible", "if_not": "Stop"}]})json"},
        {"05:05", "", "model", "digger-21",
         R"json({"name": "Digger 21 (invented)", "role": "machine", "check_items": [{"id": "hoses",
         "text": "Hoses dry", "if_not": "Stop"}]})json"},
        {"05:05", "", "model", "clasper-90",
         R"json({"name": "Clasper 90 (invented)", "role": "attachment", "rating_kg": 3000, "adjusts": true,
         "states": [{"name": "hole 1", "least_mm": 400, "greatest_mm": 600}, {"name": "hole 2", "least_mm": 601,
         "greatest_mm": 900}], "setting_is_configuration": false, "bore_mm": {"least": 300, "greatest": 800},
         "socket_mm": "any", "length_mm": {"least": 1000, "greatest": 3000}, "materials": ["concrete"],
         "greatest_pipe_kg": 2500, "envelope_length_mm": 900, "above_crown_mm": 400, "below_invert_mm": 100,
         "tilt_limit_mdeg": 5000, "check_items": [{"id": "marking", "text": "Plate legible", "if_not": "Stop"}]})json"},
        {"05:06", "", "unit", "ex-21",
         R"json({"tag": "EX-21", "owner_firm": "Ridgeway Drainage (invented)", "serial": "X-9", "model": "digger-21",
         "role": "machine", "class": "machine", "owner": "own", "between_own_sites": false, "mass_kg": 21000})json"},
        {"05:06", "", "unit", "cl-02",
         R"json({"tag": "CL-02", "owner_firm": "Ridgeway Drainage (invented)", "serial": "C-2", "model": "clasper-90",
         "role": "attachment", "class": "accessory", "owner": "own", "between_own_sites": false, "mass_kg": 310,
         "plate_kg": 3000, "loose_parts": {"headplate": "not_applicable", "pin": "not_applicable",
         "keeper": "not_applicable"}})json"},
        {"05:07", "", "pipe", "sk-450",
         R"json({"name": "DN 450 (invented)", "shape": "straight", "material": "concrete", "bore_mm": 450,
         "barrel_mm": 584, "socket_mm": 720, "overall_mm": 2600, "effective_mm": 2500, "socket_length_mm": 100,
         "density_kg_m3": 2400, "allowance_percent": 5, "stated_kg": 900})json"},
        {"05:07", "", "chart", "ex-21-a24", R"json(CHART)json"},
        {"05:08", "", "examination_report", "rep-1",
         R"json({"units": ["cl-02"], "identity": "cl-02", "examiner": "A. Penrose (invented)", "basis": "six_months",
         "examined": "2026-09-01", "report_day": "2026-09-02", "latest": "2027-03-01", "swl_kg": 3000,
         "safe": true, "full": true, "particulars": PARTICULARS, "copy": {"legible": true, "here": true}})json"},
        {"05:08", "", "examination_report", "rep-2",
         R"json({"units": ["ex-21"], "identity": "ex-21", "examiner": "A. Penrose (invented)",
         "basis": "twelve_months", "examined": "2026-09-01", "report_day": "2026-09-02", "latest": "2027-08-31",
         "swl_kg": 5000, "safe": true, "full": true, "particulars": PARTICULARS, "copy": {"legible": true,
         "here": true}})json"},
        {"05:09", "", "received", "ex-21",
         R"json({"site": "marsh-lane", "condition": "whole", "serial_seen": true, "evidence_seen": true})json"},
        {"05:09", "", "received", "cl-02",
         R"json({"site": "marsh-lane", "condition": "whole", "serial_seen": true, "evidence_seen": true})json"},
        {"05:30", "", "lift_plan", "plan-1",
         R"json({"issue": 1, "issued": true, "signed": true, "site": "marsh-lane", "first_day": "2026-11-01",
         "last_day": "2026-12-20", "machines": ["ex-21"], "attachments": ["cl-02"], "models": [],
         "pipes": ["sk-450"], "places": [{"id": "B", "nose_radius_mm": 4000, "centre_radius_mm": 4200,
         "pick_height_mm": 0, "slew_height_mm": 1000, "lay_height_mm": -2000, "sector": "both",
         "pin_to_centre_mm": 800, "trench": {"none": true}, "thread": {"strutted": false}}],
         "greatest_kg": 2200, "greatest_radius_mm": 5000, "roles": {"supervisor": true, "signaller": true}})json"},
        {"05:40", "", "briefing", "plan-1", R"json({"issue": 1, "person": "farrow"})json"},
        {"05:40", "", "briefing", "plan-1", R"json({"issue": 1, "person": "hallam"})json"},
        {"05:40", "", "briefing", "plan-1", R"json({"issue": 1, "person": "iqbal"})json"},
        {"07:00", "farrow", "shift", "shift-1",
         R"json({"site": "marsh-lane", "start": 1795590000, "end": 1795626000, "last_day": "2026-11-25"})json"},
        {"07:01", "hallam", "people_today", "marsh-lane",
         R"json({"day": "2026-11-25", "roles": {"supervisor": "hallam", "signaller": "iqbal"}})json"},
        {"07:02", "farrow", "machine_set_up", "ex-21",
         R"json({"arm": "2.4", "blade": "up", "counterweight": "standard", "mounting": "free", "chart": "ex-21-a24"})json"},
        {"07:03", "farrow", "devices_proved", "ex-21", R"json({"valves": true, "overload_warning": true})json"},
        {"07:04", "farrow", "coupled", "ex-21", R"json({"attachment": "cl-02", "no_hitch": true})json"},
        {"07:05", "farrow", "rigging", "ex-21",
         R"json({"no_sling": true, "shackles_kg": 0, "bucket_kg": 0, "water_kg": 0, "mud_kg": 0})json"},
        {"07:06", "farrow", "setting_changed", "cl-02",
         R"json({"state": "hole 1", "parked": true, "isolated": true, "clear": true, "steps_done": true,
         "by_eye": true, "at_unit": true})json"},
        {"07:07", "hallam", "setting_seen", "cl-02", R"json({"state": "hole 1", "by_eye": true, "at_unit": true})json"},
        {"07:08", "farrow", "pre_use_check", "ex-21",
         R"json({"machine": "ex-21", "answers": [{"item": "hoses", "answer": "right"}]})json"},
        {"07:09", "farrow", "pre_use_check", "cl-02",
         R"json({"machine": "ex-21", "answers": [{"item": "marking", "answer": "right"}]})json"},
        {"07:10", "hallam", "place_confirmed", "B",
         R"json({"site": "marsh-lane", "level": true, "ground_and_edge": true, "services": true, "zone_closed": true})json"},
    };
    return lines;
}

inline const char* const sample_particulars = R"({"employer": "given", "premises": "given", "last_examined": "given",
    "qualifications": "given", "employment": "given", "report_day": "given", "manufactured": "given",
    "tests": "not_applicable", "installation": "not_applicable", "defect_parts": "not_applicable",
    "authenticator": "not_applicable"})";

inline Json sample_chart()
{
    Json cells = Json::array();
    for (const char* over : {"front", "side"})
        for (const int height : {-3000, 0, 3000})
            for (const auto& [radius, rated] : {std::pair{3000, 5000}, {4500, 4000}, {6000, 3000}})
                cells.push_back({{"over", over}, {"height_mm", height}, {"radius_mm", radius}, {"rated_kg", rated}});
    return {{"name", "Arm 2.4 (invented)"}, {"machine", "ex-21"},      {"arm", "2.4"},  {"blade", "up"},
            {"counterweight", "standard"},  {"includes_hitch", false}, {"cells", cells}};
}

inline std::string record_line(const std::string& kind, const std::string& about, const Json& body,
                               const std::string& clock = "07:20")
{
    return Json{{"kind", kind}, {"about", about}, {"body", body}, {"at", "2026-11-25T" + clock + ":00Z"}}.dump() + "\n";
}

inline std::string text_of(const SampleLine& line)
{
    std::string body = line.body;
    if (body == "CHART")
        return record_line(line.kind, line.about, sample_chart(), line.clock);
    if (const auto at = body.find("PARTICULARS"); at != std::string::npos)
        body.replace(at, 11, sample_particulars);
    return record_line(line.kind, line.about, Json::parse(body), line.clock);
}

// Who does a thing writes it down. The papers that one typed, another has read against their page.
inline void make_sample_book(const fs::path& path)
{
    std::map<std::string, std::string> lines;
    for (const SampleLine& line : sample_lines())
        lines[*line.who ? line.who : "quill"] += text_of(line);
    for (const auto& [what, id] : {std::pair{"model", "digger-21"},
                                   {"model", "clasper-90"},
                                   {"pipe", "sk-450"},
                                   {"chart", "ex-21-a24"},
                                   {"report", "rep-1"},
                                   {"report", "rep-2"}})
        lines["hallam"] += record_line("compared", id, {{"what", what}}, "05:50");
    for (const std::string as : {"quill", "farrow", "hallam"})
        if (const Ran ran = call({"record", "any", "--store", path.string(), "--as", as}, lines[as]); ran.code != 0)
            throw std::runtime_error{"the sample book cannot be made: " + ran.err};
}

// A sample book of its own for a test.
struct SampleBook {
    SampleBook() { make_sample_book(path()); }

    std::string path() const { return scratch.book().string(); }
    Ran record(const std::string& lines, const std::string& as = "quill") const
    {
        return call({"record", "any", "--store", path(), "--as", as}, lines);
    }
    // The body of the newest record of that kind about it.
    Json newest(const std::string& kind, const std::string& about) const
    {
        return call({"list", kind, "--store", path(), "--about", about, "--newest", "1", "--json"}).json().at("body");
    }
    Ran lift(const std::string& more = "") const
    {
        auto all = words(
            "lift --unit CL-02 --pipe sk-450 --machine EX-21 --operator farrow --at 2026-11-25T08:00:00Z " + more);
        all.insert(all.end(), {"--store", path()});
        return call(all);
    }
    Ran run(const std::string& command) const
    {
        auto all = words(command);
        all.insert(all.end(), {"--store", path()});
        return call(all);
    }

    Scratch scratch;
};

} // namespace cotter::tests
