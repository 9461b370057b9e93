#pragma once

// The sample site's plan for its deepest run, worked out from its worksheet and issued in a sample book.

#include "plan_work.hpp"
#include "rig.hpp"
#include "written.hpp"

#include <fstream>

namespace cotter::tests {

inline records::Json deepest_run_sheet()
{
    std::ifstream in{COTTER_SOURCE "/sample_site/plan_sheets/deepest_run.json"};
    return records::Json::parse(in)["body"];
}

// Issued at 07:00, and everybody briefed.
inline void issue_deepest_run(db::Store& store)
{
    desk::Hand hand;
    hand.by = "quill";
    hand.at = *desk::parse_instant("2026-11-25T07:30:00Z");
    hand.day = rules::utc_day(hand.at);
    records::Json body = deepest_run_sheet();
    body["site"] = desk::current_site(store);
    body["issue"] = 1;
    body = desk::work_out_plan(store, "plan-2", body, hand.at).body;
    body["issued"] = body["signed"] = true;
    std::vector<records::Entry> entries{desk::entry(hand, "lift_plan", "plan-2", body)};
    desk::write(store, entries);
    entries.clear();
    for (const auto& person : store.facts("person"))
        entries.push_back(desk::entry(hand, "briefing", "plan-2", {{"issue", 1}, {"person", person.key.key}}));
    desk::write(store, entries);
}

} // namespace cotter::tests
