// What a set of records means does not depend on the order in which they came.

#include "devices.hpp"

#include <doctest/doctest.h>

#include <random>

using namespace cotter;
using namespace cotter::tests;

TEST_SUITE_BEGIN("fold");

namespace {

constexpr std::size_t orders_tried = 40;

Json example(const std::string& kind) { return records::find_kind(kind)->schema.at("examples").at(0); }

std::string example_about(const std::string& kind)
{
    return records::find_kind(kind)->schema.at("x-example-about").get<std::string>();
}

// Another value in every field of the example that a second person might type.
Json varied(Json body)
{
    for (auto& [key, value] : body.items())
        if (value.is_number_integer())
            value = value.get<std::int64_t>() + 1;
        else if (value.is_boolean())
            value = !value.get<bool>();
    return body;
}

// Two devices write every kind, apart, together, apart again, and correct each other.
void write_everything(Devices& devices)
{
    std::int64_t clock = 0;
    std::vector<Record> written;
    for (int round = 0; round < 3; ++round) {
        for (const auto& kind : records::kinds())
            if (kind.name != "device" && kind.name != "correction")
                for (const std::size_t device : {0U, 1U})
                    written.push_back(devices.write(device, kind.name, example_about(kind.name),
                                                    device == 0 ? example(kind.name) : varied(example(kind.name)),
                                                    (clock += 7) / 10, device == 0 ? "quill" : "hallam"));
        if (round == 0)
            devices.meet();
    }
    for (std::size_t i = 0; i < written.size(); i += 5) {
        const bool taken_back = i % 2 == 0;
        Json body = {{"corrects", written[i].hash}, {"why", "typed wrong"}};
        body.update(taken_back ? Json{{"void", true}} : Json{{"body", varied(written[i].entry.body)}});
        devices.write(i % 3 == 0 ? 1 : 0, "correction", written[i].entry.about, std::move(body), (clock += 7) / 10);
    }
}

// Records that name others by their hash: stops, checks and clock notices with what clears them.
void write_what_clears(Devices& devices)
{
    const auto stop = devices.write(0, "stop_called", "u-1", {{"why", "bent"}}, 9000);
    const auto check =
        devices.write(0, "pre_use_check", "u-1", {{"answers", {{{"item", "pin"}, {"answer", "stop"}}}}}, 9010);
    const auto notice = devices.write(0, "clock_notice", "d", {{"kind", "back"}}, 9020);
    devices.meet();
    for (const std::size_t device : {0U, 1U}) {
        devices.write(device, "stop_lifted", "u-1", {{"stop", stop.hash}, {"why", "straight"}}, 9030);
        devices.write(device, "defect_cleared", "u-1", {{"check", check.hash}, {"item", "pin"}, {"remedy", "renewed"}},
                      9030);
        devices.write(device, "clock_confirmed", "d", {{"notice", notice.hash}, {"to", 1795599000}}, 9030);
    }
}

} // namespace

TEST_CASE("any order of the records of any fact gives the same fact")
{
    Devices devices;
    write_everything(devices);
    write_what_clears(devices);
    std::mt19937 random{20261125};
    std::set<std::string> kinds_seen;
    for (const FactKey& key : devices.keys()) {
        std::vector<Record> records = devices.records_of(key);
        const std::string expected = text_of(records::fold(key, records));
        kinds_seen.insert(key.kind);
        for (std::size_t i = 0; i < orders_tried; ++i) {
            std::shuffle(records.begin(), records.end(), random);
            CAPTURE(key.kind);
            CAPTURE(key.key);
            REQUIRE(text_of(records::fold(key, records)) == expected);
        }
    }
    for (const std::string kind :
         {"site",        "shift",       "person",  "model", "unit",         "pipe",           "chart",    "check_sheet",
          "report",      "declaration", "interim", "event", "setting",      "headplate",      "coupling", "lock",
          "set_up",      "devices",     "rigging", "place", "trench",       "plan",           "lift",     "order",
          "whereabouts", "check",       "stop",    "clock", "people_today", "without_answer", "defect"}) {
        CAPTURE(kind);
        CHECK(kinds_seen.count(kind) == 1);
    }
}

TEST_CASE("a record that came twice says nothing more")
{
    Devices devices;
    devices.write(0, "pipe", "p", {{"name", "P"}, {"stated_kg", 690}}, 1);
    devices.write(0, "pipe", "p", {{"name", "P"}, {"stated_kg", 700}}, 2);
    auto records = devices.records_of({"pipe", "p"});
    const std::string once = text_of(records::fold({"pipe", "p"}, records));
    CHECK(records::heads_of(records).size() == 1);
    CHECK(once.find("700") != std::string::npos);
}

TEST_CASE("the heads of a fact are the records that no other knows")
{
    Devices devices;
    const auto a = devices.write(0, "pipe", "p", {{"name", "A"}}, 1),
               b = devices.write(1, "pipe", "p", {{"name", "B"}}, 2);
    auto both = std::vector{a.hash, b.hash};
    std::sort(both.begin(), both.end());
    CHECK(devices.fact("pipe", "p")->heads == both);
    devices.meet();
    const auto c = devices.write(0, "pipe", "p", {{"name", "C"}}, 3);
    CHECK(devices.fact("pipe", "p")->heads == std::vector{c.hash});
    CHECK(devices.doc("pipe", "p")["name"] == "C");
}

