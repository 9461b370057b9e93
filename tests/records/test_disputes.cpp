// Two devices say different things and do not know of each other: the safer holds, and it is said which is disputed.

#include "devices.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using namespace cotter::tests;

TEST_SUITE_BEGIN("disputes");

namespace {

struct Row {
    const char *kind, *field;
    Json a, b, holds;
};

// The example of a kind with one field set.
Json with(const std::string& kind, const std::string& field, const Json& value)
{
    Json body = records::find_kind(kind)->schema.at("examples").at(0);
    body[field] = value;
    return body;
}

const char* fact_kind(const std::string& kind)
{
    for (const auto& [record, fact] : {std::pair{"examination_report", "report"},
                                       {"lift_plan", "plan"},
                                       {"machine_set_up", "set_up"},
                                       {"interim_statement", "interim"}})
        if (kind == record)
            return fact;
    return nullptr;
}

Json disputed_doc(const Row& row, bool turned)
{
    Devices devices;
    devices.write(0, row.kind, "x", with(row.kind, row.field, turned ? row.b : row.a), 1);
    devices.write(1, row.kind, "x", with(row.kind, row.field, turned ? row.a : row.b), 2);
    const char* kind = fact_kind(row.kind);
    return devices.doc(kind ? kind : row.kind, "x");
}

void check_rows(const std::vector<Row>& rows)
{
    for (const Row& row : rows)
        for (const bool turned : {false, true}) {
            const Json doc = disputed_doc(row, turned);
            CAPTURE(std::string{row.kind});
            CAPTURE(std::string{row.field});
            CAPTURE(turned);
            CHECK(doc.value(row.field, Json{}) == row.holds);
            CHECK(doc.value("disputed", Json{}) == Json::array({row.field}));
        }
}

} // namespace

TEST_CASE("of two loads or sizes that add to one the greater holds")
{
    check_rows({{"pipe", "stated_kg", 690, 900, 900},
                {"pipe", "barrel_mm", 584, 600, 600},
                {"pipe", "socket_mm", 720, 700, 720},
                {"pipe", "overall_mm", 2600, 2700, 2700},
                {"pipe", "density_kg_m3", 2400, 2500, 2500},
                {"pipe", "allowance_percent", 5, 0, 5},
                {"unit", "mass_kg", 310, 330, 330},
                {"rigging", "shackles_kg", 0, 9, 9},
                {"rigging", "bucket_kg", 450, 0, 450},
                {"rigging", "water_kg", 0, 30, 30},
                {"rigging", "mud_kg", 20, 0, 20},
                {"model", "envelope_length_mm", 900, 950, 950},
                {"model", "above_crown_mm", 400, 350, 400},
                {"model", "below_invert_mm", 0, 100, 100}});
}

TEST_CASE("of two bores the smaller holds, for the wall is then thicker, and of two sockets the longer")
{
    check_rows({{"pipe", "bore_mm", 450, 440, 440}, {"pipe", "socket_length_mm", 100, 120, 120}});
}

TEST_CASE("of two ratings or limits the lower holds")
{
    check_rows({{"model", "rating_kg", 3000, 2800, 2800},
                {"model", "greatest_pipe_kg", 2500, 2600, 2500},
                {"model", "tilt_limit_mdeg", 5000, 4000, 4000},
                {"unit", "plate_kg", 3000, 2900, 2900},
                {"unit", "scheme_months", 6, 12, 6},
                {"examination_report", "swl_kg", 3000, 2000, 2000},
                {"lift_plan", "greatest_kg", 2200, 2000, 2000},
                {"lift_plan", "greatest_radius_mm", 5000, 5500, 5000},
                {"machine_set_up", "mount_kg", 900, 800, 800}});
}

TEST_CASE("of two days or times that end something the earlier holds")
{
    check_rows({{"examination_report", "latest", "2027-03-01", "2027-02-01", "2027-02-01"},
                {"examination_report", "examined", "2026-09-01", "2026-09-05", "2026-09-01"},
                {"person", "card_last_day", "2027-03-31", "2028-03-31", "2027-03-31"},
                {"lift_plan", "last_day", "2026-12-20", "2026-12-01", "2026-12-01"},
                {"shift", "end", 1795626000, 1795600000, 1795600000}});
}

TEST_CASE("of two answers the one that stops holds")
{
    check_rows({{"examination_report", "safe", true, false, false},
                {"lift_plan", "issued", true, false, false},
                {"lift_plan", "signed", false, true, false},
                {"chart", "includes_hitch", true, false, false},
                {"rigging", "no_sling", true, false, false},
                {"interim_statement", "safe", true, false, false}});
}

TEST_CASE("where yes is what asks for more, yes holds")
{
    check_rows(
        {{"site", "expired_card_stops", true, false, true}, {"model", "setting_is_configuration", true, false, true}});
}

TEST_CASE("whether there is an adjustment at all is never settled as no")
{
    const Json doc = disputed_doc({"model", "adjusts", true, false, {}}, false);
    CHECK(doc.value("adjusts", Json{}) != false);
}

TEST_CASE("of two room or warning figures the greater holds")
{
    check_rows({{"site", "warning_days", 14, 30, 30},
                {"lift_plan", "zone_mm", 9000, 12000, 12000},
                {"unit", "tail_swing_mm", 2000, 2500, 2500}});
}

