// Records written by their forms in Site, and the log of laid pipes.

#include "laid.hpp"
#include "rig.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using tests::Rig;
using tests::SampleBook;

namespace {

void find_and_tap(Rig& rig, const std::string& words)
{
    for (int pages = 0; pages < 3; ++pages)
        rig.key(ImGuiKey_PageUp);
    for (int pages = 0; !rig.target(words) && pages < 4; ++pages)
        rig.key(ImGuiKey_PageDown);
    for (int pages = 0; !rig.target(words) && rig.target("More") && pages < 6; ++pages)
        rig.tap("More");
    rig.tap(words);
}

void number(Rig& rig, const std::string& field, const std::string& digits)
{
    find_and_tap(rig, field);
    for (const char digit : digits)
        rig.tap(std::string(1, digit));
    rig.tap("Take it");
}

std::string name_of(SampleBook& sample, const std::string& id) { return desk::shown_name(sample.store(), id); }

} // namespace

TEST_CASE("a competent person inspects a trench in Site, and only one is offered")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    for (const char* each : {"Record", "The day's work", "A trench is inspected", "Mark C"})
        find_and_tap(rig, each);
    CHECK_FALSE(rig.target(name_of(sample, "farrow")));
    find_and_tap(rig, name_of(sample, "varley"));
    find_and_tap(rig, "Safe to enter");
    rig.tap("Yes");
    rig.tap("Sign it");
    CHECK(rig.shows("It is written"));
    const auto record = sample.store().newest("trench_inspection", 1).front().entry;
    CHECK(record.about == "C");
    CHECK(record.who == "varley");
    CHECK(record.body["safe"] == true);
    CHECK(record.body["site"] == desk::current_site(sample.store()));
}

TEST_CASE("what is not whole is not written, and the form says what is missing")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    const auto before = sample.store().state().head.seq;
    for (const std::string& each :
         {std::string{"Record"}, std::string{"The day's work"}, std::string{"A trench is inspected"},
          std::string{"Mark C"}, name_of(sample, "varley")})
        find_and_tap(rig, each);
    rig.tap("Sign it");
    CHECK(rig.shows("Still needed:"));
    CHECK(sample.store().state().head.seq == before);
}

TEST_CASE("a laid pipe is logged with its joint against its maker's tolerance")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    rig.tap("Laid");
    CHECK(rig.shows("No pipe is in the log yet"));
    for (const auto& [joint, within] : {std::pair{"25", true}, {"26", false}, {"4", false}}) {
        rig.tap("Log a pipe");
        if (rig.target("A new one"))
            rig.tap("A new one");
        find_and_tap(rig, name_of(sample, "hallam"));
        find_and_tap(rig, "Pipe type");
        find_and_tap(rig, name_of(sample, "sk-450"));
        number(rig, "Chainage of its spigot end", "312.5");
        number(rig, "Gap in the joint, greatest round about", joint);
        rig.tap("Sign it");
        rig.tap("Back");
        const auto log = desk::laid_pipes(sample.store(), desk::current_site(sample.store()));
        REQUIRE_FALSE(log.empty());
        CHECK(log.front().is_joint_within() == within); // 5 to 25 mm, both included
        CHECK(log.front().chainage_mm == 312'500);
    }
    CHECK(rig.shows("Laid pipes: 3 in the log"));
    CHECK(rig.shows("at 312.5 m"));
}

TEST_CASE("a machine's set-up starts from what stands")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    for (const std::string& each :
         {std::string{"Record"}, std::string{"The day's work"}, std::string{"How the machine stands now"},
          std::string{"EX-21"}, name_of(sample, "hallam")})
        find_and_tap(rig, each);
    find_and_tap(rig, "Of the attachment");
    rig.tap("rigid");
    rig.tap("Sign it");
    const auto record = sample.store().newest("machine_set_up", 1).front().entry;
    CHECK(record.body["mounting"] == "rigid");
    CHECK(record.body["chart"] == "ex-21-chart"); // as it stood
}

TEST_CASE("a report that does not say when, by whom and whether it is safe is not signed")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::yard};
    for (const char* each : {"Examined", "CL-02", "K. Sefton (invented)", "Without"})
        rig.tap(each);
    rig.tap("Sign it");
    CHECK(rig.shows("Still needed:"));
    CHECK(rig.shows("Day of the examination"));
    CHECK(sample.store().fact("report", "rep-cl-02"));
    for (const auto& row : desk::board(sample.store(), rig.now, *rules::parse_day("2026-11-25")))
        if (row.unit == "cl-02")
            CHECK(row.latest);
}

TEST_CASE("metres typed with a point stay metres, and a point where none is meant is refused")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    rig.tap("Laid");
    rig.tap("Log a pipe");
    if (rig.target("A new one"))
        rig.tap("A new one");
    find_and_tap(rig, name_of(sample, "hallam"));
    find_and_tap(rig, "Chainage of its spigot end");
    rig.type("125.5");
    rig.frame();
    rig.tap("Take it");
    CHECK(rig.shows("125.5 m"));
    find_and_tap(rig, "Gap in the joint, greatest round about");
    rig.type("12.5"); // in whole millimetres
    rig.frame();
    rig.tap("Take it");
    CHECK(rig.shows("Accepted is"));
}