TEST_CASE("what a record knows comes before it, whatever the clocks say")
{
    Devices devices;
    devices.write(0, "pipe", "p", {{"name", "early"}, {"stated_kg", 690}}, 5000); // this device's clock is ahead
    devices.meet();
    devices.write(1, "pipe", "p", {{"name", "late"}, {"stated_kg", 500}}, 10);
    CHECK(devices.doc("pipe", "p")["name"] == "late");
    CHECK_FALSE(devices.doc("pipe", "p").contains("disputed"));
}

TEST_CASE("a fact without records, or with void ones only, says nothing")
{
    CHECK_FALSE(records::fold({"pipe", "p"}, {}).has_value());
    Devices devices;
    const auto pipe = devices.write(0, "pipe", "p", {{"name", "P"}}, 1);
    devices.write(0, "correction", "p", {{"corrects", pipe.hash}, {"why", "no such pipe"}, {"void", true}}, 2);
    CHECK_FALSE(devices.fact("pipe", "p").has_value());
}

TEST_CASE("what changed a report, model, chart or pipe last unproves it, and comparing proves it")
{
    Devices devices;
    devices.write(0, "pipe", "p", {{"name", "P"}}, 1, "quill");
    devices.write(0, "compared", "p", {{"what", "pipe"}}, 2, "hallam");
    CHECK(devices.doc("pipe", "p")["compared"].size() == 1);
    CHECK(devices.doc("pipe", "p")["changed"] == Json{{"at", 1795590001}, {"by", "quill"}});
    devices.write(0, "pipe", "p", {{"name", "P"}}, 3, "quill");
    CHECK(devices.doc("pipe", "p")["changed"]["at"] == 1795590003);
    CHECK(devices.doc("pipe", "p")["compared"].empty());
    devices.write(0, "compared", "p", {{"what", "pipe"}}, 4, "hallam");
    CHECK(devices.doc("pipe", "p")["compared"] == Json{{{"at", 1795590004}, {"by", "hallam"}}});
}

TEST_CASE("a comparison of the same second proves what it knew, and nothing written after it")
{
    Devices devices;
    devices.write(0, "pipe", "p", {{"name", "P"}}, 1, "quill");
    devices.write(0, "compared", "p", {{"what", "pipe"}}, 1, "hallam");
    CHECK(devices.doc("pipe", "p")["compared"].size() == 1);
    const auto changed = devices.write(0, "pipe", "p", {{"name", "P"}, {"stated_kg", 700}}, 1, "quill");
    CHECK(devices.doc("pipe", "p")["compared"].empty());
    devices.write(0, "compared", "p", {{"what", "pipe"}}, 1, "hallam");
    CHECK(devices.doc("pipe", "p")["compared"].size() == 1);
    devices.write(0, "correction", "p", {{"corrects", changed.hash}, {"why", "typed wrong"}, {"body", {{"name", "P"}}}},
                  1, "quill");
    CHECK(devices.doc("pipe", "p")["compared"].empty());
    devices.write(0, "compared", "p", {{"what", "pipe"}}, 1, "hallam");
    CHECK(devices.doc("pipe", "p")["compared"].size() == 1);
}

TEST_CASE("a comparison on one device does not prove what another changed meanwhile")
{
    Devices devices;
    devices.write(0, "pipe", "p", {{"name", "P"}}, 1, "quill");
    devices.meet();
    devices.write(1, "pipe", "p", {{"name", "P"}, {"stated_kg", 700}}, 2, "quill");
    devices.write(0, "compared", "p", {{"what", "pipe"}}, 3, "hallam");
    CHECK(devices.doc("pipe", "p")["compared"].empty());
}

TEST_CASE("a clearing that does not say of what clears nothing, and can be folded")
{
    Devices devices;
    devices.write(0, "defect_cleared", "u-1", {{"remedy", "renewed"}}, 1);
    CHECK(devices.doc("defect", "u-1 ")["id"] == "");
}

TEST_CASE("a stop called and lifted by two who did not know of each other keeps both")
{
    Devices devices;
    const auto stop = devices.write(0, "stop_called", "u", {{"why", "bent"}}, 1, "iqbal");
    CHECK(devices.fact("stop", stop.hash)->open);
    CHECK(devices.doc("stop", stop.hash)["lifted"] == Json::array());
    devices.write(0, "stop_lifted", "u", {{"stop", stop.hash}, {"why", "straight"}}, 2, "hallam");
    CHECK(devices.doc("stop", stop.hash)["lifted"] ==
          Json::array({{{"by", "hallam"}, {"roles", Json::array()}, {"why", "straight"}}}));
    CHECK(devices.fact("stop", stop.hash)->about == std::vector<std::string>{"u"});
}

TEST_SUITE_END();