TEST_CASE("of two words or lists nothing is known")
{
    check_rows({{"pipe", "shape", "straight", "bend", {}},
                {"pipe", "material", "concrete", "clay", {}},
                {"machine_set_up", "blade", "up", "down", {}},
                {"machine_set_up", "mounting", "free", "rigid", {}},
                {"model", "materials", {"concrete"}, {"clay"}, {}},
                {"unit", "model", "m-1", "m-2", {}},
                {"lift_plan", "pipes", {"a"}, {"b"}, {}}});
}

TEST_CASE("what only one of them says is not known")
{
    Devices devices;
    devices.write(0, "pipe", "p", {{"name", "P"}, {"stated_kg", 690}}, 1);
    devices.write(1, "pipe", "p", {{"name", "P"}}, 2);
    CHECK(devices.doc("pipe", "p").value("stated_kg", Json{}).is_null());
    CHECK(devices.doc("pipe", "p")["disputed"] == Json::array({"stated_kg"}));
}

TEST_CASE("of three the safest holds, and every field in which any two differ is named")
{
    Devices devices;
    devices.write(0, "pipe", "p", {{"name", "P"}, {"stated_kg", 690}, {"bore_mm", 450}}, 1);
    devices.write(1, "pipe", "p", {{"name", "P"}, {"stated_kg", 900}, {"bore_mm", 450}}, 2);
    devices.write(2, "pipe", "p", {{"name", "P"}, {"stated_kg", 700}, {"bore_mm", 440}}, 3);
    const Json doc = devices.doc("pipe", "p");
    CHECK(doc["stated_kg"] == 900);
    CHECK(doc["bore_mm"] == 440);
    CHECK(doc["disputed"] == Json::array({"bore_mm", "stated_kg"}));
}

TEST_CASE("two who say the same do not dispute it")
{
    Devices devices;
    devices.write(0, "pipe", "p", {{"name", "P"}, {"stated_kg", 690}}, 1);
    devices.write(1, "pipe", "p", {{"name", "P"}, {"stated_kg", 690}}, 2);
    CHECK_FALSE(devices.doc("pipe", "p").contains("disputed"));
    CHECK(devices.doc("pipe", "p")["stated_kg"] == 690);
}

TEST_CASE("whoever writes knowing of both ends the dispute")
{
    Devices devices;
    devices.write(0, "pipe", "p", {{"name", "P"}, {"stated_kg", 690}}, 1);
    devices.write(1, "pipe", "p", {{"name", "P"}, {"stated_kg", 900}}, 2);
    devices.meet();
    devices.write(0, "pipe", "p", {{"name", "P"}, {"stated_kg", 690}}, 3);
    CHECK(devices.doc("pipe", "p")["stated_kg"] == 690);
    CHECK_FALSE(devices.doc("pipe", "p").contains("disputed"));
}

TEST_CASE("comparing a paper with its page does not end a dispute about it")
{
    Devices devices;
    devices.write(0, "pipe", "p", {{"name", "P"}, {"stated_kg", 690}}, 1);
    devices.write(1, "pipe", "p", {{"name", "P"}, {"stated_kg", 900}}, 2);
    devices.meet();
    devices.write(0, "compared", "p", {{"what", "pipe"}}, 3, "hallam");
    CHECK(devices.doc("pipe", "p")["stated_kg"] == 900);
}

TEST_CASE("one who compares on one side settles nothing on the other")
{
    for (const std::int64_t other_wrote : {0, 3}) {
        Devices devices;
        devices.write(0, "pipe", "p", {{"name", "P"}, {"stated_kg", 690}}, 1);
        devices.write(0, "compared", "p", {{"what", "pipe"}}, 2, "hallam");
        devices.write(1, "pipe", "p", {{"name", "P"}, {"stated_kg", 900}}, other_wrote);
        CAPTURE(other_wrote);
        CHECK(devices.doc("pipe", "p")["stated_kg"] == 900);
        CHECK(devices.doc("pipe", "p").value("disputed", Json::array()) == Json::array({"stated_kg"}));
    }
}

TEST_CASE("a briefing, an admission or an assessment on one side settles nothing on the other")
{
    Devices devices;
    devices.write(1, "lift_plan", "x", with("lift_plan", "greatest_kg", 900), 1);
    devices.write(0, "lift_plan", "x", with("lift_plan", "greatest_kg", 2200), 2);
    devices.write(0, "briefing", "x", {{"issue", 1}, {"person", "iqbal"}}, 3);
    CHECK(devices.doc("plan", "x")["greatest_kg"] == 900);
    devices.write(1, "person", "y", with("person", "card_last_day", "2026-12-01"), 4);
    devices.write(0, "person", "y", with("person", "card_last_day", "2027-12-01"), 5);
    devices.write(0, "admission", "y", {{"site", "s"}, {"card_seen", true}}, 6);
    CHECK(devices.doc("person", "y")["card_last_day"] == "2026-12-01");
}

TEST_CASE("who writes after a comparison knows what was compared")
{
    Devices devices;
    devices.write(0, "pipe", "p", {{"name", "P"}, {"stated_kg", 900}}, 1);
    devices.write(0, "compared", "p", {{"what", "pipe"}}, 2, "hallam");
    devices.write(0, "pipe", "p", {{"name", "P"}, {"stated_kg", 690}}, 3);
    CHECK(devices.doc("pipe", "p")["stated_kg"] == 690);
    CHECK_FALSE(devices.doc("pipe", "p").contains("disputed"));
}

TEST_SUITE_END();
