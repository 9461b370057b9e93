// Which paper governs: reports, interim statements and declarations.

#include "good_question.hpp"
#include "papers.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>

namespace cotter::rules {

namespace {

Interim good_interim(std::string_view examined)
{
    Interim made;
    made.id = "interim";
    made.examined = day(examined);
    made.copy = Copy{true, true};
    made.signed_ = made.by_competent = made.safe = true;
    made.swl = 9000_kg;
    return made;
}

Question hook_on_interim(std::string_view examined)
{
    Question q = good_lift();
    remove_report(q, Role::hook);
    item(q, Role::hook).interims = {good_interim(examined)};
    return q;
}

Question hook_on_declaration(std::string_view made, Known<Day> first_service)
{
    Question q = good_lift();
    remove_report(q, Role::hook);
    item(q, Role::hook).declarations = {Declaration{"DoC", day(made), Copy{true, true}}};
    item(q, Role::hook).first_service = first_service;
    return q;
}

Question on(Question q, std::string_view today)
{
    q.day = day(today);
    return q;
}

Known<Day> latest(Question q, Role role) { return papers_of(q, item(q, role), *q.day).governing.latest; }

// Two reports of the hook of one day, in either order; `change` is made to the second.
Id governing_of_two(void (*change)(Report&), bool reversed)
{
    Question q = good_lift();
    q.reports.push_back(report(q, Role::hook));
    q.reports.back().id = "R-twin";
    change(q.reports.back());
    if (reversed)
        std::reverse(q.reports.begin(), q.reports.end());
    return *papers_of(q, item(q, Role::hook), *q.day).governing.id;
}

} // namespace

TEST_CASE("the newest full report governs")
{
    Question q = good_lift();
    Report newer = report(q, Role::hook);
    newer.id = "R-newer";
    newer.examined = day("2026-09-02");
    newer.latest = day("2026-11-24");
    q.reports.push_back(newer);
    CHECK(codes(q) == "exam-out-of-date(K1) ");
}

TEST_CASE("an examination after exceptional circumstances does not govern unless it says that it is full")
{
    Question q = good_lift();
    q.reports.push_back(exceptional(q, Role::hook));
    q.reports.back().latest = day("2026-11-30");
    CHECK(is_silent(q));
    q.reports.back().full = true;
    CHECK(codes(q) == "exam-due(K1) ");
}

TEST_CASE("a report that says of itself that it is not full does not govern")
{
    Question q = good_lift();
    report(q, Role::hook).full = false;
    CHECK(finds(q, Code::exam_none, "K1"));
}

TEST_CASE("a report without an examination date counts as the newest")
{
    Question q = good_lift();
    q.reports.push_back(report(q, Role::hook));
    q.reports.back().examined.reset();
    CHECK(codes(q) == "exam-incomplete(K1) ");
}

TEST_CASE("of two reports of one day the safer governs in any order")
{
    constexpr std::array<void (*)(Report&), 6> safer{[](Report& r) { r.safe = false; },
                                                     [](Report& r) { r.safe.reset(); },
                                                     [](Report& r) { r.latest = day("2027-02-28"); },
                                                     [](Report& r) { r.latest.reset(); },
                                                     [](Report& r) { r.swl = 8999_kg; },
                                                     [](Report& r) { r.copy.here = false; }};
    for (std::size_t i = 0; i < safer.size(); ++i) {
        CAPTURE(i);
        CHECK(governing_of_two(safer[i], false) == "R-twin");
        CHECK(governing_of_two(safer[i], true) == "R-twin");
    }
}

TEST_CASE("of two reports of one day the less safe does not govern in any order")
{
    constexpr std::array<void (*)(Report&), 2> less{[](Report& r) { r.latest = day("2027-03-01"), r.swl = 9001_kg; },
                                                    [](Report& r) { r.id = "R-Z"; }};
    for (const auto change : less) {
        CHECK(governing_of_two(change, false) == "R-K1");
        CHECK(governing_of_two(change, true) == "R-K1");
    }
}

TEST_CASE("of two reports of one day not safe comes before an earlier latest date")
{
    const auto change = [](Report& r) { r.safe.reset(), r.latest = day("2027-03-01"); };
    CHECK(governing_of_two(change, false) == "R-twin");
    CHECK(governing_of_two([](Report& r) { r.latest = day("2027-02-01"), r.swl = 20'000_kg; }, false) == "R-twin");
}

TEST_CASE("an interim statement serves 28 days from the examination")
{
    CHECK(latest(hook_on_interim("2026-11-01"), Role::hook) == day("2026-11-29"));
    CHECK_FALSE(finds(on(hook_on_interim("2026-11-01"), "2026-11-29"), Code::exam_out_of_date));
    CHECK(finds(on(hook_on_interim("2026-11-01"), "2026-11-30"), Code::exam_out_of_date, "K1"));
}

TEST_CASE("an interim statement in force is enough") { CHECK(is_silent(hook_on_interim("2026-11-25"))); }

TEST_CASE("an interim statement of tomorrow is not used")
{
    CHECK(finds(hook_on_interim("2026-11-26"), Code::exam_none, "K1"));
}

TEST_CASE("an interim statement that lacks something is none")
{
    constexpr std::array<void (*)(Interim&), 6> lacking{
        [](Interim& i) { i.signed_ = false; },  [](Interim& i) { i.by_competent.reset(); },
        [](Interim& i) { i.swl.reset(); },      [](Interim& i) { i.safe.reset(); },
        [](Interim& i) { i.examined.reset(); }, [](Interim& i) { i.signed_.reset(); }};
    for (std::size_t i = 0; i < lacking.size(); ++i) {
        Question q = hook_on_interim("2026-11-20");
        lacking[i](item(q, Role::hook).interims[0]);
        CAPTURE(i);
        CHECK(codes(q) == "exam-none(K1) ");
    }
}

TEST_CASE("an interim statement that says not safe is unsafe")
{
    Question q = hook_on_interim("2026-11-20");
    item(q, Role::hook).interims[0].safe = false;
    CHECK(finds(q, Code::exam_unsafe, "K1"));
}

TEST_CASE("an interim statement newer than the report governs and an older one does not")
{
    Question q = good_lift();
    item(q, Role::hook).interims = {good_interim("2026-09-02")}; // to 30 Sep
    CHECK(codes(q) == "exam-out-of-date(K1) ");
    item(q, Role::hook).interims = {good_interim("2026-08-31")};
    CHECK(is_silent(q));
}

TEST_CASE("a declaration serves from first service for the months of the class")
{
    const Question q = hook_on_declaration("2026-03-01", day("2026-06-10"));
    CHECK(latest(q, Role::hook) == day("2026-12-10"));
}

TEST_CASE("a declaration serves from its own day where first service is not known or in the future")
{
    CHECK(latest(hook_on_declaration("2026-08-10", std::nullopt), Role::hook) == day("2027-02-10"));
    CHECK(latest(hook_on_declaration("2026-08-10", day("2026-11-26")), Role::hook) == day("2027-02-10"));
    CHECK(latest(hook_on_declaration("2026-08-10", day("2026-11-25")), Role::hook) == day("2027-05-25"));
}

TEST_CASE("a declaration made after first service does not serve")
{
    CHECK(is_silent(hook_on_declaration("2026-08-10", day("2026-08-10"))));
    CHECK(codes(hook_on_declaration("2026-08-11", day("2026-08-10"))) == "exam-none(K1) ");
}

TEST_CASE("a declaration serves if made at most twelve months before first service")
{
    CHECK_FALSE(finds(hook_on_declaration("2025-08-10", day("2026-08-10")), Code::exam_none));
    CHECK(finds(hook_on_declaration("2025-08-09", day("2026-08-10")), Code::exam_none, "K1"));
}

TEST_CASE("a declaration more than twelve months before a first service in the future does not serve")
{
    CHECK_FALSE(finds(hook_on_declaration("2025-12-01", day("2026-12-01")), Code::exam_none));
    CHECK(finds(hook_on_declaration("2025-12-01", day("2026-12-02")), Code::exam_none, "K1"));
}

TEST_CASE("a declaration without its day does not serve")
{
    Question q = hook_on_declaration("2026-08-10", std::nullopt);
    item(q, Role::hook).declarations[0].made.reset();
    CHECK(codes(q) == "exam-none(K1) ");
}

TEST_CASE("a declaration does not govern beside a report or an interim statement")
{
    Question q = hook_on_interim("2026-11-01");
    item(q, Role::hook).declarations = {Declaration{"DoC", day("2026-11-20"), Copy{true, true}}};
    CHECK(latest(q, Role::hook) == day("2026-11-29"));
}

TEST_CASE("a hitch on a declaration has six months in any class")
{
    Question q = good_lift();
    remove_report(q, Role::hitch);
    item(q, Role::hitch).item_class = ItemClass::machine;
    item(q, Role::hitch).declarations = {Declaration{"DoC", day("2026-08-10"), Copy{true, true}}};
    CHECK(latest(q, Role::hitch) == day("2027-02-10"));
}

TEST_CASE("a machine on a declaration has twelve months")
{
    Question q = good_lift();
    remove_report(q, Role::machine);
    item(q, Role::machine).declarations = {Declaration{"DoC", day("2026-08-10"), Copy{true, true}}};
    CHECK(latest(q, Role::machine) == day("2027-08-10"));
}

} // namespace cotter::rules
