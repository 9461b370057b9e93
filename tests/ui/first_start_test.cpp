// An empty book: what a new site does up to its first check, and how it is put right.

#include "accept.hpp"
#include "rig.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using tests::Rig;

namespace {

void scroll_to(Rig& rig, const std::string& words)
{
    for (int i = 0; i < 12 && !rig.target(words); ++i)
        rig.key(ImGuiKey_PageUp);
    for (int i = 0; i < 12 && !rig.target(words); ++i)
        rig.key(ImGuiKey_PageDown);
}

void fill_in(Rig& rig, const std::string& field, const std::string& text)
{
    scroll_to(rig, field);
    rig.tap(field);
    rig.type(text);
    rig.frame();
    rig.tap("Take it");
}

void fill_in_unit(Rig& rig, const std::string& tag)
{
    rig.tap("P. Ashby (invented)");
    fill_in(rig, "Label; two firms may use the same", tag);
    fill_in(rig, "Owner", "Own firm (invented)");
    fill_in(rig, "Maker's serial", "S-" + tag);
    rig.tap("Sign it");
    rig.tap("Back");
}

void choose(Rig& rig, const std::vector<const char*>& words)
{
    for (const char* each : words)
        rig.tap_or_hold(each);
}

} // namespace

TEST_CASE("an empty book leads to the first check, one step after the other, in under a hundred touches")
{
    tests::Folder folder;
    const auto at = *desk::parse_instant("2026-11-25T08:00:00Z");
    const auto store = db::Store::make(folder.path() / "book.db", {"this device", true, at, rules::utc_day(at)});
    store->accept_by(desk::accept);
    store->check_on_opening();
    Rig rig{*store, ui::Door::none};
    const double begun = rig.ticks;
    rig.tap("Site");
    CHECK(rig.shows("A new site begins"));
    rig.tap("Begin"); // who runs it
    rig.tap("Somebody new");
    rig.type("P. Ashby (invented)");
    rig.frame();
    choose(rig, {"Go on", "Seen", "Site manager", "Lifting supervisor", "Operator", "Go on", "Go on", "Go on"});
    rig.type("Marsh Lane (invented)"); // the site
    rig.frame();
    rig.tap("Go on");
    choose(rig, {"Begin", "P. Ashby (invented)"}); // sheets
    rig.tap("Begin");                              // machine
    fill_in_unit(rig, "EX-1");
    rig.tap("Begin"); // attachment
    fill_in_unit(rig, "AT-1");
    rig.tap("Begin"); // couple
    choose(rig, {"EX-1", "P. Ashby (invented)"});
    scroll_to(rig, "Attachment");
    choose(rig, {"Attachment", "AT-1"});
    choose(rig, {"Sign it", "Back"});
    CHECK_FALSE(rig.shows("A new site begins"));
    choose(rig, {"Leave", "Cab", "P. Ashby (invented)", "8 hours", "EX-1", "None of these"});
    if (rig.target("Back") && !rig.target("Check"))
        rig.tap("Back"); // a setting that nobody knows yet
    rig.tap("Check");
    CHECK(rig.target("Right"));
    MESSAGE("touches to the first check: ", rig.ticks - begun);
    CHECK(rig.ticks - begun < 100); // what is typed between them is not counted
    while (rig.target("Right"))
        rig.tap("Right");
    CHECK(store->newest("pre_use_check", 1).size() == 1);
}

TEST_CASE("what was written wrong is put right, and the older record stays")
{
    tests::SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    rig.tap("Record");
    rig.tap("Units come and go");
    rig.tap("Call the yard");
    choose(rig, {"CL-02", "Collect", "work is finished", "O. Hallam (invented)", "Understood", "Back", "Put right"});
    const auto call = sample.store().newest("call", 1).front();
    choose(rig, {"Put right", "Hold to make it void", "meant for another one"});
    while (!rig.target("O. Hallam (invented)"))
        rig.tap("More");
    choose(rig, {"O. Hallam (invented)", "Understood"});
    const auto correction = sample.store().newest("correction", 1).front().entry;
    CHECK(correction.body["corrects"] == call.hash);
    CHECK(correction.body["void"] == true);
    CHECK_FALSE(sample.store().fact("call", call.hash));
    CHECK(sample.store().find(call.hash));
}
