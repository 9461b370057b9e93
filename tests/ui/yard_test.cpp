// Yard: orders with the units that would do, the coming weeks; and a unit found by its tag from anywhere.

#include "orders.hpp"
#include "rig.hpp"
#include "written.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace cotter;
using records::Json;
using tests::Rig;
using tests::SampleBook;

namespace {

void write(SampleBook& sample, const std::string& kind, const std::string& about, const Json& body)
{
    desk::Hand hand;
    hand.by = "quill";
    hand.at = *desk::parse_instant("2026-11-25T07:30:00Z");
    hand.day = rules::utc_day(hand.at);
    desk::write(sample.store(), {desk::entry(hand, kind, about, body)});
}

Json order(const std::vector<std::string>& pipes)
{
    return {{"customer", "Ridgeway Drainage (invented)"},
            {"site", "wendle-carr"},
            {"pipes", pipes},
            {"hitch", "SB-2"},
            {"first_use_day", "2026-11-26"},
            {"end_day", "2027-01-15"}};
}

const desk::OrderUnit& unit(const std::vector<desk::OrderUnit>& units, const std::string& id)
{
    return *std::find_if(units.begin(), units.end(), [&](const auto& each) { return each.unit == id; });
}

bool stops_with(const desk::OrderUnit& unit, rules::Code code)
{
    return std::any_of(unit.stops.begin(), unit.stops.end(), [&](const auto& each) { return each.code == code; });
}

rules::Instant now() { return *desk::parse_instant("2026-11-25T08:00:00Z"); }

} // namespace

TEST_CASE("an order asks each attachment: examination, evidence, setting; the least to do comes first")
{
    SampleBook sample;
    write(sample, "order", "ord-1", order({"sk-450"}));
    const auto all = desk::orders(sample.store());
    REQUIRE(all.size() == 2);
    CHECK(all[0].id == "ord-1"); // the 26th before the 27th
    const auto units = desk::units_for(sample.store(), all[0], now(), rules::utc_day(now()));
    REQUIRE(units.size() >= 3);
    CHECK(std::is_sorted(units.begin(), units.end(),
                         [](const auto& a, const auto& b) { return a.still_to_do() < b.still_to_do(); }));
    CHECK(!unit(units, "cl-02").headplate);
    CHECK(unit(units, "pl-03").headplate); // SB-1, the order's hitch takes SB-2
    CHECK(stops_with(unit(units, "cl-05"), rules::Code::exam_out_of_date));
    CHECK_FALSE(stops_with(unit(units, "cl-02"), rules::Code::exam_out_of_date));
}

TEST_CASE("sizes that need two settings of a model are said before the wagon leaves")
{
    SampleBook sample;
    write(sample, "order", "ord-1", order({"sk-450", "sk-600"}));
    const auto first = desk::orders(sample.store()).front();
    const auto needs = desk::needs_of(sample.store(), first, "clasper-90");
    REQUIRE(needs.size() == 2);
    CHECK(desk::needs_two_states(needs)); // 584 is hole 2, 760 hole 4
    CHECK_FALSE(
        desk::needs_two_states(desk::needs_of(sample.store(), {"", "", "", "", {"sk-450"}, {}, {}, {}}, "clasper-90")));
    Rig rig{sample.store(), ui::Door::yard};
    rig.tap("Orders");
    CHECK(rig.shows("ord-1"));
    rig.tap("Units");
    CHECK(rig.shows("these sizes need two settings"));
    rig.tap("Back");
    rig.tap("Weeks");
    CHECK(rig.shows("Wanted by orders, of those in date"));
    CHECK(rig.shows("Mon 23 Nov"));
    CHECK(rig.shows("All of them"));
    CHECK(rig.shows("Clasper 90"));
    rig.tap("Back");
    rig.tap("Back");
    CHECK(rig.shows("Units, papers, settings"));
}

