// Thorough examinations, against LOLER 1998 (SI 1998/2307).

#include "asking.hpp"
#include "table.hpp"

#include <doctest/doctest.h>

#include <array>

using namespace outside;
using namespace cotter::rules::literals;
using rules::Code;
using rules::ItemClass;
using rules::Role;

namespace {

rules::Particulars all_given()
{
    const auto given = rules::Particular::given;
    return {given, given, given, given, given, given, given, given, given, given, given};
}

// Examined on 31 August 2025; the report itself would allow ten years.
rules::Report report()
{
    rules::Report made;
    made.id = "r";
    made.units = {"X"};
    made.examined = day("2025-08-31");
    made.report_day = day("2025-09-01");
    made.latest = day("2035-08-31");
    made.identity = "X";
    made.examiner = "E";
    made.basis = rules::Basis::six_months;
    made.swl = 2000_kg;
    made.safe = made.full = true;
    made.particulars = all_given();
    made.copy = {true, true};
    return made;
}

rules::Question examined(Role role, ItemClass item_class, const std::string& today)
{
    rules::Question question = lift();
    question.day = day(today);
    question.items = {item(role, "X")};
    question.items[0].item_class = item_class;
    question.reports = {report()};
    return question;
}

rules::Question declared(const char* made, const char* first_service)
{
    rules::Question question = lift();
    question.items = {item(Role::machine, "X")};
    question.items[0].item_class = ItemClass::machine;
    question.items[0].first_service = day(first_service);
    question.items[0].declarations = {rules::Declaration{"d", day(made), {true, true}}};
    return question;
}

struct Interval {
    Role role;
    ItemClass item_class;
    std::string item, last, next;
};

// The last day of use, and the day after it.
const Interval intervals[] = {
    {Role::attachment, ItemClass::accessory, "accessory for lifting", "2026-02-28", "2026-03-01"},
    {Role::sling, ItemClass::accessory, "accessory for lifting", "2026-02-28", "2026-03-01"},
    {Role::machine, ItemClass::people, "lifting equipment for lifting persons", "2026-02-28", "2026-03-01"},
    {Role::machine, ItemClass::machine,
     "other lifting equipment (e.g. excavator used for lifting, quick hitch as part of machine)", "2026-08-31",
     "2026-09-01"}};

int published_months(const std::string& item_name)
{
    for (const Record& row : read_table("inspection_intervals"))
        if (row.at("jurisdiction") == "GB" && row.at("item") == item_name && row.at("unit") == "month")
            return std::stoi(row.at("interval"));
    throw std::runtime_error{"no interval for " + item_name};
}

using Field = rules::Known<rules::Particular> rules::Particulars::*;

// Paragraphs of Schedule 1 that always are to be there and are no field of their own in a report.
struct Particular {
    std::string name;
    Field field;
};
const std::array<Particular, 6> always{{{"employer_name_address", &rules::Particulars::employer},
                                        {"premises_address", &rules::Particulars::premises},
                                        {"last_thorough_examination_date", &rules::Particulars::last_examined},
                                        {"author_name_address_qualifications", &rules::Particulars::qualifications},
                                        {"author_employment", &rules::Particulars::employment},
                                        {"report_date", &rules::Particulars::report_day}}};

bool is_always_required(const std::string& field)
{
    for (const Record& row : read_table("loler_schedule1"))
        if (row.at("field") == field)
            return row.at("when_required") == "always";
    return false;
}

} // namespace

// Source: LOLER 1998 reg. 9(3)(a)(i) and (ii): accessories and the lifting of persons 6 months, other equipment 12.
TEST_CASE("An examination serves up to and on the corresponding day and not a day longer")
{
    for (const Interval& each : intervals) {
        INFO(each.item);
        const rules::Day end = rules::add_months(day("2025-08-31"), rules::Months{published_months(each.item)});
        CHECK(rules::to_string(end) == each.last);
        CHECK_FALSE(finds(examined(each.role, each.item_class, each.last), Code::exam_out_of_date));
        CHECK(finds(examined(each.role, each.item_class, each.next), Code::exam_out_of_date));
    }
}

