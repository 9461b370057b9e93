// Row exam, what a governing report must say. Dates, papers, events and defects have files of their own.

#include "good_question.hpp"

#include <doctest/doctest.h>

#include <array>

namespace cotter::rules {

namespace {

constexpr std::array every_role{Role::machine, Role::hitch, Role::headplate, Role::hook, Role::sling, Role::attachment};

using TypeNothing = void (*)(Report&);

Defect defect(Danger danger, Known<Day> by_day) { return {"D1", danger, by_day, std::nullopt}; }

} // namespace

TEST_CASE("an item of any role without a paper has no examination")
{
    for (const Role role : every_role) {
        Question q = good_lift();
        remove_report(q, role);
        CAPTURE(codes(q));
        CHECK(finds(q, Code::exam_none, item(q, role).tag));
        CHECK_FALSE(finds(q, Code::exam_out_of_date));
        CHECK_FALSE(finds(q, Code::exam_incomplete));
    }
}

TEST_CASE("a report that names several units serves each of them")
{
    Question q = good_lift();
    remove_report(q, Role::hook);
    report(q, Role::sling).units = {"S1", "K1"};
    CHECK(is_silent(q));
}

TEST_CASE("a report that names another unit serves nothing")
{
    Question q = good_lift();
    report(q, Role::hook).units = {"K2"};
    CHECK(finds(q, Code::exam_none, "K1"));
}

TEST_CASE("a report of today is used and one of tomorrow is not")
{
    Question q = good_lift();
    report(q, Role::hook).report_day = day("2026-11-25");
    CHECK(is_silent(q));
    report(q, Role::hook).report_day = day("2026-11-26");
    CHECK(codes(q) == "exam-none(K1) exam-future(K1) ");
}

TEST_CASE("an examination of today is used and one of tomorrow is not")
{
    Question q = good_lift();
    report(q, Role::hook).examined = day("2026-11-25");
    CHECK(is_silent(q));
    report(q, Role::hook).examined = day("2026-11-26");
    CHECK(codes(q) == "exam-none(K1) exam-future(K1) ");
}

TEST_CASE("a report without its own day is not dated after today")
{
    Question q = good_lift();
    report(q, Role::hook).report_day.reset();
    CHECK(is_silent(q));
}

TEST_CASE("a declaration of tomorrow is said though a report governs")
{
    Question q = good_lift();
    item(q, Role::hook).declarations = {Declaration{"DoC", day("2026-11-25"), {}}};
    CHECK(is_silent(q));
    item(q, Role::hook).declarations[0].made = day("2026-11-26");
    CHECK(codes(q) == "exam-future(K1) ");
}

TEST_CASE("a report that says not safe is unsafe")
{
    Question q = good_lift();
    report(q, Role::sling).safe = false;
    CHECK(codes(q) == "exam-unsafe(S1) ");
}

TEST_CASE("a report that was not typed as safe or unsafe is incomplete and not unsafe")
{
    Question q = good_lift();
    report(q, Role::sling).safe.reset();
    CHECK(codes(q) == "exam-incomplete(S1) ");
}

TEST_CASE("the newest report of any kind is asked whether it says safe")
{
    Question q = good_lift();
    q.reports.push_back(exceptional(q, Role::sling));
    CHECK(is_silent(q));
    q.reports.back().safe = false;
    CHECK(codes(q) == "exam-unsafe(S1) ");
    q.reports.back().safe.reset();
    CHECK(codes(q) == "exam-incomplete(S1) ");
}

TEST_CASE("an older report that said not safe no longer counts")
{
    Question q = good_lift();
    Report older = report(q, Role::sling);
    older.id = "R-old";
    older.examined = day("2026-08-31");
    older.safe = false;
    q.reports.push_back(older);
    CHECK(is_silent(q));
}

TEST_CASE("an undated report that is not full and says not safe stops")
{
    Question q = good_lift();
    q.reports.push_back(exceptional(q, Role::sling));
    q.reports.back().examined.reset();
    q.reports.back().safe = false;
    CHECK(finds(q, Code::exam_unsafe, "S1"));
}

TEST_CASE("an open defect that is a present danger is unsafe")
{
    Question q = good_lift();
    report(q, Role::sling).defects = {defect(Danger::present, day("2027-01-31"))};
    CHECK(codes(q) == "exam-unsafe(S1) ");
}

TEST_CASE("a defect that could become a danger is dated to its day and unsafe after it")
{
    Question q = good_lift();
    report(q, Role::sling).defects = {defect(Danger::could_become, day("2026-11-25"))};
    CHECK(codes(q) == "exam-defect-dated(S1) ");
    CHECK(finding(q, Code::exam_defect_dated, "S1")->limit == Figure{day("2026-11-25")});
    report(q, Role::sling).defects[0].by_day = day("2026-11-24");
    CHECK(codes(q) == "exam-unsafe(S1) ");
}

TEST_CASE("a defect without its day is unsafe")
{
    Question q = good_lift();
    report(q, Role::sling).defects = {defect(Danger::could_become, std::nullopt)};
    CHECK(codes(q) == "exam-unsafe(S1) ");
}

TEST_CASE("a defect whose danger is not known is unsafe")
{
    Question q = good_lift();
    report(q, Role::sling).defects = {defect(Danger::could_become, day("2027-01-31"))};
    report(q, Role::sling).defects[0].danger.reset();
    CHECK(codes(q) == "exam-unsafe(S1) ");
}

TEST_CASE("a defect of another unit of the same report stops only that unit")
{
    Question q = good_lift();
    remove_report(q, Role::hook);
    report(q, Role::sling).units = {"S1", "K1"};
    report(q, Role::sling).defects = {defect(Danger::present, std::nullopt)};
    report(q, Role::sling).defects[0].unit = "K1";
    CHECK(codes(q) == "exam-unsafe(K1) ");
}

TEST_CASE("each of the seven items of a report is asked for")
{
    constexpr std::array<TypeNothing, 7> untyped{
        [](Report& r) { r.identity.reset(); }, [](Report& r) { r.examiner.reset(); },
        [](Report& r) { r.basis.reset(); },    [](Report& r) { r.examined.reset(); },
        [](Report& r) { r.latest.reset(); },   [](Report& r) { r.swl.reset(); },
        [](Report& r) { r.safe.reset(); }};
    for (std::size_t i = 0; i < untyped.size(); ++i) {
        Question q = good_lift();
        untyped[i](report(q, Role::hook));
        CAPTURE(i);
        CHECK(codes(q) == "exam-incomplete(K1) ");
    }
}

namespace {

using Of = Known<Particular> Particulars::*;
constexpr std::array<Of, 6> always_due{&Particulars::employer,      &Particulars::premises,
                                       &Particulars::last_examined, &Particulars::qualifications,
                                       &Particulars::employment,    &Particulars::report_day};
constexpr std::array<Of, 5> if_it_applies{&Particulars::manufactured, &Particulars::tests, &Particulars::installation,
                                          &Particulars::defect_parts, &Particulars::authenticator};

Question with(Of particular, Known<Particular> state, bool copy_here)
{
    Question q = good_lift();
    report(q, Role::hook).particulars.*particular = state;
    report(q, Role::hook).copy.here = copy_here;
    item(q, Role::hook).owner = Owner::own; // so that a lacking copy is only asked by row exam
    return q;
}

} // namespace

TEST_CASE("a particular that must be there and is lacking makes the report incomplete")
{
    for (const Of each : always_due)
        CHECK(codes(with(each, Particular::lacking, true)) == "exam-incomplete(K1) ");
}

TEST_CASE("a particular not yet typed is a caution with a legible copy here and a stop without")
{
    for (const Of each : always_due)
        for (const Known<Particular> state : {Known<Particular>{Particular::not_typed}, Known<Particular>{}}) {
            CHECK(codes(with(each, state, true)) == "exam-particulars(K1) ");
            CHECK(codes(with(each, state, false)) == "exam-incomplete(K1) ");
        }
}

TEST_CASE("a copy that is not legible does not excuse what is not typed")
{
    Question q = with(&Particulars::employer, Particular::not_typed, true);
    report(q, Role::hook).copy.legible.reset();
    CHECK(codes(q) == "exam-incomplete(K1) ");
}

TEST_CASE("a particular that only applies to some reports never stops")
{
    for (const Of each : if_it_applies) {
        CHECK(is_silent(with(each, Particular::not_applicable, true)));
        CHECK(is_silent(with(each, Particular::lacking, true)));
        CHECK(codes(with(each, Particular::not_typed, true)) == "exam-particulars(K1) ");
        CHECK(is_silent(with(each, Particular::not_typed, false)));
    }
}

TEST_CASE("a report by a scheme whose interval is not known is incomplete")
{
    Question q = good_lift();
    report(q, Role::hook).basis = Basis::scheme;
    CHECK(finds(q, Code::exam_incomplete, "K1"));
    item(q, Role::hook).scheme_months = Months{6};
    CHECK(is_silent(q));
}

TEST_CASE("a report limited to a configuration serves that one only")
{
    Question q = good_lift();
    report(q, Role::hook).configurations = {Configuration{"short", 9000_kg}};
    item(q, Role::hook).configuration = "short";
    CHECK(is_silent(q));
    item(q, Role::hook).configuration = "long";
    CHECK(codes(q) == "exam-config(K1) ");
    item(q, Role::hook).configuration.reset();
    CHECK(codes(q) == "exam-config(K1) ");
}

TEST_CASE("the setting is a configuration only if the model says so")
{
    Question q = good_lift();
    report(q, Role::attachment).configurations = {Configuration{"hole 2", 9000_kg}};
    CHECK(codes(q) == "exam-config(A1) ");
    model(q, Role::attachment).setting_is_configuration = true;
    CHECK(is_silent(q));
    report(q, Role::attachment).configurations = {Configuration{"hole 1", 9000_kg}};
    CHECK(codes(q) == "exam-config(A1) ");
}

TEST_CASE("a disputed setting is no known configuration")
{
    Question q = good_lift();
    report(q, Role::attachment).configurations = {Configuration{"hole 2", 9000_kg}, Configuration{"hole 1", 9000_kg}};
    model(q, Role::attachment).setting_is_configuration = true;
    CHECK(is_silent(q));
    q.setting_records[1].state = "hole 1";
    CHECK(finds(q, Code::exam_config, "A1"));
}

} // namespace cotter::rules
