// Row exam: what befell a unit and what clears it.

#include "good_question.hpp"

#include <doctest/doctest.h>

#include <array>

namespace cotter::rules {

namespace {

constexpr std::array grave{EventKind::overload, EventKind::repair, EventKind::welding, EventKind::alteration,
                           EventKind::accident};
constexpr std::array knocks{EventKind::knock, EventKind::slip, EventKind::drop};

Assessment fit_at(int minutes) { return {minute(minutes), true, true}; }

// Its check was done after it, so that only row exam speaks.
Question hook_after(EventKind kind)
{
    Question q = good_lift();
    q.events = {event(kind, "K1")};
    return q;
}

Question hook_assessed(EventKind kind, std::vector<Assessment> assessments)
{
    Question q = hook_after(kind);
    q.events[0].assessments = std::move(assessments);
    return q;
}

// With a later report after exceptional circumstances that names the event.
Question hook_examined_since(EventKind kind)
{
    Question q = hook_after(kind);
    q.reports.push_back(exceptional(q, Role::hook));
    q.reports.back().names_events = {"E1"};
    return q;
}

} // namespace

TEST_CASE("a grave event stops the unit that it befell")
{
    for (const EventKind kind : grave)
        CHECK(codes(hook_after(kind)) == "exam-event(K1) ");
}

TEST_CASE("a knock and its like stop the unit that they befell")
{
    for (const EventKind kind : knocks)
        CHECK(codes(hook_after(kind)) == "exam-event(K1) ");
}

TEST_CASE("an event of no known kind stops")
{
    Question q = hook_after(EventKind::knock);
    q.events[0].kind.reset();
    CHECK(finds(q, Code::exam_event, "K1"));
}

TEST_CASE("an event stops from its own day on")
{
    Question q = hook_after(EventKind::overload);
    CHECK(finds(q, Code::exam_event, "K1"));
    q.events[0].day = day("2026-11-26");
    CHECK_FALSE(finds(q, Code::exam_event));
}

TEST_CASE("an event without a day stops")
{
    Question q = hook_after(EventKind::overload);
    q.events[0].day.reset();
    CHECK(finds(q, Code::exam_event, "K1"));
}

TEST_CASE("an accident stops every unit that it names")
{
    Question q = hook_after(EventKind::accident);
    q.events[0].units = {"A1", "H1", "M1"};
    CHECK(codes(q) == "exam-event(A1) exam-event(H1) exam-event(M1) ");
}

TEST_CASE("a repair that is not structural does not stop and one of unknown kind does")
{
    Question q = hook_after(EventKind::repair);
    CHECK(finds(q, Code::exam_event, "K1"));
    q.events[0].structural = true;
    CHECK(finds(q, Code::exam_event, "K1"));
    q.events[0].structural = false;
    CHECK(is_silent(q));
}

TEST_CASE("lay-up is no event") { CHECK(is_silent(hook_after(EventKind::lay_up))); }

TEST_CASE("like-for-like parts are no event if the model lists them")
{
    Question q = hook_after(EventKind::like_for_like);
    CHECK(finds(q, Code::exam_event, "K1"));
    q.events[0].part = "latch";
    CHECK(finds(q, Code::exam_event, "K1"));
    model(q, Role::hook).like_for_like = {"latch"};
    CHECK(is_silent(q));
}

TEST_CASE("a full examination on a later day clears any event and one of the same day does not")
{
    for (const EventKind kind : grave) {
        Question q = hook_after(kind);
        q.events[0].day = report(q, Role::hook).examined;
        CHECK(codes(q) == "exam-event(K1) ");
        q.events[0].day = day("2026-08-31"); // the day before
        CHECK(is_silent(q));
    }
}

TEST_CASE("an examination of the event's day clears it if it names it and says safe")
{
    for (const EventKind kind : grave)
        CHECK(is_silent(hook_examined_since(kind)));
}

TEST_CASE("an examination that does not name the event does not clear it")
{
    Question q = hook_examined_since(EventKind::overload);
    q.reports.back().names_events = {"E2"};
    CHECK(finds(q, Code::exam_event, "K1"));
}

TEST_CASE("an examination that does not say safe does not clear the event that it names")
{
    Question q = hook_examined_since(EventKind::overload);
    q.reports.back().safe.reset();
    CHECK(finds(q, Code::exam_event, "K1"));
    q.reports.back().safe = false;
    CHECK(finds(q, Code::exam_event, "K1"));
}

TEST_CASE("an examination before the event's day does not clear it")
{
    Question q = hook_examined_since(EventKind::overload);
    q.reports.back().examined = day("2026-11-24");
    CHECK(finds(q, Code::exam_event, "K1"));
}

TEST_CASE("an event without a day is cleared by any examination that names it")
{
    Question q = hook_examined_since(EventKind::overload);
    q.events[0].day.reset();
    q.reports.back().examined = day("2026-09-03");
    CHECK_FALSE(finds(q, Code::exam_event));
    q.reports.back().names_events.clear();
    CHECK(finds(q, Code::exam_event, "K1"));
}

TEST_CASE("an examination of another unit does not clear the event")
{
    Question q = hook_examined_since(EventKind::overload);
    q.reports.back().units = {"S1"};
    CHECK(finds(q, Code::exam_event, "K1"));
}

TEST_CASE("an examination of tomorrow does not clear the event")
{
    Question q = hook_examined_since(EventKind::overload);
    q.reports.back().report_day = day("2026-11-26");
    CHECK(finds(q, Code::exam_event, "K1"));
}

TEST_CASE("an interim statement clears the events that it names and no other")
{
    Question q = hook_after(EventKind::overload);
    Interim interim;
    interim.id = "interim";
    interim.examined = day("2026-11-25");
    interim.names_events = {"E1"};
    interim.copy = Copy{true, true};
    interim.signed_ = interim.by_competent = interim.safe = true;
    interim.swl = 9000_kg;
    item(q, Role::hook).interims = {interim};
    CHECK(is_silent(q));
    q.events[0].day = day("2026-11-24"); // an interim statement is no full examination of a later day
    item(q, Role::hook).interims[0].names_events.clear();
    CHECK(finds(q, Code::exam_event, "K1"));
}

TEST_CASE("a knock is cleared by a competent person who says fit")
{
    for (const EventKind kind : knocks)
        CHECK(is_silent(hook_assessed(kind, {fit_at(20)})));
}

TEST_CASE("an assessment does not clear a grave event")
{
    for (const EventKind kind : grave)
        CHECK(finds(hook_assessed(kind, {fit_at(20)}), Code::exam_event, "K1"));
}

TEST_CASE("an assessment by somebody not competent or that does not say fit clears nothing")
{
    for (const Assessment& each : {Assessment{minute(20), false, true}, Assessment{minute(20), true, false},
                                   Assessment{minute(20), std::nullopt, true},
                                   Assessment{minute(20), true, std::nullopt}, Assessment{std::nullopt, true, true}})
        CHECK(finds(hook_assessed(EventKind::drop, {each}), Code::exam_event, "K1"));
}

TEST_CASE("the newest assessment counts")
{
    const Assessment unfit{minute(20), true, false};
    CHECK(finds(hook_assessed(EventKind::drop, {fit_at(19), unfit}), Code::exam_event, "K1"));
    CHECK(is_silent(hook_assessed(EventKind::drop, {fit_at(21), unfit})));
    CHECK(is_silent(hook_assessed(EventKind::drop, {unfit, fit_at(21)})));
}

TEST_CASE("of two assessments of one instant the safer counts in any order")
{
    const Assessment unfit{minute(20), true, false};
    CHECK(finds(hook_assessed(EventKind::drop, {fit_at(20), unfit}), Code::exam_event, "K1"));
    CHECK(finds(hook_assessed(EventKind::drop, {unfit, fit_at(20)}), Code::exam_event, "K1"));
}

TEST_CASE("a touch is a caution until two people have looked at it")
{
    Question q = hook_after(EventKind::touch);
    CHECK(codes(q) == "event-touch(K1) ");
    q.events[0].looked_by = {"olga"};
    CHECK(codes(q) == "event-touch(K1) ");
    q.events[0].looked_by = {"olga", "sid"};
    CHECK(is_silent(q));
}

TEST_CASE("one person who looks twice at a touch is one")
{
    Question q = hook_after(EventKind::touch);
    q.events[0].looked_by = {"olga", "olga"};
    CHECK(codes(q) == "event-touch(K1) ");
}

TEST_CASE("a touch of an earlier shift still wants looking at")
{
    Question q = hook_after(EventKind::touch);
    q.events[0].day = day("2026-05-01");
    q.events[0].at = minute(-300'000);
    CHECK(codes(q) == "event-touch(K1) ");
}

} // namespace cotter::rules
