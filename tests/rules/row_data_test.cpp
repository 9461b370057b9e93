#include "good_question.hpp"

#include <doctest/doctest.h>

#include <array>

namespace cotter::rules {

namespace {

Proof unproved() { return {Change{minute(-9000), "ann"}, {}}; }

// The proof of everything that a lift uses.
using ProofOf = Proof& (*)(Question&);
constexpr std::array<ProofOf, 5> proofs{[](Question& q) -> Proof& { return model(q, Role::machine).proof; },
                                        [](Question& q) -> Proof& { return model(q, Role::attachment).proof; },
                                        [](Question& q) -> Proof& { return q.chart->proof; },
                                        [](Question& q) -> Proof& { return q.pipe->proof; },
                                        [](Question& q) -> Proof& { return report(q, Role::hook).proof; }};
constexpr std::array said{"data-unproved(model-M) ", "data-unproved(model-A) ", "data-unproved(chart) ",
                          "data-unproved(pipe-600) ", "data-unproved(R-K1) "};

// An older report of the hook that nobody compared.
Question with_old_report()
{
    Question q = good_lift();
    Report older = report(q, Role::hook);
    older.id = "R-old";
    older.examined = day("2026-03-01");
    older.proof = unproved();
    q.reports.push_back(older);
    return q;
}

} // namespace

TEST_CASE("model and chart and pipe and report that nobody compared stop")
{
    for (std::size_t i = 0; i < proofs.size(); ++i) {
        Question q = good_lift();
        proofs[i](q).compared.clear();
        CHECK(codes(q) == said[i]);
    }
}

TEST_CASE("a comparison in the second of the change counts and one before it does not")
{
    Question q = good_lift();
    q.pipe->proof.compared[0].at = minute(-9000);
    CHECK(is_silent(q));
    q.pipe->proof.compared[0].at = minute(-9000) - Instant{1};
    CHECK(codes(q) == "data-unproved(pipe-600) ");
}

TEST_CASE("whoever changed the data cannot compare it")
{
    Question q = good_lift();
    q.pipe->proof.compared[0].by = "ann";
    CHECK(codes(q) == "data-unproved(pipe-600) ");
    q.pipe->proof.compared.push_back(Change{minute(-8000), "ben"});
    CHECK(is_silent(q));
}

TEST_CASE("a comparison without its instant or person does not count")
{
    for (const Change& each : {Change{std::nullopt, "ben"}, Change{minute(-8000), std::nullopt}}) {
        Question q = good_lift();
        q.pipe->proof.compared = {each};
        CHECK(codes(q) == "data-unproved(pipe-600) ");
    }
}

TEST_CASE("a change that is not known when or by whom leaves the data unproved")
{
    for (const Known<Change>& each : {Known<Change>{}, Known<Change>{Change{std::nullopt, "ann"}},
                                      Known<Change>{Change{minute(-9000), std::nullopt}}}) {
        Question q = good_lift();
        q.pipe->proof.changed = each;
        CHECK(codes(q) == "data-unproved(pipe-600) ");
    }
}

TEST_CASE("a report that the answer does not use is not asked") { CHECK(is_silent(with_old_report())); }

TEST_CASE("an older report that holds an open defect is asked")
{
    Question q = with_old_report();
    q.reports.back().defects = {Defect{"D1", Danger::could_become, day("2026-12-31"), std::nullopt}};
    CHECK(finds(q, Code::data_unproved, "R-old"));
    q.clearings = {Clearing{"D1", true}};
    CHECK(is_silent(q));
}

TEST_CASE("the newest report of any kind is asked though it does not govern")
{
    Question q = good_lift();
    q.reports.push_back(exceptional(q, Role::hook));
    q.reports.back().proof = unproved();
    CHECK(codes(q) == "data-unproved(R-again) ");
}

TEST_CASE("a report that clears an event is asked")
{
    Question q = with_old_report();
    q.events = {event(EventKind::overload, "K1")};
    q.events[0].day = day("2026-02-01");
    CHECK(codes(q) == "data-unproved(R-old) ");
    q.events[0].day = day("2026-03-01");
    CHECK(is_silent(q)); // cleared by the governing report alone
}

TEST_CASE("a report that clears a defect is asked")
{
    Question q = with_old_report();
    Report oldest = q.reports.back();
    oldest.id = "R-oldest";
    oldest.examined = day("2025-09-01");
    oldest.defects = {Defect{"D1", Danger::present, std::nullopt, std::nullopt}};
    q.reports.push_back(oldest);
    q.reports[q.reports.size() - 2].remedies = {"D1"};
    CHECK(codes(q) == "data-unproved(R-old) ");
}

TEST_CASE("a report of tomorrow is not asked")
{
    Question q = with_old_report();
    q.reports.back().report_day = day("2026-11-26");
    CHECK_FALSE(finds(q, Code::data_unproved));
}

TEST_CASE("concurrent records of a fact that is used are a caution")
{
    using DisputedOf = std::vector<Id>& (*)(Question&);
    constexpr std::array<DisputedOf, 8> disputed{
        [](Question& q) -> std::vector<Id>& { return item(q, Role::hook).disputed; },
        [](Question& q) -> std::vector<Id>& { return model(q, Role::hook).disputed; },
        [](Question& q) -> std::vector<Id>& { return report(q, Role::hook).disputed; },
        [](Question& q) -> std::vector<Id>& { return q.pipe->disputed; },
        [](Question& q) -> std::vector<Id>& { return q.chart->disputed; },
        [](Question& q) -> std::vector<Id>& { return q.plan->disputed; },
        [](Question& q) -> std::vector<Id>& { return q.place->disputed; },
        [](Question& q) -> std::vector<Id>& { return q.people["signaller"]->disputed; }};
    constexpr std::array about{"K1", "model-K", "R-K1", "pipe-600", "chart", "plan", "place", "sid"};
    for (std::size_t i = 0; i < disputed.size(); ++i) {
        Question q = good_lift();
        disputed[i](q) = {"field"};
        CHECK(codes(q) == "fact-disputed(" + Id{about[i]} + ") ");
    }
}

TEST_CASE("a dispute in a report that is not used is not said")
{
    Question q = with_old_report();
    q.reports.back().disputed = {"swl_kg"};
    CHECK(is_silent(q));
}

} // namespace cotter::rules
