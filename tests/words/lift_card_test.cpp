#include "lift_card.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace cotter;
using rules::CardFacts;
using rules::HoldPoint;

namespace {

CardFacts facts()
{
    CardFacts f;
    f.pipe = "DN 450";
    f.setting = "hole 2";
    f.tilt_limit = 12;
    f.place = "B";
    f.zone_mm = 8500;
    return f;
}

bool asks(const CardFacts& f, std::size_t point, const std::string& text)
{
    const auto lines = words::lift_card(f).at(point).lines;
    return std::any_of(lines.begin(), lines.end(),
                       [&](const auto& line) { return line.ask.find(text) != std::string::npos; });
}

} // namespace

TEST_CASE("four hold points, and every line says what to do when it is not so")
{
    const auto card = words::lift_card(facts());
    REQUIRE(card.size() == 4);
    for (const auto& point : card) {
        CHECK_FALSE(point.lines.empty());
        for (const auto& line : point.lines) {
            CHECK_FALSE(line.ask.empty());
            CHECK_FALSE(line.if_not.empty());
        }
    }
    CHECK(card[0].by_touch);
    for (std::size_t i = 1; i < 4; ++i)
        CHECK_FALSE(card[i].by_touch); // the load is up: nobody lets go of a lever
}

TEST_CASE("a step is asked only where the model has it")
{
    CardFacts f = facts();
    CHECK_FALSE(asks(f, 1, "Tilted"));
    CHECK_FALSE(asks(f, 2, "to go in"));
    f.test_tilt = 3;
    f.entry_tilt = 5;
    CHECK(asks(f, 1, "Tilted to 3\u00b0 and back"));
    CHECK(asks(f, 2, "Tilted to 5\u00b0 to go in"));
    CHECK_FALSE(asks(f, 0, "dry"));
    f.faces_dry = true;
    CHECK(asks(f, 0, "clean and dry"));
    CHECK(asks(f, 3, "not pushed home")); // unknown: no
    f.may_push = true;
    CHECK(asks(f, 3, "Pushed home only as its maker says"));
}

TEST_CASE("the plan's own entries are asked: zone, wind, light, what is near, who waits where")
{
    CardFacts f = facts();
    f.wind_limit_mm_s = 9800;
    f.light = "floodlight at the stack";
    f.near.push_back({"water main", "its owner's", 1000});
    f.waits_at = "the ladder";
    f.route = "from the west stack";
    for (const char* text : {"8.5 m", "9.8 m/s", "floodlight", "water main: keep 1.0 m (its owner's)"})
        CHECK(asks(f, 0, text));
    CHECK(asks(f, 2, "stands at the ladder"));
    CHECK(asks(f, 2, "from the west stack"));
    CHECK(asks(f, 2, "mark B"));
    f.someone_enters = false;
    CHECK(asks(f, 2, "Nobody in the trench"));
    f.has_trench = false;
    CHECK_FALSE(asks(f, 2, "mark B"));
    CHECK(asks(f, 2, "nobody beneath"));
}

TEST_CASE("a later lift of the type has the short card: pipe, faces and the maker's own steps are still asked")
{
    CardFacts f = facts();
    f.own.push_back({HoldPoint::before_grip, "Jaws square", "Again."});
    CHECK(asks(f, 0, "Jaws square"));
    CHECK(asks(f, 0, "hole 2"));
    const std::size_t whole = words::lift_card(f)[0].lines.size();
    f.first_of_type = false;
    CHECK(words::lift_card(f)[0].lines.size() < whole);
    CHECK_FALSE(asks(f, 0, "hole 2"));
    for (const char* text : {"Maker and size read on the pipe: DN 450", "clean", "Nobody within", "Jaws square"})
        CHECK(asks(f, 0, text));
}
