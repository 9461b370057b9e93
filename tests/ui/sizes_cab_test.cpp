// What stands on the Cab's pages, measured.

#include "measures.hpp"
#include "own_book.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

using namespace cotter;
using namespace cotter::tests;

TEST_CASE("the Cab's targets are 19 mm and 6 mm apart, and no text is clipped")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    for (const std::string& next : {std::string{"I. Farrow (invented)"}, std::string{"EX-21"}, std::string{"Mark B"},
                                    pipe_name(sample), std::string{"hole 2"}}) {
        check_everywhere(rig, ui::glove, "before " + next);
        rig.tap(next);
    }
    check_everywhere(rig, ui::glove, "sheet");
    rig.tap("Report");
    rig.tap("Stand down");
    check_everywhere(rig, ui::glove, "stand down");
    rig.hold("Hold to stand down");
    check_everywhere(rig, ui::glove, "receipt");
    rig.tap("Not now");
    rig.tap("Cab");
    for (const std::string& next : {std::string{"I. Farrow (invented)"}, std::string{"8 hours"}, std::string{"EX-21"},
                                    std::string{"Mark B"}, pipe_name(sample)})
        rig.tap(next);
    for (const char* button : {"Report", "Check"}) {
        rig.tap(button);
        check_everywhere(rig, ui::glove, button);
        rig.tap(rig.target("Back") ? "Back" : "Leave it");
    }
}

TEST_CASE("the pages of a lift keep to the Cab's sizes, and no text is clipped")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    const std::string pipe = sample.store().fact("pipe", "sk-450")->doc.value("name", "");
    walk(rig, ui::glove, "lift",
         {"T. Dunmore (invented)", "EX-14", "Mark B", pipe, "Lift", "Not so", "Back", "All so", "Read", "Read", "Read",
          "Load is up", "Set down, laid", "Report", "Knock"});
}

TEST_CASE("the pages of a moved pin keep to the Cab's sizes, and no text is clipped")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    for (const std::string& next : {std::string{"I. Farrow (invented)"}, std::string{"EX-21"}, std::string{"Mark B"},
                                    pipe_name(sample), std::string{"hole 2"}, std::string{"Move"}})
        rig.tap(next);
    for (int i = 0; i < 30 && rig.target("Done"); ++i) {
        check_everywhere(rig, ui::glove, "step");
        rig.tap("Done");
    }
    for (const char* next : {"hole 4", "B. Oakes (invented)"}) {
        check_everywhere(rig, ui::glove, next);
        rig.tap(next);
    }
    check_everywhere(rig, ui::glove, "second look");
}

TEST_CASE("a page without an open shift keeps to the Cab's sizes")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    rig.now = rig.now + rules::Instant{86'400};
    rig.tap("I. Farrow (invented)");
    check_everywhere(rig, ui::glove, "shift");
}

TEST_CASE("the pages on which people sign, admit and stop keep to the Cab's sizes, and no text is clipped")
{
    tests::OwnBook book;
    book.staff();
    Rig rig{book.store(), ui::Door::none};
    for (const char* next : {"Stop a unit", "cl-02", "bent, cracked or broken", "iqbal", "Seen", "Understood", "Site",
                             "People", "Admit a person"}) {
        rig.tap(next);
        check_everywhere(rig, std::string{next} == "Site" ? ui::bare : ui::glove, next);
    }
    tests::type(rig, tests::hallams);
    for (const char* next : {"farrow", "Seen", "Go on", "Go on", "Go on", "Set a PIN", "iqbal"}) {
        check_everywhere(rig, ui::glove, next);
        rig.tap(next);
    }
    check_everywhere(rig, ui::glove, "choose");
    rig.tap("Back");
    rig.ticks += 3600;
    rig.frame();
    CHECK(rig.shows("Locked"));
    check_everywhere(rig, ui::glove, "locked");
}

TEST_CASE(
    "the pages on which findings are cleared, and a tag is found, keep to the Cab's sizes, and no text is clipped")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    give_photos(rig);
    walk(rig, ui::glove, "Cab",
         {"Find a unit",
          "0",
          "2",
          "Find",
          "Back",
          "A unit has come",
          "Back",
          "I. Farrow (invented)",
          "EX-21",
          "Mark B",
          pipe_name(sample),
          "hole 2",
          "Lift",
          "Back",
          "Check",
          "Report",
          "worn or loose",
          "Understood",
          "Leave it",
          "Report",
          "Defect",
          "CL-02",
          "worn or loose",
          "p.jpg",
          "Another",
          "Without",
          "Report",
          "Call the yard",
          "Breakdown",
          "something is not right",
          "Understood"});
}

TEST_CASE("what the Cab explains, and what could not be done, keep to the Cab's sizes, and no text is clipped")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::cab};
    walk(rig, ui::glove, "Cab, explained",
         {"I. Farrow (invented)", "EX-21", "At none of them", pipe_name(sample), "hole 2"});
    std::set<std::string> explained;
    do
        for (const char* each : {"Plan", "Tell", "Swap", "Name", "Enter"})
            if (rig.target(each) && explained.insert(each).second) {
                rig.tap(each);
                check_everywhere(rig, ui::glove, std::string{"explained, "} + each);
                rig.tap("Back");
                break; // the findings begin at the first again
            }
    while (rig.turn_findings());
    CHECK(explained.size() >= 2);
    rig.photos.bytes = [](const std::string&) -> std::optional<std::string> { throw std::runtime_error{"CL-02"}; };
    rig.photos.found = [] { return std::vector<std::string>{"/stick/p.jpg"}; };
    for (const char* each : {"Report", "Knock", "CL-02", "dropped or fell over", "p.jpg"})
        rig.tap(each);
    CHECK(rig.shows("That could not be done"));
    check_everywhere(rig, ui::glove, "could not be done");
}
