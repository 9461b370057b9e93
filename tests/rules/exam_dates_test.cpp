// Row exam, until when a paper serves.

#include "good_question.hpp"

#include <doctest/doctest.h>

namespace cotter::rules {

namespace {

Question hook_latest(std::string_view latest)
{
    Question q = good_lift();
    report(q, Role::hook).latest = day(latest);
    return q;
}

// The hook's only paper, examined on that day and with a date of its own that is later than any law.
Question hook_examined(std::string_view examined)
{
    Question q = hook_latest("2030-01-01");
    report(q, Role::hook).examined = day(examined);
    report(q, Role::hook).report_day = day(examined);
    return q;
}

Figure lawful_day(const Question& q, std::string_view about)
{
    const auto found = finding(q, Code::exam_long, about);
    return found ? found->limit : Figure{};
}

} // namespace

TEST_CASE("the latest date itself is a day of use and the day after is not")
{
    CHECK_FALSE(finds(hook_latest("2026-11-25"), Code::exam_out_of_date));
    CHECK(finds(hook_latest("2026-11-24"), Code::exam_out_of_date, "K1"));
}

TEST_CASE("a latest date that is not typed is incomplete and not also out of date")
{
    Question q = good_lift();
    report(q, Role::hook).latest.reset();
    q.day = day("2029-01-01");
    CHECK(finds(q, Code::exam_incomplete, "K1"));
    CHECK_FALSE(finds(q, Code::exam_out_of_date, "K1"));
}

TEST_CASE("an examination is due as many days before as the site warns")
{
    CHECK(finds(hook_latest("2026-12-09"), Code::exam_due, "K1")); // 14 days left
    CHECK(is_silent(hook_latest("2026-12-10")));
}

TEST_CASE("the site sets the warning days")
{
    Question q = hook_latest("2026-12-10"); // 15 days left
    q.site->warning_days = Days{15};
    CHECK(codes(q) == "exam-due(K1) ");
    q.site->warning_days = Days{0};
    CHECK(is_silent(q));
}

TEST_CASE("where the site sets nothing 14 days are warned")
{
    Question q = hook_latest("2026-12-09");
    q.site->warning_days.reset();
    CHECK(finds(q, Code::exam_due, "K1"));
    report(q, Role::hook).latest = day("2026-12-10");
    CHECK_FALSE(finds(q, Code::exam_due, "K1"));
}

TEST_CASE("an examination is due where it ends within a shift that crosses midnight")
{
    Question q = hook_latest("2026-11-26");
    q.site->warning_days = Days{0};
    CHECK(is_silent(q));
    q.shift->last_day = day("2026-11-26");
    CHECK(codes(q) == "exam-due(K1) ");
    q.shift->last_day = day("2026-11-25");
    report(q, Role::hook).latest = day("2026-11-25");
    CHECK(codes(q) == "exam-due(K1) ");
}

TEST_CASE("an examination that is out of date is not also due")
{
    CHECK_FALSE(finds(hook_latest("2026-11-24"), Code::exam_due));
}

TEST_CASE("a report that runs as long as the law allows is not long and a day more is")
{
    CHECK(is_silent(hook_latest("2027-03-01"))); // examined 1 Sep 2026, six months
    const Question q = hook_latest("2027-03-02");
    CHECK(codes(q) == "exam-long(K1) ");
    CHECK(lawful_day(q, "K1") == Figure{day("2027-03-01")});
}

TEST_CASE("of the report's own date and the law's the earlier governs")
{
    Question q = hook_latest("2030-01-01");
    q.day = day("2027-03-01");
    CHECK_FALSE(finds(q, Code::exam_out_of_date, "K1"));
    q.day = day("2027-03-02");
    CHECK(finds(q, Code::exam_out_of_date, "K1"));
}

TEST_CASE("months end on the corresponding date or the last day of the month")
{
    CHECK(lawful_day(hook_examined("2026-08-31"), "K1") == Figure{day("2027-02-28")});
    CHECK(lawful_day(hook_examined("2026-08-28"), "K1") == Figure{day("2027-02-28")});
    CHECK(lawful_day(hook_examined("2026-10-31"), "K1") == Figure{day("2027-04-30")});
    CHECK(lawful_day(hook_examined("2026-07-15"), "K1") == Figure{day("2027-01-15")});
}

TEST_CASE("the last day of February is the 29th in a leap year")
{
    Question q = hook_examined("2026-11-01");
    report(q, Role::hook).examined = day("2027-08-31");
    report(q, Role::hook).report_day = day("2027-08-31");
    q.day = day("2027-09-01");
    CHECK(lawful_day(q, "K1") == Figure{day("2028-02-29")});
}

TEST_CASE("each class has its months")
{
    const auto lawful = [](ItemClass chosen) {
        Question q = good_lift();
        report(q, Role::machine).latest = day("2030-01-01");
        item(q, Role::machine).item_class = chosen;
        return lawful_day(q, "M1");
    };
    CHECK(lawful(ItemClass::machine) == Figure{day("2027-09-01")});
    CHECK(lawful(ItemClass::accessory) == Figure{day("2027-03-01")});
    CHECK(lawful(ItemClass::people) == Figure{day("2027-03-01")});
    CHECK(lawful(ItemClass::undecided) == Figure{day("2027-03-01")});
}

TEST_CASE("a class that is not known has six months")
{
    Question q = good_lift();
    item(q, Role::machine).item_class.reset();
    CHECK(lawful_day(q, "M1") == Figure{day("2027-03-01")});
}

TEST_CASE("an attachment on an excavator is an accessory whatever was chosen")
{
    Question q = good_lift();
    item(q, Role::attachment).item_class = ItemClass::machine;
    report(q, Role::attachment).latest = day("2027-09-01");
    CHECK(lawful_day(q, "A1") == Figure{day("2027-03-01")});
}

namespace {

Figure hitch_lawful(ItemClass chosen, Basis basis, std::vector<Id> units)
{
    Question q = good_lift();
    item(q, Role::hitch).item_class = chosen;
    Report& of_hitch = report(q, Role::hitch);
    of_hitch.basis = basis;
    of_hitch.units = std::move(units);
    of_hitch.latest = day("2030-01-01");
    return lawful_day(q, "H1");
}

} // namespace

TEST_CASE("a hitch of its own has six months even in the class of the machine")
{
    CHECK(hitch_lawful(ItemClass::machine, Basis::six_months, {"H1"}) == Figure{day("2027-03-01")});
}

TEST_CASE("a hitch in the machine's report has twelve months")
{
    CHECK(hitch_lawful(ItemClass::accessory, Basis::six_months, {"H1", "M1"}) == Figure{day("2027-09-01")});
}

TEST_CASE("a hitch whose report is for twelve months has twelve months")
{
    CHECK(hitch_lawful(ItemClass::accessory, Basis::twelve_months, {"H1"}) == Figure{day("2027-09-01")});
}

TEST_CASE("a hitch that lifts people has six months in any report")
{
    CHECK(hitch_lawful(ItemClass::people, Basis::twelve_months, {"H1", "M1"}) == Figure{day("2027-03-01")});
}

TEST_CASE("the interval of a scheme replaces the months of the class")
{
    Question q = good_lift();
    item(q, Role::hook).scheme_months = Months{9};
    report(q, Role::hook).latest = day("2027-06-01");
    CHECK(finds(q, Code::exam_long, "K1")); // the report is not by a scheme
    report(q, Role::hook).basis = Basis::scheme;
    CHECK(is_silent(q));
    report(q, Role::hook).latest = day("2027-06-02");
    CHECK(lawful_day(q, "K1") == Figure{day("2027-06-01")});
}

TEST_CASE("a date may pass the end of 2037")
{
    Question q = hook_examined("2037-12-01");
    report(q, Role::hook).latest = day("2038-06-01");
    q.day = day("2038-06-01");
    CHECK_FALSE(finds(q, Code::exam_out_of_date, "K1"));
    q.day = day("2038-06-02");
    CHECK(finds(q, Code::exam_out_of_date, "K1"));
}

} // namespace cotter::rules