TEST_CASE("a week is short when orders want more attachments than are in date to its end")
{
    SampleBook sample;
    const auto today = rules::utc_day(now());
    auto weeks = desk::weeks_ahead(sample.store(), desk::board(sample.store(), now(), today), today, 13);
    REQUIRE(weeks.size() == 13);
    CHECK(rules::to_string(weeks[0].monday) == "2026-11-23");
    CHECK(
        std::is_sorted(weeks.begin(), weeks.end(), [](const auto& a, const auto& b) { return a.in_date > b.in_date; }));
    CHECK_FALSE(weeks[1].is_short());
    for (int i = 0; i <= weeks[1].in_date; ++i)
        write(sample, "order", "many-" + std::to_string(i), order({"sk-450"}));
    weeks = desk::weeks_ahead(sample.store(), desk::board(sample.store(), now(), today), today, 13);
    CHECK(weeks[1].is_short());
    CHECK(weeks[8].wanted == 1); // they end on 15 January; only the sample's own order goes on
}

TEST_CASE("sizes that no one model serves want two; an order that is over stands last and says so")
{
    SampleBook sample;
    write(sample, "order", "ord-0", order({"sk-450", "sk-1200"}));
    Json old = order({"sk-450"});
    old["first_use_day"] = "2026-09-01";
    old["end_day"] = "2026-10-01";
    write(sample, "order", "ord-old", old);
    Rig rig{sample.store(), ui::Door::yard};
    rig.tap("Orders");
    CHECK(rig.shows("ord-old: "));
    CHECK(rig.shows("is over"));
    rig.tap("Units");
    CHECK(rig.shows("No model here serves all of these sizes"));
    CHECK_FALSE(rig.shows("these sizes need two settings"));
}

TEST_CASE("a unit with a caution is drawn with it, and does not do as it stands")
{
    SampleBook sample;
    const auto order = desk::orders(sample.store()).front();
    const auto units = desk::units_for(sample.store(), order, now(), rules::utc_day(now()));
    Rig rig{sample.store(), ui::Door::yard};
    rig.tap("Orders");
    rig.tap("Units");
    std::size_t drawn = 0;
    for (const auto& each : units)
        if (!each.cautions.empty() && drawn++ == 0) {
            for (int i = 0; i < 9 && !rig.shows(each.label + " \u00b7"); ++i)
                rig.key(ImGuiKey_PageDown);
            const auto& seen = rig.seen();
            float y = 0;
            for (const auto& text : seen)
                if (!text.target && text.text.starts_with(each.label + " \u00b7"))
                    y = text.y;
            const ui::Seen* nearest = nullptr;
            for (const auto& text : seen)
                if (text.target && text.text == "Draw" && (!nearest || std::abs(text.y - y) < std::abs(nearest->y - y)))
                    nearest = &text;
            REQUIRE(nearest);
            rig.tap_at(*nearest);
            CHECK_FALSE(rig.shows("Would do as it stands"));
        }
    CHECK(drawn > 0);
}

TEST_CASE("by touch a unit is found by the digits of its tag; on a pad digits are a number")
{
    SampleBook sample;
    Rig rig{sample.store(), ui::Door::yard};
    rig.tap("Find");
    for (const char* each : {"0", "5", "Find"})
        rig.tap(each);
    CHECK(rig.shows("CL-05"));
    CHECK_FALSE(rig.shows("CL-02"));
    rig.tap("Back");
    rig.tap("Find");
    rig.type("02");
    rig.key(ImGuiKey_Enter);
    CHECK(rig.shows("CL-02"));
}

TEST_CASE("a tag that is typed or scanned opens its unit from anywhere, but while a load hangs")
{
    SampleBook sample;
    for (const ui::Door door : {ui::Door::none, ui::Door::cab, ui::Door::site, ui::Door::yard}) {
        Rig rig{sample.store(), door};
        rig.type("cl 05");
        rig.key(ImGuiKey_Enter);
        CHECK(rig.shows("Tag cl05"));
        CHECK(rig.shows("CL-05"));
        CHECK(rig.shows("Examination out of date"));
        rig.tap("Back");
        CHECK_FALSE(rig.shows("Tag cl05"));
        rig.type("123");
        rig.key(ImGuiKey_Enter);
        CHECK(rig.shows("No tag in this book has 123"));
        rig.tap("Back");
        rig.type("XY-9");
        rig.key(ImGuiKey_Enter);
        CHECK(rig.shows("No tag in this book begins with XY-9"));
    }
}
