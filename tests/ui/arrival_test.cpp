// A unit that comes, calls to the yard, a defect cleared, a pipe by tape, photos: on screen.

#include "files.hpp"
#include "own_book.hpp"
#include "picture.hpp"
#include "rig.hpp"
#include "signing.hpp"
#include "written.hpp"

#include "arrival.hpp"
#include "calls.hpp"
#include "outlook.hpp"

#include <doctest/doctest.h>

#include <fstream>

using namespace cotter;
using records::Json;
using tests::Rig;
using tests::SampleBook;

namespace {

// A picture of so many pixels, all of one grey.
std::string jpeg(int width, int height)
{
    ui::Picture picture{width, height, {}};
    picture.rgba.assign(static_cast<std::size_t>(width * height) * 4, 128);
    return ui::to_jpeg(picture);
}

records::Entry newest(SampleBook& sample, const std::string& kind)
{
    const auto found = sample.store().newest(kind, 1);
    REQUIRE(found.size() == 1);
    return found.front().entry;
}

// Digits of its serial, which the plate shows.
std::string digits_of(const SampleBook& sample, const std::string& unit)
{
    std::string digits;
    for (const char c : desk::doc(const_cast<SampleBook&>(sample).store(), "unit", unit).value("serial", ""))
        if ('0' <= c && c <= '9')
            digits += c;
    return digits;
}

void press_digits(Rig& rig, const std::string& digits)
{
    for (const char c : digits)
        rig.tap(std::string(1, c));
}

// The sample's attachment that stands elsewhere.
std::string elsewhere(SampleBook& sample)
{
    for (const std::string& unit : desk::units_to_receive(sample.store(), desk::current_site(sample.store())))
        if (desk::doc(sample.store(), "unit", unit).value("role", "") == "attachment")
            return unit;
    return "";
}

void begin_receiving(Rig& rig, SampleBook& sample, const std::string& unit)
{
    rig.tap("Record");
    rig.tap("A unit has come");
    rig.tap("O. Hallam (invented)");
    for (int pages = 0; !rig.target(desk::label_of(sample.store(), unit)) && pages < 8; ++pages)
        rig.tap("More");
    rig.tap(desk::label_of(sample.store(), unit));
}

void answer_parts(Rig& rig, const char* answer)
{
    while (rig.target("It is here"))
        rig.tap(answer);
}

} // namespace

TEST_CASE("a unit is taken in whole once its serial, its parts and its report are seen")
{
    SampleBook sample;
    const std::string unit = elsewhere(sample);
    REQUIRE(unit != "");
    const bool was_sent = desk::was_sent_here(sample.store(), unit, desk::current_site(sample.store()));
    Rig rig{sample.store(), ui::Door::site};
    begin_receiving(rig, sample, unit);
    CHECK_FALSE(rig.shows(desk::doc(sample.store(), "unit", unit).value("serial", "?"))); // looked at first
    press_digits(rig, digits_of(sample, unit));
    rig.tap("Go on");
    answer_parts(rig, "It is here");
    rig.tap("Yes, seen");
    rig.tap("Without");
    rig.tap("Whole");
    const auto record = newest(sample, "received");
    CHECK(record.about == unit);
    CHECK(record.body["condition"] == "whole");
    CHECK(record.body["serial_seen"] == true);
    CHECK(record.body["without_dispatch"] == !was_sent);
    CHECK(desk::doc(sample.store(), "whereabouts", unit).value("at_site", "") == record.body["site"]);
}

TEST_CASE("another serial on the plate is no whole unit, and the right one is not shown")
{
    SampleBook sample;
    const std::string unit = elsewhere(sample);
    Rig rig{sample.store(), ui::Door::site};
    begin_receiving(rig, sample, unit);
    press_digits(rig, "999999");
    rig.tap("Go on");
    CHECK_FALSE(rig.shows(desk::doc(sample.store(), "unit", unit).value("serial", "?")));
    rig.tap("It says so");
    answer_parts(rig, "It is here");
    rig.tap("No");
    CHECK_FALSE(rig.target("Whole"));
    CHECK_FALSE(rig.target("In part"));
    rig.tap("Not to be used");
    rig.tap("wrong unit, not what was ordered");
    rig.tap("Call for a swap");
    CHECK(newest(sample, "received").body["condition"] == "not_to_be_used");
    const auto calls = desk::calls(sample.store());
    REQUIRE(calls.size() == 1);
    CHECK(calls[0].unit == unit);
    CHECK(calls[0].kind == "swap");
    CHECK_FALSE(calls[0].answer);
    bool is_stopped = false;
    for (const auto& stop : sample.store().facts_about("stop", unit))
        is_stopped = is_stopped || stop.open;
    CHECK(is_stopped);
}

