// A dispatch: row dispatch, and which rows are asked on which of the two days.

#include "good_question.hpp"

#include <doctest/doctest.h>

#include <array>

namespace cotter::rules {

namespace {

constexpr std::array listed_parts{&LooseParts::headplate, &LooseParts::pin, &LooseParts::keeper};

Question sizes_of(std::vector<Known<Millimetres>> barrels)
{
    Question q = good_use();
    const Pipe pipe = q.order->pipes[0];
    q.order->pipes.clear();
    for (const Known<Millimetres>& barrel : barrels) {
        q.order->pipes.push_back(pipe);
        q.order->pipes.back().barrel = barrel;
    }
    return q;
}

Question latest(std::string_view last)
{
    Question q = good_use();
    report(q, Role::attachment).latest = day(last);
    return q;
}

} // namespace

TEST_CASE("headplate and pin and keeper are listed or do not apply")
{
    for (Known<Listed> LooseParts::*each : listed_parts) {
        Question q = good_use();
        LooseParts& parts = *item(q, Role::attachment).loose_parts;
        parts.*each = Listed::not_applicable;
        CHECK(is_silent(q));
        parts.*each = Listed::missing;
        CHECK(codes(q) == "loose-parts(A1) ");
        parts.*each = std::nullopt;
        CHECK(codes(q) == "loose-parts(A1) ");
    }
}

TEST_CASE("loose parts about which nothing is recorded are not listed")
{
    Question q = good_use();
    item(q, Role::attachment).loose_parts.reset();
    CHECK(codes(q) == "loose-parts(A1) ");
}

TEST_CASE("an examination that lasts to the end of the hire is not due in it and one a day shorter is")
{
    CHECK(is_silent(latest("2027-01-29")));
    CHECK(codes(latest("2027-01-28")) == "hire-due(A1) ");
    const auto found = finding(latest("2027-01-28"), Code::hire_due, "A1");
    CHECK(found->measured == Figure{day("2027-01-28")});
    CHECK(found->limit == Figure{day("2027-01-29")});
}

TEST_CASE("what is out of date on either day is not also due in the hire")
{
    CHECK_FALSE(finds(latest("2026-11-24"), Code::hire_due)); // the day before dispatch
    CHECK_FALSE(finds(latest("2026-11-29"), Code::hire_due)); // the day before first use
    CHECK(finds(latest("2026-11-30"), Code::hire_due, "A1"));
}

TEST_CASE("what is first examined after the dispatch is not due in the hire")
{
    Question q = latest("2027-01-28");
    report(q, Role::attachment).examined = day("2026-11-27");
    report(q, Role::attachment).report_day = day("2026-11-27");
    CHECK(codes(q) == "exam-none(A1) exam-future(A1) ");
}

TEST_CASE("a hire whose end is not known is open and nothing is due in it")
{
    Question q = latest("2027-01-28");
    q.order->end_day.reset();
    CHECK(codes(q) == "order-open(order) ");
}

TEST_CASE("an order without a pipe or its diameter or hitch is open")
{
    CHECK(finds(sizes_of({}), Code::order_open, "order"));
    CHECK(finds(sizes_of({800_mm, std::nullopt}), Code::order_open, "order"));
    Question q = good_use();
    q.order->hitch.reset();
    CHECK(codes(q) == "order-open(order) ");
    q.order->hitch = "none";
    CHECK(is_silent(q));
}

TEST_CASE("a dispatch without an order is open")
{
    Question q = good_use();
    q.order.reset();
    CHECK(finds(q, Code::order_open, ""));
}

TEST_CASE("a dispatch for repair or examination or return or scrap has no findings")
{
    for (const Purpose purpose : {Purpose::repair, Purpose::examination, Purpose::returned, Purpose::scrap}) {
        Question q;
        q.purpose = purpose;
        CHECK(is_silent(q));
    }
}

TEST_CASE("a dispatch is asked on its own day")
{
    Question q = good_use();
    report(q, Role::attachment).report_day = day("2026-11-26"); // after dispatch and before first use
    CHECK(finds(q, Code::exam_future, "A1"));
}

TEST_CASE("a dispatch is asked on the first day of use")
{
    CHECK(finds(latest("2026-11-29"), Code::exam_out_of_date, "A1"));
    CHECK_FALSE(finds(latest("2026-11-30"), Code::exam_out_of_date));
    CHECK(finding(latest("2026-11-29"), Code::exam_out_of_date, "A1")->measured == Figure{day("2026-11-30")});
}

TEST_CASE("a first day of use that is not known is after everything")
{
    Question q = good_use();
    q.order->first_use_day.reset();
    CHECK(finds(q, Code::exam_out_of_date, "A1"));
}

TEST_CASE("a finding of both days is given once") { CHECK(codes(latest("2026-11-24")) == "exam-out-of-date(A1) "); }

TEST_CASE("an examination that ends on the dispatch day is due")
{
    Question q = latest("2026-11-25");
    q.order->first_use_day = day("2026-11-25");
    q.site->warning_days = Days{0};
    CHECK(finds(q, Code::exam_due, "A1"));
    report(q, Role::attachment).latest = day("2026-11-26");
    CHECK_FALSE(finds(q, Code::exam_due));
}

TEST_CASE("evidence travels with a dispatch")
{
    Question q = good_use();
    report(q, Role::attachment).copy.here = false;
    CHECK(codes(q) == "evidence-missing(A1) ");
}

TEST_CASE("data and units are asked at dispatch")
{
    Question q = good_use();
    model(q, Role::attachment).proof.compared.clear();
    item(q, Role::sling).scrapped = true;
    CHECK(codes(q) == "data-unproved(model-A) unit-scrapped(S1) ");
}

TEST_CASE("clock and book are asked at dispatch")
{
    Question q = good_use();
    q.clock->notices = {ClockNotice{NoticeKind::jump, {}}};
    q.book->damaged = true;
    CHECK(codes(q) == "clock-jump() book-damaged() ");
}

TEST_CASE("the pipes of an order are asked where their size is known")
{
    Question q = good_use();
    q.order->pipes[0].proof.compared.clear();
    q.order->pipes[0].material = "clay";
    CHECK(codes(q) == "data-unproved(pipe-600) pipe-material(pipe-600) ");
    q.order->pipes[0].barrel.reset();
    CHECK(codes(q) == "order-open(order) ");
}

TEST_CASE("the load of each size is asked at dispatch")
{
    Question q = good_use();
    item(q, Role::attachment).plate = 1399_kg;
    CHECK(codes(q) == "attachment-over-rating(A1) ");
    q.move = Move{};
    q.move->water = 500_kg; // counts nothing
    item(q, Role::attachment).plate = 1600_kg;
    CHECK(is_silent(q));
}

TEST_CASE("what is not on the wagon counts nothing")
{
    Question q = good_use();
    for (const Role role : {Role::sling, Role::hook, Role::headplate}) {
        remove_report(q, role);
        remove_item(q, role);
    }
    CHECK(is_silent(q));
}

TEST_CASE("without an attachment on the wagon setting and pipe and load are not asked")
{
    Question q = good_use();
    remove_report(q, Role::attachment);
    remove_item(q, Role::attachment);
    item(q, Role::sling).sling->tag_to_45 = 1_kg;
    q.order->pipes[0].material = "clay";
    q.setting_records.clear();
    CHECK(is_silent(q));
}

TEST_CASE("the setting at dispatch is wrong only if it serves no size")
{
    CHECK(is_silent(sizes_of({800_mm, 650_mm})));
    CHECK(codes(sizes_of({650_mm})) == "setting-wrong(A1) ");
    CHECK(finds(sizes_of({650_mm, std::nullopt}), Code::setting_wrong, "A1"));
}

TEST_CASE("a size that no state serves is said at dispatch")
{
    CHECK(codes(sizes_of({800_mm, 710_mm})) == "setting-none(A1) ");
}

TEST_CASE("the setting is not asked at dispatch where no size is known")
{
    Question q = sizes_of({std::nullopt});
    q.setting_records.clear();
    CHECK(codes(q) == "order-open(order) ");
}

TEST_CASE("the setting is seen on the dispatch day")
{
    Question q = good_use();
    q.setting_records[1].by_eye = false;
    CHECK(codes(q) == "setting-unknown(A1) ");
}

TEST_CASE("a look in the day's first second counts, one of the second before it does not")
{
    Question q = good_use();
    q.setting_records[0].at = *q.shift->start - Instant{7200};
    q.setting_records[1].at = q.shift->start;
    CHECK(codes(q) == codes(good_use()));
    q.setting_records[1].at = *q.shift->start - Instant{1};
    CHECK(codes(q) == "setting-unknown(A1) ");
}

} // namespace cotter::rules
