// What stands on the Yard's pages, and on those of both desks, measured.

#include "measures.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace cotter;
using namespace cotter::tests;

TEST_CASE("what is ahead, and the Yard's orders, keep to the sizes of a desk, and no text is clipped")
{
    SampleBook sample;
    {
        Rig site{sample.store(), ui::Door::site};
        for (const char* each : {"Ahead", "Per day"}) {
            site.tap(each);
            check_everywhere(site, ui::bare, each);
        }
    }
    Rig yard{sample.store(), ui::Door::yard};
    for (const char* each : {"Orders", "Units", "Back", "Weeks"}) {
        yard.tap(each);
        check_everywhere(yard, ui::bare, each);
    }
}

TEST_CASE("Site and Yard have targets of 10 mm, 2 mm apart, and no text is clipped")
{
    SampleBook sample;
    {
        Rig site{sample.store(), ui::Door::site};
        check_everywhere(site, ui::bare, "due");
        site.tap("Stopped");
        check_everywhere(site, ui::bare, "stopped");
        walk(site, ui::bare, "Site",
             {"This day", "Back", "People", "Supervisor", "Back", "Back", "Compare", "Back", "Place", "Mark C"});
    }
    Rig yard{sample.store(), ui::Door::yard};
    check_everywhere(yard, ui::bare, "yard");
}

TEST_CASE("what else the Yard has, and a book just begun, keep to their sizes, and no text is clipped")
{
    SampleBook sample;
    {
        Rig rig{sample.store(), ui::Door::yard};
        walk(rig, ui::bare, "Yard",
             {"Orders", "Units", "Draw", "Back", "Back", "Weeks", "Back", "Back", "Calls", "Back", "Examined", "CL-02",
              "K. Sefton (invented)", "Without", "Day of the examination", "Take it"});
    }
    const auto folder = sample.path().parent_path() / "empty";
    auto empty = db::Store::make(folder / "book.db", {"a device", true, rules::Instant{1795590000}, rules::Day{}});
    Rig rig{*empty, ui::Door::site};
    check_everywhere(rig, ui::bare, "a new site");
}

TEST_CASE("pages of a paper beside what is typed keep to the sizes of a desk, and no text is clipped")
{
    SampleBook sample;
    {
        Rig rig{sample.store(), ui::Door::yard};
        give_photos(rig);
        walk(rig, ui::bare, "Yard",
             {"Find", "0", "5", "Find", "Back", "Examined", "CL-02", "K. Sefton (invented)", "p.jpg", "Take it",
              "Larger", "Sign it", "Says safe to operate", "Yes", "Leave it", "Back", "Leave it"});
        rig.hold("Hold to give it up");
        walk(rig, ui::bare, "Yard", {"Returned", "Back", "Orders", "Record one"});
    }
    Rig rig{sample.store(), ui::Door::site};
    rig.tap("Compare");
    const auto& seen = rig.seen();
    std::string first;
    for (const auto& each : seen)
        if (each.target && each.text != "Back" && each.text != "More" && first.empty())
            first = each.text;
    walk(rig, ui::bare, "Compare", {first, "O. Hallam (invented)", "Not alike", "Understood"});
}

TEST_CASE("a unit that arrives, a call and its answer keep to the sizes of a desk, and no text is clipped")
{
    SampleBook sample;
    {
        Rig rig{sample.store(), ui::Door::site};
        give_photos(rig);
        rig.tap("Stopped");
        walk(rig, ui::bare, "Arrival", {"Receive", "O. Hallam (invented)"});
        type_and(rig, "1", "Go on");
        walk(rig, ui::bare, "Arrival", {"Read it again", "Cannot be read"});
        walk_while(rig, ui::bare, "Arrival",
                   {"Missing", "Yes, seen", "p.jpg", "Take it", "Yes, that day", "In part", "Not to be used",
                    "plate cannot be read", "Call for a swap", "Understood"});
    }
    Rig rig{sample.store(), ui::Door::yard};
    walk(rig, ui::bare, "Answer",
         {"Calls", "Answer", "K. Sefton (invented)", "another leaves the yard tomorrow", "Back"});
}
