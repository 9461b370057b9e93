#include "good_question.hpp"

#include <doctest/doctest.h>

#include <array>

namespace cotter::rules {

namespace {

template <class Change> std::string after(const Change& change)
{
    Question q = good_lift();
    change(q);
    return codes(q);
}

const std::string outside = "plan-outside(plan) ";
const std::string no_plan = "plan-none() ";

} // namespace

TEST_CASE("a lift needs a plan that is issued and signed for this site")
{
    CHECK(after([](Question& q) { q.plan.reset(); }) == no_plan);
    CHECK(after([](Question& q) { q.plan->issued = false; }) == no_plan);
    CHECK(after([](Question& q) { q.plan->issued.reset(); }) == no_plan);
    CHECK(after([](Question& q) { q.plan->signed_ = false; }) == no_plan);
    CHECK(after([](Question& q) { q.plan->signed_.reset(); }) == no_plan);
    CHECK(after([](Question& q) { q.plan->site = "elsewhere"; }) == no_plan);
    CHECK(after([](Question& q) { q.plan->site.reset(); }) == no_plan);
}

TEST_CASE("on a site that is not known no plan holds")
{
    Question q = good_lift();
    q.site->id.reset();
    q.plan->site.reset();
    CHECK(finds(q, Code::plan_none, ""));
}

TEST_CASE("a plan holds on its first and last day and not beside them")
{
    CHECK(after([](Question& q) { q.plan->first_day = day("2026-11-25"); }) == "");
    CHECK(after([](Question& q) { q.plan->first_day = day("2026-11-26"); }) == "plan-out-of-date(plan) ");
    CHECK(after([](Question& q) { q.plan->last_day = day("2026-11-25"); }) == "");
    CHECK(after([](Question& q) { q.plan->last_day = day("2026-11-24"); }) == "plan-out-of-date(plan) ");
}

TEST_CASE("a plan without its first or last day is not in force")
{
    CHECK(after([](Question& q) { q.plan->first_day.reset(); }) == "plan-out-of-date(plan) ");
    CHECK(after([](Question& q) { q.plan->last_day.reset(); }) == "plan-out-of-date(plan) ");
}

TEST_CASE("what the plan does not name is outside")
{
    for (std::vector<Id> Plan::*each : {&Plan::machines, &Plan::attachments, &Plan::pipes, &Plan::places}) {
        Question q = good_lift();
        ((*q.plan).*each).clear();
        CHECK(codes(q) == outside);
        (*q.plan).*each = {"another"};
        CHECK(codes(q) == outside);
    }
}

TEST_CASE("a plan may name any unit of a model")
{
    Question q = good_lift();
    q.plan->attachments.clear();
    q.plan->models = {"model-A"};
    CHECK(is_silent(q));
    model(q, Role::attachment).id.reset();
    CHECK(finds(q, Code::plan_outside, "plan"));
}

TEST_CASE("a model named in the plan does not bring in the machine")
{
    Question q = good_lift();
    q.plan->machines.clear();
    q.plan->models = {"model-M"};
    CHECK(codes(q) == outside);
}

TEST_CASE("pipe and place that are not known are outside")
{
    CHECK(after([](Question& q) { q.pipe->id.reset(); }) == outside);
    CHECK(after([](Question& q) { q.place->id.reset(); }) == outside);
}

TEST_CASE("the plan's greatest load is allowed and a kilogram more is outside")
{
    CHECK(after([](Question& q) { q.plan->greatest = 2000_kg; }) == "");
    CHECK(after([](Question& q) { q.plan->greatest = 1999_kg; }) == outside);
}

TEST_CASE("the plan's greatest radius is allowed and a millimetre more is outside")
{
    CHECK(after([](Question& q) { q.plan->greatest_radius = 5200_mm; }) == "");
    CHECK(after([](Question& q) { q.plan->greatest_radius = 5199_mm; }) == outside);
}

TEST_CASE("a limit that the plan does not state is outside")
{
    CHECK(after([](Question& q) { q.plan->greatest.reset(); }) == outside);
    CHECK(after([](Question& q) { q.plan->greatest_radius.reset(); }) == outside);
}

TEST_CASE("a load or radius not known on this side is another row's matter")
{
    CHECK(after([](Question& q) { q.move->nose_radius.reset(); }) == "reach-off-chart(M1) ");
    Question q = good_lift();
    q.move->water.reset();
    CHECK_FALSE(finds(q, Code::plan_outside));
}

TEST_CASE("a load over the plan says load and limit")
{
    Question q = good_lift();
    q.plan->greatest = 1999_kg;
    CHECK(finding(q, Code::plan_outside, "plan")->measured == Figure{2000.0});
    CHECK(finding(q, Code::plan_outside, "plan")->limit == Figure{1999.0});
}

TEST_CASE("everybody named has signed the plan as it stands now")
{
    for (std::size_t i = 0; i < 3; ++i) {
        Question q = good_lift();
        const std::string expected = "briefing-none(" + *q.plan->briefed[i].person + ") ";
        q.plan->briefed[i].issue = 2;
        CHECK(codes(q) == expected);
        q.plan->briefed[i].issue.reset();
        CHECK(codes(q) == expected);
        q.plan->briefed.erase(q.plan->briefed.begin() + static_cast<std::ptrdiff_t>(i));
        CHECK(codes(q) == expected);
    }
}

TEST_CASE("a person named for a role that the plan does not need is briefed too")
{
    Question q = good_lift();
    Person banksman = *q.people["signaller"];
    banksman.id = "bob";
    banksman.authorised = {"banksman"};
    q.people["banksman"] = banksman;
    CHECK(codes(q) == "briefing-none(bob) ");
}

TEST_CASE("a plan whose number is not known has been signed by nobody")
{
    Question q = good_lift();
    q.plan->issue.reset();
    for (Signature& each : q.plan->briefed)
        each.issue.reset();
    CHECK(codes(q) == "briefing-none(olga) briefing-none(sam) briefing-none(sid) ");
}

TEST_CASE("without a plan nobody is asked for a briefing")
{
    Question q = good_lift();
    q.plan->issued = false;
    q.plan->briefed.clear();
    CHECK(codes(q) == no_plan);
}

} // namespace cotter::rules
