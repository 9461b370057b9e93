// A correction is a new record that names the old one; both stay.

#include "devices.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using namespace cotter::tests;

TEST_SUITE_BEGIN("corrections");

namespace {

Json correction(const Record& old, const Json& body)
{
    return {{"corrects", old.hash}, {"why", "typed wrong"}, {"body", body}};
}

} // namespace

TEST_CASE("a new body stands for the old one, and the fact is as if it had been so")
{
    Devices devices;
    const auto pipe = devices.write(0, "pipe", "p", {{"name", "P"}, {"stated_kg", 960}}, 1);
    devices.write(0, "correction", "p", correction(pipe, {{"name", "P"}, {"stated_kg", 690}}), 2);
    CHECK(devices.doc("pipe", "p")["stated_kg"] == 690);
    CHECK_FALSE(devices.doc("pipe", "p").contains("disputed"));
    CHECK(devices.records_of({"pipe", "p"}).size() == 2);
}

TEST_CASE("a void record says nothing any more, and the one before it holds again")
{
    Devices devices;
    devices.write(0, "pipe", "p", {{"name", "P"}, {"stated_kg", 690}}, 1);
    const auto wrong = devices.write(0, "pipe", "p", {{"name", "P"}, {"stated_kg", 400}}, 2);
    devices.write(0, "correction", "p", {{"corrects", wrong.hash}, {"why", "another pipe"}, {"void", true}}, 3);
    CHECK(devices.doc("pipe", "p")["stated_kg"] == 690);
}

TEST_CASE("the newest of several corrections holds")
{
    Devices devices;
    const auto pipe = devices.write(0, "pipe", "p", {{"name", "P"}, {"stated_kg", 960}}, 1);
    devices.write(0, "correction", "p", correction(pipe, {{"name", "P"}, {"stated_kg", 690}}), 2);
    devices.write(0, "correction", "p", correction(pipe, {{"name", "P"}, {"stated_kg", 700}}), 3);
    CHECK(devices.doc("pipe", "p")["stated_kg"] == 700);
}

TEST_CASE("a correction of proved data is a change, which unproves it")
{
    Devices devices;
    const auto pipe = devices.write(0, "pipe", "p", {{"name", "P"}, {"stated_kg", 960}}, 1);
    devices.write(0, "compared", "p", {{"what", "pipe"}}, 2, "hallam");
    devices.write(0, "correction", "p", correction(pipe, {{"name", "P"}, {"stated_kg", 690}}), 3, "farrow");
    CHECK(devices.doc("pipe", "p")["changed"] == Json{{"at", 1795590003}, {"by", "farrow"}});
}

TEST_CASE("a correction changes the words: who saw it, and when, is as it was")
{
    Devices devices;
    const auto check =
        devices.write(0, "pre_use_check", "u", {{"answers", {{{"item", "jaws"}, {"answer", "stop"}}}}}, 1);
    const auto looked = devices.write(0, "lock_seen", "h", {{"own_eyes", true}, {"locked", false}}, 2, "farrow");
    devices.write(0, "correction", "u", correction(check, {{"answers", {{{"item", "jaws"}, {"answer", "right"}}}}}),
                  90'000, "hallam");
    devices.write(0, "correction", "h", correction(looked, {{"own_eyes", true}, {"locked", true}}), 90'000, "hallam");
    const Json sheet = devices.doc("check", check.hash);
    CHECK(sheet["answers"][0]["answer"] == "right");
    CHECK(sheet["at"] == 1795590001);
    CHECK(sheet["by"] == "quill");
    CHECK(devices.doc("lock", "h")["looks"][0]["at"] == 1795590002);
    CHECK(devices.doc("lock", "h")["looks"][0]["by"] == "farrow");
}

TEST_CASE("nobody has signed the words that another put in a look's place")
{
    Devices devices;
    devices.write(0, "setting_changed", "u", {{"state", "hole 2"}}, 1, "farrow");
    const auto looked =
        devices.write(0, "setting_seen", "u", {{"state", "hole 1"}, {"by_eye", true}, {"at_unit", true}}, 2, "hallam");
    CHECK(devices.doc("setting", "u")["records"][1]["own_hand"] == true);
    devices.write(0, "correction", "u", correction(looked, {{"state", "hole 2"}, {"by_eye", true}, {"at_unit", true}}),
                  90'000, "quill");
    const Json look = devices.doc("setting", "u")["records"][1];
    CHECK(look["state"] == "hole 2");
    CHECK(look["at"] == 1795590002);
    CHECK(look["own_hand"] == false);
    CHECK(look["own_pin"] == false);
}

TEST_CASE("who corrected data does not prove them, nor who typed them first")
{
    Devices devices;
    const auto pipe = devices.write(0, "pipe", "p", {{"name", "P"}, {"stated_kg", 960}}, 1, "farrow");
    devices.write(0, "correction", "p", correction(pipe, {{"name", "P"}, {"stated_kg", 690}}), 2, "hallam");
    devices.write(0, "compared", "p", {{"what", "pipe"}}, 3, "hallam");
    devices.write(0, "compared", "p", {{"what", "pipe"}}, 4, "farrow");
    CHECK(devices.doc("pipe", "p")["compared"].empty());
    devices.write(0, "compared", "p", {{"what", "pipe"}}, 5, "quill");
    CHECK(devices.doc("pipe", "p")["compared"].size() == 1);
}

TEST_CASE("a correction that moves a record to another fact touches both")
{
    Devices devices;
    const auto named =
        devices.write(0, "people_today", "site", {{"day", "2026-11-25"}, {"roles", {{"supervisor", "hallam"}}}}, 1);
    devices.write(0, "correction", "site",
                  correction(named, {{"day", "2026-11-26"}, {"roles", {{"supervisor", "hallam"}}}}), 2);
    const auto keys = devices.keys();
    CHECK(keys.count({"people_today", "site 2026-11-25"}) == 1);
    CHECK(keys.count({"people_today", "site 2026-11-26"}) == 1);
}

TEST_CASE("a record that was moved to another day says nothing of the first")
{
    Devices devices;
    const auto named =
        devices.write(0, "people_today", "site", {{"day", "2026-11-25"}, {"roles", {{"supervisor", "hallam"}}}}, 1);
    devices.write(0, "correction", "site",
                  correction(named, {{"day", "2026-11-26"}, {"roles", {{"supervisor", "hallam"}}}}), 2);
    CHECK_FALSE(devices.fact("people_today", "site 2026-11-25").has_value());
}

TEST_CASE("a correction of a record that is not here touches nothing")
{
    Devices devices;
    devices.write(0, "correction", "p", {{"corrects", std::string(64, '0')}, {"why", "typed wrong"}, {"void", true}},
                  1);
    CHECK(devices.keys().empty());
}

TEST_CASE("of two corrections that do not know of each other the one that takes a record away does not win over one "
          "that keeps it")
{
    Devices devices;
    const auto stop = devices.write(0, "stop_called", "u", {{"why", "bent"}}, 1);
    devices.meet();
    devices.write(0, "correction", "u", correction(stop, {{"why", "cracked"}}), 2);
    devices.write(1, "correction", "u", {{"corrects", stop.hash}, {"why", "wrong unit"}, {"void", true}}, 3);
    CHECK(devices.fact("stop", stop.hash).has_value());
}

TEST_SUITE_END();
