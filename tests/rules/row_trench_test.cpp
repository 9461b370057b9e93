#include "good_question.hpp"

#include <doctest/doctest.h>

namespace cotter::rules {

namespace {

const std::string unchecked = "trench-unchecked(place) ";

Question inspected(std::vector<Inspection> list)
{
    Question q = good_lift();
    q.trench->inspections = std::move(list);
    return q;
}

} // namespace

TEST_CASE("a trench that somebody enters is inspected this shift by a competent person who says safe")
{
    CHECK(is_silent(inspected({Inspection{minute(-60), true, true}})));
    for (const Inspection& each : {Inspection{minute(-61), true, true}, Inspection{std::nullopt, true, true},
                                   Inspection{minute(0), false, true}, Inspection{minute(0), std::nullopt, true},
                                   Inspection{minute(0), true, false}, Inspection{minute(0), true, std::nullopt}})
        CHECK(codes(inspected({each})) == unchecked);
    CHECK(codes(inspected({})) == unchecked);
}

TEST_CASE("nobody enters and no trench are recorded values")
{
    Question q = inspected({});
    q.trench->someone_enters = false;
    CHECK(is_silent(q));
    q.trench->someone_enters.reset();
    CHECK(codes(q) == unchecked);
    q.trench->none = true;
    CHECK(is_silent(q));
}

TEST_CASE("a trench about which nothing is recorded is not inspected")
{
    Question q = good_lift();
    q.trench.reset();
    CHECK(codes(q) == unchecked);
}

TEST_CASE("an inspection in the second of a fall counts and one before it does not")
{
    Question q = good_lift();
    q.trench->disturbed_at = {minute(-30)};
    CHECK(is_silent(q));
    q.trench->disturbed_at = {minute(-30) + Instant{1}};
    CHECK(codes(q) == unchecked);
}

TEST_CASE("a fall at an unknown time is after every inspection")
{
    Question q = good_lift();
    q.trench->disturbed_at = {std::nullopt};
    CHECK(codes(q) == unchecked);
}

TEST_CASE("the newest inspection counts by whomever")
{
    const Inspection good{minute(0), true, true};
    CHECK(codes(inspected({good, Inspection{minute(1), false, true}})) == unchecked);
    CHECK(is_silent(inspected({good, Inspection{minute(-1), true, false}})));
}

TEST_CASE("of two inspections of one instant the safer counts in any order")
{
    const Inspection good{minute(0), true, true}, bad{minute(0), true, false};
    CHECK(codes(inspected({good, bad})) == unchecked);
    CHECK(codes(inspected({bad, good})) == unchecked);
}

} // namespace cotter::rules