TEST_CASE("a refused unit is not here")
{
    SampleBook sample;
    const std::string unit = elsewhere(sample);
    Rig rig{sample.store(), ui::Door::site};
    begin_receiving(rig, sample, unit);
    rig.tap("Cannot be read");
    answer_parts(rig, "Missing");
    rig.tap("No");
    rig.tap("Refused");
    rig.tap("no report and no copy with it");
    rig.tap("No");
    const std::string site = desk::current_site(sample.store());
    CHECK(desk::doc(sample.store(), "whereabouts", unit).value("at_site", "") == "refused at " + site);
    CHECK(newest(sample, "received").body["why"] == "no report and no copy with it");
}

TEST_CASE("the gateman takes a unit in from the Cab, without a keyboard")
{
    SampleBook sample;
    const std::string unit = elsewhere(sample);
    Rig rig{sample.store(), ui::Door::cab};
    rig.tap("A unit has come");
    rig.tap("O. Hallam (invented)");
    for (int pages = 0; !rig.target(desk::label_of(sample.store(), unit)) && pages < 8; ++pages)
        rig.tap("More");
    rig.tap(desk::label_of(sample.store(), unit));
    rig.tap("Cannot be read");
    answer_parts(rig, "It is here");
    rig.tap("No");
    rig.tap("Not to be used");
    CHECK_FALSE(rig.target("Other words"));
    rig.tap("plate cannot be read");
    rig.tap("No");
    rig.tap("Understood");
    CHECK(newest(sample, "received").about == unit);
    CHECK(rig.shows("Who is on the levers?"));
}

TEST_CASE("the photo of a report that is seen at the gate is its copy here")
{
    SampleBook sample;
    const std::string unit = "st-11"; // with a report and no copy here
    desk::Hand sefton;
    sefton.by = "sefton";
    sefton.at = *desk::parse_instant("2026-11-25T07:50:00Z");
    sefton.day = *rules::parse_day("2026-11-25");
    desk::write(sample.store(),
                {desk::entry(sefton, "dispatched", unit, {{"purpose", "repair"}, {"to", "thorl-yard"}})});
    const db::Files files{sample.path()};
    Rig rig{sample.store(), ui::Door::site};
    rig.photos.found = [] { return std::vector<std::string>{"/stick/report.jpg"}; };
    rig.photos.bytes = [](const std::string&) { return std::optional{jpeg(2600, 400)}; };
    rig.photos.keep = [&](const std::string& bytes) { return files.keep_bytes(bytes); };
    begin_receiving(rig, sample, unit);
    press_digits(rig, digits_of(sample, unit));
    rig.tap("Go on");
    answer_parts(rig, "It is here");
    rig.tap("Yes, seen");
    rig.tap("report.jpg");
    rig.tap("Take it");
    CHECK(rig.shows("Is it the report of the examination on"));
    rig.tap("Yes, that day");
    rig.tap(rig.target("Whole") ? "Whole" : "In part");
    const std::string name = newest(sample, "received").body["photos"][0];
    const auto kept = files.read(name);
    REQUIRE(kept);
    CHECK(ui::decode(*kept)->width <= 2048);
    for (const auto& row : desk::board(sample.store(), rig.now, *rules::parse_day("2026-11-25")))
        if (row.unit == unit)
            CHECK(row.evidence_here);
    const auto names = desk::pages_of(sample.store());
    CHECK(std::count(names.begin(), names.end(), name) >= 1);
}

TEST_CASE("a call is answered in the Yard, and is open no more")
{
    SampleBook sample;
    {
        Rig rig{sample.store(), ui::Door::site};
        rig.tap("Record");
        rig.tap("Units come and go");
        rig.tap("Call the yard");
        rig.tap("CL-02");
        rig.tap("Breakdown");
        rig.tap("hydraulics leak or do not move");
        rig.tap("O. Hallam (invented)");
        rig.tap("Understood");
    }
    Rig rig{sample.store(), ui::Door::yard};
    rig.tap("Calls");
    CHECK(rig.shows("CL-02 has broken down"));
    rig.tap("Answer");
    rig.tap(rig.seen().empty() ? "" : [&] {
        for (const auto& each : rig.seen())
            if (each.target && each.text != "Back" && each.text != "More")
                return each.text;
        return std::string{};
    }());
    rig.tap("a fitter comes today");
    CHECK(rig.shows("Answer: a fitter comes today"));
    CHECK_FALSE(rig.target("Answer"));
    CHECK(desk::calls(sample.store()).front().answer == "a fitter comes today");
}

