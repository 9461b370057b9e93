// The published computations: their JSON, their exit codes, and what they refuse.

#include "program.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>

using namespace cotter::tests;

TEST_SUITE_BEGIN("computations");

namespace {

using Keys = std::vector<std::string>;

const std::string weigh = "weigh --bore 450 --wall 67 --length 2600 --json ";
const std::string thread_2600 = "thread --length 2600 --outside 720 --max-tilt 20 --json ";

struct ChartFile {
    ChartFile()
    {
        write_bytes(path,
                    "over,height_m,radius_m,rated_kg\nfront,0,4,4000\nfront,0,5,3000\nfront,2,4,3600\nfront,2,5,\n"
                    "side,0,4,2000\nside,0,5,1500\n");
    }
    Ran reach(const std::string& more) const
    {
        auto all = words("reach --json " + more);
        all.insert(all.end(), {"--chart", path.string()});
        return call(all);
    }
    Scratch scratch;
    fs::path path = scratch.folder() / "chart.csv";
};

} // namespace

TEST_CASE("due prints latest, days left and in date, and exits by it")
{
    const Ran in_date = call(words("due --examined 2026-08-31 --on 2026-11-25 --json"));
    CHECK(in_date.code == 0);
    CHECK(in_date.err == "");
    CHECK(in_date.json() == Json{{"latest", "2027-02-28"}, {"days_left", 95}, {"in_date", true}});
    const Ran out_of_date = call(words("due --examined 2026-08-31 --on 2027-03-02 --json"));
    CHECK(out_of_date.code == 1);
    CHECK(out_of_date.json() == Json{{"latest", "2027-02-28"}, {"days_left", -2}, {"in_date", false}});
}

TEST_CASE("due takes intervals in days, weeks, months and years, and the last day itself is in date")
{
    for (const auto& [interval, latest] : {std::pair{"10d", "2026-09-10"},
                                           {"4w", "2026-09-28"},
                                           {"6m", "2027-02-28"},
                                           {"12m", "2027-08-31"},
                                           {"1y", "2027-08-31"}}) {
        const Ran ran = call({"due", "--examined", "2026-08-31", "--interval", interval, "--on", latest, "--json"});
        CHECK(ran.code == 0);
        CHECK(ran.json() == Json{{"latest", latest}, {"days_left", 0}, {"in_date", true}});
    }
}

TEST_CASE("due refuses an examination after the day asked about, and days and intervals that are none")
{
    CHECK(not_refused(call(words("due --examined 2026-11-26 --on 2026-11-25")),
                      {"--examined", "2026-11-26", "accepted"}) == "");
    for (const char* day : {"2026-02-30", "26-11-25", "2026-11-25T00:00", "today", "2026-1-1", "0000-00-00"})
        CHECK(not_refused(call({"due", "--examined", day, "--on", "2026-11-25"}), {"--examined", day, "YYYY-MM-DD"}) ==
              "");
    for (const char* interval : {"0m", "-6m", "6", "m", "6x", "1.5m", "99999d", "6 m"})
        CHECK(not_refused(call({"due", "--examined", "2026-08-31", "--on", "2026-11-25", "--interval", interval}),
                          {"--interval", interval, "d, w, m or y"}) == "");
    CHECK(not_refused(call({"due", "--examined", "2026-08-31", "--on", "2026-11-25", "--interval", "9000y"}),
                      {"--interval", "9000y", "9999"}) == "");
}

// Worked by hand: pi / 4 x (584^2 - 450^2) mm2 x 2600 mm x 2500 kg/m3 = 707.34 kg.
TEST_CASE("weigh prints the computed, the stated and the greater of the two")
{
    const Ran ran = call(words(weigh + "--stated 690"));
    CHECK(ran.code == 0);
    CHECK(keys(ran.json()) == Keys{"computed_kg", "stated_kg", "used_kg", "warning"});
    const double by_hand = std::numbers::pi / 4 * (584.0 * 584 - 450.0 * 450) * 2600 * 2500e-9;
    CHECK(ran.json()["computed_kg"].get<double>() == doctest::Approx(by_hand).epsilon(1e-12));
    CHECK(ran.json()["stated_kg"] == 690);
    CHECK(ran.json()["used_kg"] == ran.json()["computed_kg"]);
    CHECK(ran.json()["warning"].is_null());
}

TEST_CASE("weigh warns of a stated mass under 85 % of the computed one before the allowance")
{
    CHECK(call(words(weigh + "--stated 601.3")).json()["warning"].is_null()); // 85 % is 601.24
    CHECK(call(words(weigh + "--stated 601.2")).json()["warning"].is_string());
    CHECK(call(words(weigh + "--stated 601.3 --allowance 10")).json()["warning"].is_null());
    const Json none = call(words(weigh)).json();
    CHECK(none["stated_kg"].is_null());
    CHECK(none["warning"].is_null());
}

