// What stands on Site's pages, measured.

#include "deepest_run.hpp"
#include "measures.hpp"
#include "typist.hpp"

#include "accept.hpp"
#include "kinds.hpp"
#include "written.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace cotter;
using namespace cotter::tests;

TEST_CASE("plans, their pictures and their forms keep to Site's sizes, and no text is clipped")
{
    SampleBook sample;
    tests::issue_deepest_run(sample.store());
    Rig rig{sample.store(), ui::Door::site};
    walk(rig, ui::bare, "after",
         {"Plans",
          "plan-2, issue 1",
          "Above",
          "Next mark",
          "Section",
          "Chart",
          "Path",
          "Next step",
          "Numbers",
          "New issue",
          "J. Quill (invented)",
          "Title",
          "Leave it",
          "In force from",
          "Leave it",
          "Worksheet",
          "Stretches of pipes, in the order of the drawings",
          "1",
          "How many",
          "Take it",
          "Back",
          "Back",
          "Back",
          "Work it out"});
}

TEST_CASE("what else Site has, and this glass, keep to their sizes, and no text is clipped")
{
    SampleBook sample;
    {
        Rig rig{sample.store(), ui::Door::site};
        walk(rig, ui::bare, "Site",
             {"View",
              "As a list",
              "View",
              "As a calendar",
              "Later",
              "View",
              "One kind",
              "sling",
              "View",
              "Everything",
              "Record",
              "A unit has come",
              "O. Hallam (invented)",
              "ST-12",
              "1",
              "Go on",
              "It says so",
              "It is here",
              "It is here",
              "Yes, seen",
              "Without",
              "Not to be used",
              "Other words",
              "Back",
              "plate cannot be read",
              "No",
              "Understood",
              "Units come and go",
              "Call the yard",
              "CL-02",
              "Collect",
              "work is finished",
              "O. Hallam (invented)",
              "Understood",
              "Back",
              "Put right",
              "Put right",
              "Hold to make it void",
              "typed wrong",
              "Back",
              "Back",
              "Back",
              "Back",
              "Papers and data",
              "A pipe by tape",
              "O. Hallam (invented)",
              "Back",
              "Back"});
    }
    Rig rig{sample.store(), ui::Door::none};
    check_everywhere(rig, ui::glove, "first screen");
    rig.tap("This glass");
    check_everywhere(rig, ui::glove, "this glass");
}

TEST_CASE("more of Site's pages keep to the sizes of a desk, and no text is clipped")
{
    SampleBook sample;
    {
        Rig rig{sample.store(), ui::Door::site};
        give_photos(rig);
        walk(rig, ui::bare, "Site",
             {"Stopped",
              "Lift the stop",
              "O. Hallam (invented)",
              "looked at; no defect is there",
              "Back",
              "Back",
              "Back",
              "Photograph",
              "O. Hallam (invented)",
              "p.jpg",
              "Take it",
              "Back",
              "Another",
              "Back",
              "Back",
              "People",
              "Briefing",
              "Back",
              "Back",
              "Ahead",
              "Clear",
              "M. Varley (invented)",
              "part renewed, like for like",
              "Back",
              "Back",
              "Back",
              "Back",
              "Laid",
              "Log a pipe",
              "O. Hallam (invented)",
              "Chainage of its spigot end",
              "Leave it",
              "Leave it",
              "Back"});
    }
    Rig rig{sample.store(), ui::Door::site};
    walk(rig, ui::bare, "Site, Record",
         {"Record", "Put right", "One kind", "All of them", "Older", "Put right", "It says something else", "Leave it",
          "Back", "Back", "Papers and data", "A pipe by tape", "O. Hallam (invented)"});
    rig.type("A pipe (invented)");
    rig.frame();
    walk(rig, ui::bare, "Site, tape", {"Go on", "1", "Next", "Back"});
}

TEST_CASE("a pipe read with a tape by two keeps to the sizes of a desk, and no text is clipped")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    for (const char* each : {"Record", "Papers and data", "A pipe by tape", "O. Hallam (invented)"})
        rig.tap(each);
    type_and(rig, "A pipe (invented)", "Go on");
    type_and(rig, "1835", "Next"); // 584 across
    check_everywhere(rig, ui::bare, "tape, none may be");
    rig.tap("None");
    for (const char* reading : {"450", "67", "2600"})
        type_and(rig, reading, "Next");
    rig.tap("None");
    check_everywhere(rig, ui::bare, "tape, what it comes to");
    walk(rig, ui::bare, "tape", {"Sign it", "B. Oakes (invented)", "Back", "Understood"});
}

TEST_CASE("a plan and a delivery that are issued keep to the sizes of a desk, and no text is clipped")
{
    SampleBook sample;
    issue_deepest_run(sample.store());
    Rig rig{sample.store(), ui::Door::site};
    const auto issue = [&](const std::string& name) {
        walk(rig, ui::bare, name, {"Work it out", "Issue"});
        rig.hold("Hold to issue it");
        check_everywhere(rig, ui::bare, name + ", issued");
        rig.tap("Understood");
    };
    walk(rig, ui::bare, "Plan", {"Plans", "plan-2, issue 1", "New issue", "J. Quill (invented)"});
    issue("Plan");
    walk(rig, ui::bare, "Delivery", {"A delivery", "CL-02", "J. Quill (invented)"});
    std::ifstream in{COTTER_SOURCE "/sample_site/plan_sheets/unloading_cl-02.json"};
    Typist{rig, sample.store()}.part(records::find_kind("unloading_plan")->schema, Json::parse(in)["body"]);
    issue("Delivery");
}

TEST_CASE("one owner's units, laid pipes and a record put right keep to the sizes of a desk, and no text is clipped")
{
    SampleBook sample;
    desk::Hand hand;
    hand.by = "hallam";
    hand.at = *desk::parse_instant("2026-11-25T07:40:00Z");
    hand.day = rules::utc_day(hand.at);
    for (const int joint : {25, 40})
        desk::write(
            sample.store(),
            {desk::entry(
                hand, "pipe_laid", "laid-" + std::to_string(joint),
                {{"site", "wendle-carr"}, {"pipe", "sk-450"}, {"chainage_mm", 312'500 + joint}, {"joint_mm", joint}})});
    Rig rig{sample.store(), ui::Door::site};
    walk(rig, ui::bare, "Site",
         {"View", "One owner", "Ellerthwick Plant Hire (invented)", "View", "One place", "Back", "Back", "Find", "Back",
          "Laid", "Back", "Record", "Put right", "Put right", "Hold to make it void", "typed wrong",
          "O. Hallam (invented)", "Understood", "Back"});
}

TEST_CASE("a new site's first person and its name keep to the Cab's sizes, and no text is clipped")
{
    const Folder folder;
    auto empty = db::Store::make(folder.path() / "book.db", {"a device", true, rules::Instant{1795590000},
                                                             rules::utc_day(rules::Instant{1795590000})});
    empty->accept_by(desk::accept);
    empty->check_on_opening();
    Rig rig{*empty, ui::Door::site};
    rig.tap("Begin");
    walk(rig, ui::glove, "new site", {"Somebody new"});
    type_and(rig, "P. Ashby (invented)", "Go on");
    walk(rig, ui::glove, "new site", {"Seen", "Site manager", "Go on", "Go on", "Go on"});
    type_and(rig, "Marsh Lane (invented)", "Go on");
    walk(rig, ui::bare, "new site", {"Begin", "P. Ashby (invented)"});
}