TEST_CASE("a defect is cleared with what was done and a photo, by another than who found it")
{
    SampleBook sample;
    const auto before = desk::open_defects(sample.store(), *rules::parse_day("2026-11-25"));
    REQUIRE(!before.empty());
    Rig rig{sample.store(), ui::Door::site};
    rig.photos.found = [] { return std::vector<std::string>{"/stick/p.jpg", "/stick/no.jpg"}; };
    rig.photos.bytes = [](const std::string& path) {
        return path == "/stick/p.jpg" ? std::optional{jpeg(80, 60)} : std::optional<std::string>{"no picture"};
    };
    rig.photos.keep = [](const std::string& bytes) { return records::sha256(bytes); };
    rig.tap("Ahead");
    rig.tap("Clear"); // of a report
    CHECK_FALSE(rig.target("O. Hallam (invented)"));
    rig.tap("M. Varley (invented)");
    rig.tap("part renewed, like for like");
    rig.tap("no.jpg");
    CHECK(rig.shows("no.jpg is no picture that can be read"));
    rig.tap("p.jpg");
    rig.tap("Take it");
    const auto record = newest(sample, "defect_cleared");
    CHECK(record.body["photos"][0] == records::sha256(jpeg(80, 60)));
    CHECK(record.body["remedy"] == "part renewed, like for like");
    CHECK(desk::open_defects(sample.store(), *rules::parse_day("2026-11-25")).size() == before.size() - 1);
}

TEST_CASE("a knock is reported with a photo, and without one it is not lost")
{
    for (const bool with : {true, false}) {
        SampleBook sample;
        Rig rig{sample.store(), ui::Door::cab};
        rig.photos.found = [] { return std::vector<std::string>{"/stick/p.jpg"}; };
        rig.photos.bytes = [](const std::string&) { return std::optional{jpeg(80, 60)}; };
        rig.photos.keep = [](const std::string& bytes) { return records::sha256(bytes); };
        for (const std::string& next :
             {std::string{"I. Farrow (invented)"}, std::string{"EX-21"}, std::string{"Mark B"},
              sample.store().fact("pipe", "sk-600")->doc.value("name", ""), std::string{"hole 2"},
              std::string{"Report"}, std::string{"Knock"}})
            rig.tap(next);
        rig.tap("CL-02");
        rig.tap("struck a pipe or the stack");
        rig.tap(with ? "p.jpg" : "Without");
        if (with)
            rig.tap("Take it");
        const auto record = newest(sample, "event");
        CHECK(record.body["kind"] == "knock");
        CHECK(record.body.contains("photos") == with);
    }
}

namespace {

void read_tape(Rig& rig, const std::vector<std::string>& readings)
{
    for (const std::string& each : readings) {
        if (each == "None") {
            rig.tap("None");
            continue;
        }
        press_digits(rig, each);
        rig.tap("Next");
    }
}

void begin_tape(Rig& rig)
{
    rig.tap("Record");
    rig.tap("Papers and data");
    rig.tap("A pipe by tape");
    rig.tap("O. Hallam (invented)");
    rig.type("Found in the yard (invented)");
    rig.frame();
    rig.tap("Go on");
}

} // namespace

TEST_CASE("a pipe read with a tape is proved by a second reading of another person")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    begin_tape(rig);
    read_tape(rig, {"1822", "2199", "450", "65", "2500", "110"}); // 1822 over pi is 580
    CHECK(rig.shows("Barrel \u00d8 580 mm"));
    rig.tap("Sign it");
    const auto pipe = newest(sample, "pipe");
    CHECK(pipe.body["barrel_mm"] == 580);
    CHECK(pipe.body["socket_mm"] == 700);
    CHECK(pipe.body["tape"]["barrel_round_mm"] == 1822);
    rig.tap("B. Oakes (invented)");
    read_tape(rig, {"1830", "2205", "452", "64", "2503", "112"});
    CHECK(rig.shows("is read by two, and counts"));
    CHECK(sample.store().fact("pipe", pipe.about)->doc["compared"].size() == 1);
}

TEST_CASE("two readings that differ prove nothing, and one that cannot be is not signed")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::site};
    begin_tape(rig);
    read_tape(rig, {"1700", "None", "450", "65", "2500", "None"}); // 541: no barrel of 450 and twice 65
    CHECK(rig.shows("Bore and two walls make 580 mm, round about makes 541 mm"));
    CHECK_FALSE(rig.target("Sign it"));
    rig.tap("Measure again");
    read_tape(rig, {"1822", "None", "450", "65", "2500", "None"});
    rig.tap("Sign it");
    rig.tap("B. Oakes (invented)");
    read_tape(rig, {"1822", "None", "450", "65", "2540", "None"});
    CHECK(rig.shows("The two readings differ: Overall length"));
    CHECK(sample.store().fact("pipe", newest(sample, "pipe").about)->doc["compared"].empty());
}
