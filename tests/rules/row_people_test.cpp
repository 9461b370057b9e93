#include "case.hpp"
#include "good_question.hpp"

#include <doctest/doctest.h>

namespace cotter::rules {

namespace {

template <class Change> std::string after(const Change& change)
{
    Question q = good_lift();
    change(q);
    return codes(q);
}

Question card_to(Known<Day> last)
{
    Question q = good_lift();
    q.people["signaller"]->card_last_day = last;
    return q;
}

} // namespace

TEST_CASE("an operator and a supervisor and a signaller are named")
{
    Question q = good_lift();
    q.people.erase("operator");
    CHECK(finds(q, Code::person_none, "operator"));
    CHECK(after([](Question& one) { one.people.erase("supervisor"); }) ==
          "person-none(supervisor) place-unconfirmed(place) ");
    CHECK(after([](Question& one) { one.people.erase("signaller"); }) == "person-none(signaller) ");
}

TEST_CASE("a role without a person or with a person who is not known is not named")
{
    CHECK(after([](Question& q) { q.people["signaller"].reset(); }) == "person-none(signaller) ");
    CHECK(after([](Question& q) { q.people["signaller"]->id.reset(); }) == "person-none(signaller) ");
}

TEST_CASE("a role that the plan says is not needed may be empty and where it says nothing may not")
{
    Question q = good_lift();
    q.people.erase("signaller");
    q.plan->roles["signaller"] = false;
    CHECK(is_silent(q));
    q.plan->roles["signaller"].reset();
    CHECK(codes(q) == "person-none(signaller) ");
}

TEST_CASE("the operator is needed whatever the plan says")
{
    Question q = good_lift();
    q.people.erase("operator");
    q.plan->roles["operator"] = false;
    CHECK(finds(q, Code::person_none, "operator"));
}

TEST_CASE("another role is needed only if the plan says so")
{
    Question q = good_lift();
    q.plan->roles["banksman"] = true;
    CHECK(codes(q) == "person-none(banksman) ");
    q.plan->roles["banksman"] = false;
    CHECK(is_silent(q));
    q.plan->roles["banksman"].reset();
    CHECK(is_silent(q));
}

TEST_CASE("which roles are needed is read from a plan that is in force here only")
{
    Question q = good_lift();
    CHECK(needs_role(q, "operator"));
    CHECK(needs_role(q, "supervisor"));
    CHECK(needs_role(q, "signaller"));
    CHECK_FALSE(needs_role(q, "banksman"));
    q.plan->roles = {{"supervisor", false}, {"banksman", true}, {"operator", false}};
    CHECK(needs_role(q, "operator"));
    CHECK_FALSE(needs_role(q, "supervisor"));
    CHECK(needs_role(q, "banksman"));
    q.plan->signed_ = false;
    CHECK(needs_role(q, "supervisor"));
    CHECK_FALSE(needs_role(q, "banksman"));
}

TEST_CASE("the operator is not also the signaller")
{
    Question q = good_lift();
    q.people["signaller"]->id = "olga";
    q.plan->roles["signaller"] = false; // needed or not
    CHECK(codes(q) == "person-none(signaller) ");
}

TEST_CASE("the supervisor may also be the signaller")
{
    Question q = good_lift();
    q.people["supervisor"]->authorised = {"supervisor", "signaller"};
    q.people["signaller"] = q.people["supervisor"];
    CHECK(is_silent(q));
}

TEST_CASE("the operator is authorised for machine and hitch and attachment")
{
    for (const Id& missing : {Id{"model-M"}, Id{"model-H"}, Id{"model-A"}}) {
        Question q = good_lift();
        std::erase(q.people["operator"]->authorised, missing);
        CHECK(codes(q) == "person-not-authorised(olga) ");
    }
}

TEST_CASE("nobody is authorised for a model that is not known")
{
    Question q = good_lift();
    model(q, Role::machine).id.reset();
    CHECK(finds(q, Code::person_not_authorised, "olga"));
}

TEST_CASE("an operator needs nothing for a hitch that is recorded as absent")
{
    Question q = good_lift();
    remove_report(q, Role::hitch);
    remove_item(q, Role::hitch);
    q.people["operator"]->authorised = {"model-M", "model-A"};
    CHECK(finds(q, Code::person_not_authorised, "olga"));
    q.no_hitch = true;
    CHECK_FALSE(finds(q, Code::person_not_authorised));
}

TEST_CASE("the others are authorised for their role")
{
    for (const char* role : {"supervisor", "signaller"}) {
        Question q = good_lift();
        q.people[role]->authorised = {"another"};
        CHECK(codes(q) == "person-not-authorised(" + *q.people[role]->id + ") ");
        q.people[role]->authorised.clear();
        CHECK(codes(q) == "person-not-authorised(" + *q.people[role]->id + ") ");
    }
}

TEST_CASE("a person named for a role that is not needed is authorised too")
{
    Question q = good_lift();
    q.plan->roles["signaller"] = false;
    q.people["signaller"]->authorised.clear();
    CHECK(codes(q) == "person-not-authorised(sid) ");
}

TEST_CASE("a card serves on its last day and not after it")
{
    CHECK_FALSE(finds(card_to(day("2026-11-25")), Code::card_expired));
    CHECK(codes(card_to(day("2026-11-24"))) == "card-expired(sid) ");
    CHECK(codes(card_to(std::nullopt)) == "card-expired(sid) ");
}

TEST_CASE("where the site allows it an expired card is a caution")
{
    for (const Known<Day> last : {Known<Day>{day("2026-11-24")}, Known<Day>{}}) {
        Question q = card_to(last);
        q.site->expired_card_stops = false;
        CHECK(codes(q) == "card-expired-allowed(sid) ");
    }
    Question q = card_to(day("2026-11-25"));
    q.site->expired_card_stops = false;
    CHECK_FALSE(finds(q, Code::card_expired_allowed));
}

TEST_CASE("where the site says nothing an expired card stops")
{
    Question q = card_to(day("2026-11-24"));
    q.site->expired_card_stops.reset();
    CHECK(codes(q) == "card-expired(sid) ");
}

TEST_CASE("a card is due within the warning days")
{
    CHECK(codes(card_to(day("2026-12-09"))) == "card-due(sid) "); // 14 days left
    CHECK(is_silent(card_to(day("2026-12-10"))));
    CHECK(codes(card_to(day("2026-11-25"))) == "card-due(sid) ");
}

TEST_CASE("a person with two roles has one finding for the card")
{
    Question q = good_lift();
    q.people["supervisor"]->authorised = {"supervisor", "signaller"};
    q.people["supervisor"]->card_last_day = day("2026-11-24");
    q.people["signaller"] = q.people["supervisor"];
    CHECK(codes(q) == "card-expired(sam) ");
}

} // namespace cotter::rules