// Source: the same; a latest date of the report's own, Schedule 1 para 8(d) (from memory), cannot lengthen it.
TEST_CASE("A report's own date past the legal interval is said to be too long")
{
    for (const Interval& each : intervals) {
        const auto decision = rules::decide(examined(each.role, each.item_class, "2025-12-01"));
        const auto* found = find(decision, Code::exam_long);
        REQUIRE(found != nullptr);
        CHECK(std::get<rules::Day>(found->limit) == day(each.last));
    }
}

// Source: Schedule 1 para 8(d) (from memory): an earlier date of the examiner's wins, derived.
TEST_CASE("A report's own earlier date ends its use")
{
    rules::Question question = examined(Role::machine, ItemClass::machine, "2025-12-01");
    question.reports[0].latest = day("2025-11-30");
    CHECK(finds(question, Code::exam_out_of_date));
    question.day = day("2025-11-30");
    CHECK_FALSE(finds(question, Code::exam_out_of_date));
}

// Source: LOLER 1998 reg. 9(1)(b): a declaration of conformity made not more than 12 months before first use.
TEST_CASE("A declaration serves a first service at most twelve months after it")
{
    CHECK_FALSE(finds(declared("2025-05-20", "2026-05-20"), Code::exam_none));
    CHECK(finds(declared("2025-05-19", "2026-05-20"), Code::exam_none));
}

// Source: LOLER 1998 reg. 10(3)(a) and (b): not before a defect is remedied, or not after the stated time.
TEST_CASE("A defect stops use at once, or from the day after the one that the report states")
{
    rules::Question question = examined(Role::machine, ItemClass::machine, "2025-12-01");
    CHECK_FALSE(finds(question, Code::exam_unsafe));
    question.reports[0].defects = {rules::Defect{"f", rules::Danger::could_become, day("2025-12-01"), "X"}};
    CHECK_FALSE(finds(question, Code::exam_unsafe));
    CHECK(finds(question, Code::exam_defect_dated));
    question.day = day("2025-12-02");
    CHECK(finds(question, Code::exam_unsafe));
    question.reports[0].defects[0].danger = rules::Danger::present;
    question.day = day("2025-12-01");
    CHECK(finds(question, Code::exam_unsafe));
}

// Source: LOLER 1998 Schedule 1: paras 1, 2 and 4 (read), 9 and 11 (from memory).
TEST_CASE("A report that lacks what Schedule 1 always wants is incomplete")
{
    rules::Question question = examined(Role::machine, ItemClass::machine, "2025-12-01");
    CHECK_FALSE(finds(question, Code::exam_incomplete));
    for (const Particular& each : always) {
        INFO(each.name);
        CHECK(is_always_required(each.name));
        question.reports[0].particulars = all_given();
        question.reports[0].particulars.*each.field = rules::Particular::lacking;
        CHECK(finds(question, Code::exam_incomplete));
    }
}

// Source: LOLER 1998 Schedule 1: paras 3, 5, 7(a), 7(b) (read), 8(d), 8(f), 9 (from memory).
TEST_CASE("A report without identity, limit, basis, verdict, dates or examiner is incomplete")
{
    const auto without = [](auto field) {
        rules::Question question = examined(Role::machine, ItemClass::machine, "2025-12-01");
        (question.reports[0].*field).reset();
        return finds(question, Code::exam_incomplete);
    };
    CHECK(without(&rules::Report::identity));
    CHECK(without(&rules::Report::swl));
    CHECK(without(&rules::Report::basis));
    CHECK(without(&rules::Report::safe));
    CHECK(without(&rules::Report::latest));
    CHECK(without(&rules::Report::examined));
    CHECK(without(&rules::Report::examiner));
}
