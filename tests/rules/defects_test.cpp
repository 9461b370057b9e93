// Row exam: defects in reports and what remedies them.

#include "good_question.hpp"

#include <doctest/doctest.h>

namespace cotter::rules {

namespace {

Question hook_with_defect()
{
    Question q = good_lift();
    report(q, Role::hook).defects = {Defect{"D1", Danger::present, std::nullopt, std::nullopt}};
    return q;
}

Question hook_remedied_on(std::string_view examined)
{
    Question q = hook_with_defect();
    Report later = report(q, Role::hook);
    later.id = "R-later";
    later.examined = day(examined);
    later.defects.clear();
    later.remedies = {"D1"};
    q.reports.push_back(later);
    return q;
}

} // namespace

TEST_CASE("a defect is remedied by a later report that names it and not by one of the same day")
{
    CHECK(is_silent(hook_remedied_on("2026-09-02")));
    CHECK(finds(hook_remedied_on("2026-09-01"), Code::exam_unsafe, "K1"));
}

TEST_CASE("a later report that does not name the defect leaves it open")
{
    Question q = hook_remedied_on("2026-09-02");
    q.reports.back().remedies = {"D2"};
    CHECK(finds(q, Code::exam_unsafe, "K1"));
}

TEST_CASE("a later report of another unit leaves the defect open")
{
    Question q = hook_remedied_on("2026-09-02");
    q.reports.back().units = {"S1"};
    CHECK(finds(q, Code::exam_unsafe, "K1"));
}

TEST_CASE("a defect is cleared by a competent person and by nobody else")
{
    Question q = hook_with_defect();
    q.clearings = {Clearing{"D1", true}};
    CHECK(is_silent(q));
    for (const Flag competent : {Flag{false}, Flag{}}) {
        q.clearings = {Clearing{"D1", competent}};
        CHECK(codes(q) == "exam-unsafe(K1) ");
    }
    q.clearings = {Clearing{"D2", true}};
    CHECK(codes(q) == "exam-unsafe(K1) ");
}

TEST_CASE("a defect in a report that no longer governs is still open")
{
    Question q = hook_remedied_on("2026-09-02");
    q.reports.back().remedies.clear();
    CHECK(codes(q) == "exam-unsafe(K1) ");
}

} // namespace cotter::rules
