#include "good_question.hpp"

#include <doctest/doctest.h>

namespace cotter::rules {

namespace {

const std::string unseen = "hitch-unseen(H1) ";
const std::string headplate = "hitch-headplate(H1) ";

Question looked(std::vector<LockSeen> looks)
{
    Question q = good_lift();
    item(q, Role::hitch).lock_seen = std::move(looks);
    return q;
}

Question coupled_direct()
{
    Question q = good_lift();
    remove_report(q, Role::hitch);
    remove_item(q, Role::hitch);
    q.people["operator"]->authorised = {"model-M", "model-A"};
    return q;
}

} // namespace

TEST_CASE("hitch and headplate have one pattern")
{
    Question q = good_lift();
    item(q, Role::headplate).pattern = "S70";
    CHECK(codes(q) == headplate);
    item(q, Role::hitch).pattern = "S70";
    CHECK(is_silent(q));
}

TEST_CASE("a pattern that is not known does not match")
{
    for (const Role role : {Role::hitch, Role::headplate}) {
        Question q = good_lift();
        item(q, role).pattern.reset();
        CHECK(codes(q) == headplate);
    }
    Question q = good_lift();
    item(q, Role::hitch).pattern.reset();
    item(q, Role::headplate).pattern.reset();
    CHECK(codes(q) == headplate);
}

TEST_CASE("a hitch without a headplate does not match")
{
    Question q = good_lift();
    remove_report(q, Role::headplate);
    remove_item(q, Role::headplate);
    CHECK(codes(q) == headplate);
}

TEST_CASE("a lock seen in the second of coupling counts and one before it does not")
{
    CHECK(is_silent(looked({LockSeen{minute(60), true, true}})));
    CHECK(codes(looked({LockSeen{minute(60) - Instant{1}, true, true}})) == unseen);
}

TEST_CASE("a lock is seen with own eyes and locked")
{
    for (const LockSeen& each : {LockSeen{minute(65), false, true}, LockSeen{minute(65), std::nullopt, true},
                                 LockSeen{minute(65), true, false}, LockSeen{minute(65), true, std::nullopt},
                                 LockSeen{std::nullopt, true, true}})
        CHECK(codes(looked({each})) == unseen);
    CHECK(codes(looked({})) == unseen);
}

TEST_CASE("the newest look at the lock counts whatever an older one saw")
{
    const LockSeen good{minute(65), true, true};
    CHECK(codes(looked({good, LockSeen{minute(66), false, true}})) == unseen);
    CHECK(is_silent(looked({good, LockSeen{minute(64), true, false}})));
}

TEST_CASE("of two looks of one instant the safer counts in any order")
{
    const LockSeen good{minute(65), true, true}, open{minute(65), true, false};
    CHECK(codes(looked({good, open})) == unseen);
    CHECK(codes(looked({open, good})) == unseen);
}

TEST_CASE("a lock seen in another shift does not count")
{
    Question q = looked({LockSeen{minute(-60), true, true}});
    q.coupled_at = minute(-90);
    CHECK(is_silent(q));
    item(q, Role::hitch).lock_seen[0].at = minute(-61);
    CHECK(codes(q) == unseen);
}

TEST_CASE("with the coupling not known no look serves")
{
    Question q = good_lift();
    q.coupled_at.reset();
    CHECK(finds(q, Code::hitch_unseen, "H1"));
}

TEST_CASE("no hitch must be recorded")
{
    Question q = coupled_direct();
    CHECK(finds(q, Code::hitch_unseen, ""));
    q.no_hitch = false;
    CHECK(finds(q, Code::hitch_unseen, ""));
    q.no_hitch = true;
    CHECK(is_silent(q));
}

TEST_CASE("a hitch that is there is asked though none is recorded")
{
    Question q = looked({});
    q.no_hitch = true;
    CHECK(codes(q) == unseen);
}

} // namespace cotter::rules