TEST_CASE("weigh takes both socket options or neither, and adds the allowance")
{
    CHECK(not_refused(call(words(weigh + "--socket-outside 720")),
                      {"--socket-outside", "--socket-length", "both or neither"}) == "");
    const double bare = call(words(weigh)).json()["computed_kg"].get<double>();
    CHECK(call(words(weigh + "--allowance 5")).json()["computed_kg"].get<double>() == doctest::Approx(bare * 1.05));
    CHECK(call(words(weigh + "--socket-outside 720 --socket-length 100")).json()["computed_kg"].get<double>() > bare);
}

// Source: EN 818-4, table of working load limits, grade 8, factor 1.4 and 1.0 of 3150 kg for 10 mm.
TEST_CASE("sling prints the limit, the angle, the tension in two legs and whether it holds")
{
    const Ran ran = call(words("sling --chain 10 --legs 2 --angle 40 --load 1500 --symmetric --json"));
    CHECK(ran.code == 0);
    CHECK(keys(ran.json()) == Keys{"angle_deg", "ok", "two_leg_tension_kg", "wll_kg"});
    CHECK(ran.json()["wll_kg"] == 4250);
    CHECK(ran.json()["two_leg_tension_kg"].get<double>() ==
          doctest::Approx(750 / std::cos(40 * std::numbers::pi / 180)));
    const Json none = call(words("sling --chain 10 --legs 2 --angle 46 --json")).json();
    CHECK(none["wll_kg"] == 3150);
    CHECK(none["two_leg_tension_kg"].is_null());
    CHECK(none["ok"].is_null());
}

TEST_CASE("sling halves the limit from 80 % of it where symmetry is not confirmed")
{
    CHECK(call(words("sling --chain 10 --legs 2 --angle 40 --load 3399 --json")).json()["wll_kg"] == 4250);
    const Ran half = call(words("sling --chain 10 --legs 2 --angle 40 --load 3400 --json"));
    CHECK(half.json()["wll_kg"] == 2125);
    CHECK(half.code == 1);
    CHECK(half.json()["ok"] == false);
}

TEST_CASE("sling takes a spread and a leg length for the angle")
{
    const Json two = call(words("sling --chain 10 --legs 2 --spread 1000 --leg-length 1000 --json")).json();
    CHECK(two["angle_deg"].get<double>() == doctest::Approx(30));
    const Json four = call(words("sling --chain 10 --legs 4 --spread 600x800 --leg-length 1000 --json")).json();
    CHECK(four["angle_deg"].get<double>() == doctest::Approx(30));
}

TEST_CASE("sling refuses over 60 degrees, one leg off vertical, and sizes, legs and spreads that are not")
{
    CHECK(call(words("sling --chain 10 --legs 2 --angle 60 --json")).code == 0);
    CHECK(not_refused(call(words("sling --chain 10 --legs 2 --angle 60.1")), {"--angle", "60.1", "up to 60"}) == "");
    CHECK(not_refused(call(words("sling --chain 10 --legs 1 --angle 1")), {"--angle", "0 is accepted"}) == "");
    CHECK(not_refused(call(words("sling --chain 11 --legs 2 --angle 10")), {"--chain", "11", "6, 7, 8, 10, 13"}) == "");
    CHECK(not_refused(call(words("sling --chain 10 --legs 5 --angle 10")), {"--legs", "5", "from 1 to 4"}) == "");
    CHECK(not_refused(call(words("sling --chain 10 --legs 2 --angle 10 --spread 100 --leg-length 100")),
                      {"--angle", "--spread"}) == "");
    CHECK(not_refused(call(words("sling --chain 10 --legs 4 --spread 100 --leg-length 100")),
                      {"--spread", "100", "MMxMM"}) == "");
    CHECK(not_refused(call(words("sling --chain 10 --legs 2 --spread 300 --leg-length 100")),
                      {"--leg-length", "100"}) == "");
}

TEST_CASE("reach prints what the chart allows, and null off it")
{
    const ChartFile chart;
    const Ran on = chart.reach("--over front --radius 4.5 --height 0 --load 3000");
    CHECK(on.code == 0);
    CHECK(on.json() == Json{{"on_chart", true}, {"rated_kg", 3000}, {"interpolated_kg", 3500}, {"ok", true}});
    CHECK(chart.reach("--over front --radius 4.5 --height 0 --load 3001").code == 1);
    CHECK(chart.reach("--over front --radius 4.5 --height 0").json()["ok"].is_null());
    const Ran off = chart.reach("--over front --radius 6 --height 0");
    CHECK(off.code == 1);
    CHECK(off.json() == Json{{"on_chart", false}, {"rated_kg", nullptr}, {"interpolated_kg", nullptr}, {"ok", false}});
}

TEST_CASE("reach takes a blank for not permitted, and over the side by itself")
{
    const ChartFile chart;
    CHECK(chart.reach("--over front --radius 4.5 --height 1").code == 1);
    CHECK(chart.reach("--over side --radius 4 --height 0").json()["rated_kg"] == 2000);
    CHECK(not_refused(chart.reach("--over back --radius 4 --height 0"), {"--over", "back", "front or side"}) == "");
}

