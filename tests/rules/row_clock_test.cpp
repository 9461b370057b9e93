#include "good_question.hpp"

#include <doctest/doctest.h>

namespace cotter::rules {

namespace {

ClockConfirmation by_supervisor() { return {"sam", true, How::pin, minute(100)}; }

ClockConfirmation by_phone(const Id& person) { return {person, false, How::phone, minute(100)}; }

Question noticed(Known<NoticeKind> kind, std::vector<ClockConfirmation> confirmed)
{
    Question q = good_lift();
    q.clock->notices = {ClockNotice{kind, std::move(confirmed)}};
    return q;
}

const std::string back = "clock-back() ";

} // namespace

TEST_CASE("a clock set back and a clock that jumped each stop until confirmed")
{
    CHECK(codes(noticed(NoticeKind::back, {})) == back);
    CHECK(codes(noticed(NoticeKind::jump, {})) == "clock-jump() ");
    CHECK(is_silent(noticed(NoticeKind::back, {by_supervisor()})));
    CHECK(is_silent(noticed(NoticeKind::jump, {by_supervisor()})));
}

TEST_CASE("a notice of no known kind counts as set back") { CHECK(codes(noticed(std::nullopt, {})) == back); }

TEST_CASE("two people confirm from a phone and one does not")
{
    CHECK(codes(noticed(NoticeKind::back, {by_phone("olga")})) == back);
    CHECK(codes(noticed(NoticeKind::back, {by_phone("olga"), by_phone("olga")})) == back);
    CHECK(is_silent(noticed(NoticeKind::back, {by_phone("olga"), by_phone("sid")})));
}

TEST_CASE("two people who are no supervisors do not confirm by PIN")
{
    ClockConfirmation one = by_phone("olga"), two = by_phone("sid");
    one.how = How::pin;
    two.how.reset();
    CHECK(codes(noticed(NoticeKind::back, {one, two})) == back);
}

TEST_CASE("a confirmation without a person does not count")
{
    ClockConfirmation nobody = by_supervisor();
    nobody.by.reset();
    CHECK(codes(noticed(NoticeKind::back, {nobody})) == back);
}

TEST_CASE("a clock is confirmed to the newest record's time and never to one before it")
{
    CHECK(is_silent(noticed(NoticeKind::back, {by_supervisor()}))); // the newest record is of that second
    ClockConfirmation early = by_supervisor();
    early.to = minute(100) - Instant{1};
    CHECK(codes(noticed(NoticeKind::back, {early})) == back);
    early.to.reset();
    CHECK(codes(noticed(NoticeKind::back, {early})) == back);
}

TEST_CASE("with the newest record's time not known nothing confirms the clock")
{
    Question q = noticed(NoticeKind::back, {by_supervisor()});
    q.clock->newest_record_at.reset();
    CHECK(codes(q) == back);
}

TEST_CASE("each notice is confirmed for itself")
{
    Question q = noticed(NoticeKind::back, {by_supervisor()});
    q.clock->notices.push_back(ClockNotice{NoticeKind::jump, {}});
    CHECK(codes(q) == "clock-jump() ");
}

} // namespace cotter::rules
