#include "good_question.hpp"

#include <doctest/doctest.h>

namespace cotter::rules {

namespace {

const std::string unconfirmed = "place-unconfirmed(place) ";

Confirmation by(const Id& person, int at) { return {minute(at), person, true, true, true, true}; }

Question confirmed(std::vector<Confirmation> list)
{
    Question q = good_lift();
    q.place->confirmed = std::move(list);
    return q;
}

} // namespace

TEST_CASE("the supervisor confirms the standing place this shift")
{
    CHECK(codes(confirmed({})) == unconfirmed);
    CHECK(is_silent(confirmed({by("sam", -60)})));
    CHECK(codes(confirmed({by("sam", -61)})) == unconfirmed);
    Question q = confirmed({by("sam", 20)});
    q.place->confirmed[0].at.reset();
    CHECK(codes(q) == unconfirmed);
}

TEST_CASE("a confirmation by somebody else does not serve")
{
    CHECK(codes(confirmed({by("olga", 20)})) == unconfirmed);
    Question q = confirmed({by("sam", 20)});
    q.place->confirmed[0].by.reset();
    CHECK(codes(q) == unconfirmed);
}

TEST_CASE("each of the four answers is yes")
{
    for (Flag Confirmation::*each :
         {&Confirmation::level, &Confirmation::ground_and_edge, &Confirmation::services, &Confirmation::zone_closed})
        for (const Flag flag : {Flag{false}, Flag{}}) {
            Question q = good_lift();
            q.place->confirmed[0].*each = flag;
            CHECK(codes(q) == unconfirmed);
        }
}

TEST_CASE("the newest confirmation counts")
{
    Confirmation refused = by("sam", 30);
    refused.services = false;
    CHECK(codes(confirmed({by("sam", 20), refused})) == unconfirmed);
    CHECK(is_silent(confirmed({refused, by("sam", 31)})));
}

TEST_CASE("of two confirmations of one instant the safer counts in any order")
{
    Confirmation refused = by("sam", 20);
    refused.level = false;
    CHECK(codes(confirmed({by("sam", 20), refused})) == unconfirmed);
    CHECK(codes(confirmed({refused, by("sam", 20)})) == unconfirmed);
}

TEST_CASE("the operator confirms where the plan needs no supervisor")
{
    Question q = confirmed({by("olga", 20)});
    q.plan->roles["supervisor"] = false;
    CHECK(is_silent(q));
    q.place->confirmed = {by("sam", 20)};
    CHECK(codes(q) == unconfirmed);
}

TEST_CASE("a standing place that is not known is not confirmed")
{
    Question q = good_lift();
    q.place.reset();
    CHECK(finds(q, Code::place_unconfirmed, ""));
}

} // namespace cotter::rules