TEST_CASE("reach refuses what no record may say")
{
    const ChartFile chart;
    CHECK(not_refused(chart.reach("--over front --radius 999999999999999999 --height 0"), {"--radius", "1000"}) == "");
    CHECK(not_refused(chart.reach("--over front --radius 4 --height -1000.1"), {"--height", "1000"}) == "");
    CHECK(not_refused(chart.reach("--over front --radius -1 --height 0"), {"--radius", "at least 0"}) == "");
    write_bytes(chart.path, "over,height_m,radius_m,rated_kg\nfront,0,3,10000001\n");
    CHECK(not_refused(chart.reach("--over front --radius 3 --height 0"), {"rated_kg", "10000001", "10000000"}) == "");
    write_bytes(chart.path, "over,height_m,radius_m,rated_kg\nfront,0,3,10000000\n");
    CHECK(chart.reach("--over front --radius 3 --height 0").json()["rated_kg"] == 10'000'000);
}

TEST_CASE("reach names the line and the column of a chart file that is not one")
{
    const ChartFile chart;
    const std::string head = "over,height_m,radius_m,rated_kg\n";
    for (const auto& row : {std::pair<std::string, const char*>{"", "chart file"},
                            {"a,b\n", "line 1"},
                            {head, "no grid point"},
                            {head + "front,0,4\n", "line 2"},
                            {head + "front,0,4,nan\n", "line 2 rated_kg"},
                            {head + "front,0,4,1e3\n", "line 2 rated_kg"},
                            {head + "front,0,4,-5\n", "line 2 rated_kg"},
                            {head + "front,0,4,5\nback,0,4,5\n", "line 3 over"},
                            {head + "front,0,0x4,5\n", "line 2 radius_m"},
                            {head + "front,0,4,5,6\n", "line 2"}}) {
        write_bytes(chart.path, row.first);
        CAPTURE(row.first);
        CHECK(not_refused(chart.reach("--over front --radius 4 --height 0"),
                          {chart.path.string(), row.second, "accepted"}) == "");
    }
    fs::remove(chart.path);
    CHECK(not_refused(chart.reach("--over front --radius 4 --height 0"), {chart.path.string(), "cannot be read"}) ==
          "");
}

TEST_CASE("thread prints the way, the tilt and the gap that would be needed")
{
    const Ran level = call(words(thread_2600 + "--gap 3000"));
    CHECK(level.code == 0);
    CHECK(level.json() == Json{{"fits", true}, {"way", "level"}, {"tilt_deg", 0.0}, {"gap_needed_mm", nullptr}});
    const Ran none = call(words(thread_2600 + "--gap 1000"));
    CHECK(none.code == 1);
    CHECK(none.json()["fits"] == false);
    CHECK(none.json()["way"] == "none");
    CHECK(none.json()["tilt_deg"].is_null());
    const double needed = none.json()["gap_needed_mm"].get<double>();
    CHECK(needed > 1000);
    CHECK(call(words(thread_2600 + "--gap " + std::to_string(needed + 0.001))).code == 0);
    CHECK(not_refused(call(words("thread --length 2600 --outside 720 --gap 3000 --max-tilt 91")),
                      {"--max-tilt", "91", "0 to 90"}) == "");
}

TEST_CASE("a thread that decides no lift says so to a person")
{
    CHECK(
        contains(call(words("thread --length 2600 --outside 720 --gap 3000 --max-tilt 20")).out, "it decides no lift"));
}

TEST_CASE("only decimal digits with a sign and a point are a number")
{
    for (const char* number :
         {"nan",   "inf",      "-inf", "0x10", "1e3", "1E3", "1,5",   " 5",    "5 ",
          "1.2.3", "--5",      ".",    "-",    "+",   "5mm", "1_000", "1'000", "123456789012345678901",
          "NaN",   "Infinity", "٣"}) {
        CAPTURE(std::string{number});
        CHECK(not_refused(call({"weigh", "--wall", "67", "--length", "2600", std::string{"--bore="} + number}),
                          {"--bore", number, "decimal digits"}) == "");
        CHECK(not_refused(call({"thread", "--length", "1", "--outside", "1", "--max-tilt", "1",
                                std::string{"--gap="} + number}),
                          {"--gap", number, "decimal digits"}) == "");
    }
    for (const char* number : {"+450", "450.0", "0450", "450."})
        CHECK(call({"weigh", "--wall", "67", "--length", "2600", std::string{"--bore="} + number}).code == 0);
    for (const char* number : {"0", "-1", "-0"})
        CHECK(not_refused(call({"weigh", "--wall", "67", "--length", "2600", std::string{"--bore="} + number}),
                          {"--bore", number, "over 0"}) == "");
}

TEST_CASE("an empty number is refused like any other that is none")
{
    for (const char* option : {"--bore=", "--stated=", "--allowance="}) {
        CAPTURE(std::string{option});
        CHECK(call({"weigh", "--bore", "1", "--wall", "67", "--length", "2600", option}).code == 2);
    }
}

TEST_SUITE_END();
