// Lift plans in Site: made by touch, the same as by command.

#include "deepest_run.hpp"
#include "kinds.hpp"
#include "rig.hpp"
#include "typist.hpp"

#include <doctest/doctest.h>

#include <cstdlib>
#include <fstream>

using namespace cotter;
using records::Json;
using tests::Rig;
using tests::SampleBook;
using tests::Typist;

namespace {

Json by_command(const SampleBook& sample)
{
    const tests::Folder folder;
    for (const char* ending : {"", ".key"})
        std::filesystem::copy_file(sample.path().string() + ending, folder.path() / ("book.db" + std::string{ending}));
    const std::string out = (folder.path() / "plan.json").string();
    const std::string command = COTTER_PROGRAM " plan --json --at 2026-11-25T08:00:00Z --store " +
                                (folder.path() / "book.db").string() +
                                " --from " COTTER_SOURCE "/sample_site/plan_sheets/deepest_run.json > " + out;
    REQUIRE(std::system(command.c_str()) == 0);
    std::ifstream in{out};
    return Json::parse(in)["plan"];
}

// The same inch in two hands: wide and upright.
void plan_made_on(tests::Glass glass)
{
    SampleBook sample;
    const Json command = by_command(sample);
    Rig rig{sample.store(), ui::Door::site, glass};
    rig.tap("Plans");
    rig.tap("A new plan");
    rig.tap("J. Quill (invented)");
    Typist{rig, sample.store()}.part(records::find_kind("lift_plan")->schema, tests::deepest_run_sheet());
    rig.tap("Work it out");
    CHECK(rig.shows("It fits. Nothing is issued yet"));
    for (const char* each : {"Above", "Section", "Chart", "Path", "Numbers"})
        rig.tap(each);
    rig.tap("Issue");
    rig.hold("Hold to issue it");
    CHECK(rig.shows("is in force from"));
    const auto record = sample.store().newest("lift_plan", 1).front().entry;
    CHECK(record.who == "quill");
    CHECK(record.body["issued"] == true);
    for (const char* field : {"results", "places", "greatest_kg", "greatest_radius_mm", "zone_mm", "pipes", "machines",
                              "attachments", "worksheet"})
        CHECK(record.body[field] == command[field]);
}

} // namespace

TEST_CASE("the deepest run's plan made by touch has the numbers of the command's") { plan_made_on({}); }

TEST_CASE("and on the upright glass") { plan_made_on({800, 1280, 5.88}); }

TEST_CASE("a plan that lacks something or does not fit is not issued, and the form says why")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    rig.tap("Plans");
    rig.tap("A new plan");
    rig.tap("J. Quill (invented)");
    rig.tap("Work it out");
    CHECK(rig.shows("Still needed: In force from, In force to, Worksheet"));
    Json body = tests::deepest_run_sheet();
    body["worksheet"]["ground"]["allowable_kpa"] = 20;
    Typist{rig, sample.store()}.part(records::find_kind("lift_plan")->schema, body);
    rig.tap("Work it out");
    CHECK(rig.shows("It does not fit"));
    CHECK(rig.shows("at most 20 is accepted"));
    CHECK_FALSE(rig.target("Issue"));
    rig.tap("Back");
    CHECK(rig.target("Work it out"));
}

TEST_CASE("a number out of its range is not taken, and says what is")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    for (const char* each : {"Plans", "A new plan", "J. Quill (invented)"})
        rig.tap(each);
    for (const char* each : {"Worksheet", "The ground", "Allowable bearing pressure"}) {
        for (int pages = 0; !rig.target(each) && pages < 5; ++pages)
            rig.key(ImGuiKey_PageDown);
        rig.tap(each);
    }
    rig.tap("0");
    rig.tap("Take it");
    CHECK(rig.shows("Accepted is 1 to 10000 kPa"));
    rig.tap("Rub out");
    rig.tap("9");
    rig.tap("0");
    rig.tap("Take it");
    CHECK(rig.shows("90 kPa"));
}

TEST_CASE("how a delivery is unloaded is planned by touch")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    for (const char* each : {"Plans", "A delivery", "CL-02", "J. Quill (invented)"}) {
        for (int pages = 0; !rig.target(each) && rig.target("More") && pages < 8; ++pages)
            rig.tap("More");
        rig.tap(each);
    }
    std::ifstream in{COTTER_SOURCE "/sample_site/plan_sheets/unloading_cl-02.json"};
    Typist{rig, sample.store()}.part(records::find_kind("unloading_plan")->schema, Json::parse(in)["body"]);
    rig.tap("Work it out");
    CHECK(rig.shows("It fits"));
    CHECK(rig.shows("420 kg"));
    rig.tap("Issue");
    rig.hold("Hold to issue it");
    const auto record = sample.store().newest("unloading_plan", 1).front().entry;
    CHECK(record.about == "cl-02");
    CHECK(record.who == "quill");
}

TEST_CASE("a bearing to the other side is typed by touch: sign and point are two keys")
{
    SampleBook sample;
    tests::issue_deepest_run(sample.store());
    Rig rig{sample.store(), ui::Door::site};
    for (const char* each : {"Plans", "plan-2, issue 1", "New issue", "J. Quill (invented)", "Worksheet",
                             "Standing places", "1", "Of the stack from ahead, to the trench's side positive"}) {
        for (int pages = 0; !rig.target(each) && pages < 6; ++pages)
            rig.key(ImGuiKey_PageDown);
        rig.tap(each);
    }
    for (const char* each : {"4", "5", ".", "5", "\u00b1", "Take it"})
        rig.tap(each);
    CHECK(rig.shows("-45.5\u00b0"));
    rig.tap("Of the stack from ahead, to the trench's side positive");
    for (const char* each : {"\u00b1", "3", "0", "Take it"}) // the sign first: another number, not that one's
        rig.tap(each);
    CHECK(rig.shows("-30\u00b0"));
}
