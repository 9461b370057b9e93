#include "good_question.hpp"

#include <doctest/doctest.h>

#include <array>
#include <stdexcept>

namespace cotter::rules {

namespace {

Answer& answer(Question& q, const Id& unit, const Id& line)
{
    for (Answer& each : q.answers)
        if (each.unit == unit && each.item == line)
            return each;
    throw std::out_of_range{"no such answer"};
}

Question attachment_answered_at(const Id& line, Instant at)
{
    Question q = good_lift();
    answer(q, "A1", line).at = at;
    return q;
}

Question hook_answered(Answered what, std::vector<ClearedBy> cleared)
{
    Question q = good_lift();
    answer(q, "K1", "body").answer = what;
    answer(q, "K1", "body").cleared = std::move(cleared);
    return q;
}

constexpr std::array checked{Role::machine, Role::hitch, Role::hook, Role::sling, Role::attachment};

} // namespace

TEST_CASE("every unit with a sheet of its own is checked this shift")
{
    for (const Role role : checked) {
        Question q = good_lift();
        const Id tag = item(q, role).tag;
        answer(q, tag, "body").at = minute(-61);
        CHECK(codes(q) == "check-none(" + tag + ") ");
        answer(q, tag, "body").at.reset();
        CHECK(codes(q) == "check-none(" + tag + ") ");
    }
}

TEST_CASE("one item that is not answered leaves the check not done")
{
    Question q = good_lift();
    answer(q, "A1", "lock").answer.reset();
    CHECK(codes(q) == "check-none(A1) ");
    CHECK(finding(q, Code::check_none, "A1")->measured == Figure{2.0});
    CHECK(finding(q, Code::check_none, "A1")->limit == Figure{3.0});
}

TEST_CASE("a unit without a sheet is not checked")
{
    Question q = good_lift();
    item(q, Role::hook).sheet.clear();
    CHECK(codes(q) == "check-none(K1) ");
}

TEST_CASE("an answer about another unit does not count")
{
    Question q = good_lift();
    answer(q, "K1", "body").unit = "K2";
    CHECK(codes(q) == "check-none(K1) ");
}

TEST_CASE("the headplate has no sheet of its own")
{
    Question q = good_lift();
    item(q, Role::headplate).sheet.clear();
    CHECK(is_silent(q));
}

TEST_CASE("an answer given for another operator is stale")
{
    for (const Known<Id>& by : {Known<Id>{"oscar"}, Known<Id>{}}) {
        Question q = good_lift();
        answer(q, "K1", "body").by = by;
        CHECK(codes(q) == "check-stale(K1) ");
    }
}

TEST_CASE("an answer given on another machine is stale")
{
    for (const Known<Id>& machine : {Known<Id>{"M2"}, Known<Id>{}}) {
        Question q = good_lift();
        answer(q, "K1", "body").machine = machine;
        CHECK(codes(q) == "check-stale(K1) ");
    }
}

TEST_CASE("answering a stale item again suffices")
{
    Question q = good_lift();
    Answer earlier = answer(q, "K1", "body");
    earlier.by = "oscar";
    earlier.at = minute(89);
    q.answers.push_back(earlier);
    CHECK(is_silent(q));
}

TEST_CASE("of two answers of one instant the stale one counts")
{
    Question q = good_lift();
    Answer twin = answer(q, "K1", "body");
    twin.by = "oscar";
    q.answers.push_back(twin);
    CHECK(codes(q) == "check-stale(K1) ");
}

TEST_CASE("an item marked for coupling is stale if older than the coupling")
{
    CHECK(is_silent(attachment_answered_at("lock", minute(60))));
    CHECK(codes(attachment_answered_at("lock", minute(60) - Instant{1})) == "check-stale(A1) ");
}

TEST_CASE("an item that is not marked outlasts a coupling and a change of setting")
{
    CHECK(is_silent(attachment_answered_at("body", minute(0))));
}

TEST_CASE("with the coupling not known an item marked for it is stale unless there is no hitch")
{
    Question q = good_lift();
    q.coupled_at.reset();
    CHECK(finds(q, Code::check_stale, "A1"));
    remove_report(q, Role::hitch);
    remove_item(q, Role::hitch);
    CHECK(finds(q, Code::check_stale, "A1"));
    q.no_hitch = true;
    CHECK_FALSE(finds(q, Code::check_stale, "A1"));
}

TEST_CASE("an item marked for the setting is stale if older than its change")
{
    CHECK(is_silent(attachment_answered_at("pin", minute(30))));
    CHECK(codes(attachment_answered_at("pin", minute(30) - Instant{1})) == "check-stale(A1) ");
}

TEST_CASE("a change of setting at an unknown time makes an item marked for it stale")
{
    Question q = good_lift();
    q.setting_records[0].at.reset();
    CHECK(finds(q, Code::check_stale, "A1"));
}

TEST_CASE("an event of the unit makes an older answer stale")
{
    Question q = good_lift();
    q.events = {event(EventKind::drop, "K1")};
    q.events[0].at = minute(90);
    CHECK_FALSE(finds(q, Code::check_stale));
    q.events[0].at = minute(90) + Instant{1};
    CHECK(finds(q, Code::check_stale, "K1"));
}

TEST_CASE("an event without an instant is after every answer")
{
    Question q = good_lift();
    q.events = {event(EventKind::drop, "K1")};
    q.events[0].at.reset();
    CHECK(finds(q, Code::check_stale, "K1"));
}

TEST_CASE("a touch and lay-up make no answer stale")
{
    for (const EventKind kind : {EventKind::touch, EventKind::lay_up}) {
        Question q = good_lift();
        q.events = {event(kind, "K1")};
        q.events[0].at = minute(100);
        CHECK_FALSE(finds(q, Code::check_stale));
    }
}

TEST_CASE("a repair that is not structural still makes an older answer stale")
{
    Question q = good_lift();
    q.events = {event(EventKind::repair, "K1")};
    q.events[0].structural = false;
    q.events[0].at = minute(100);
    CHECK(codes(q) == "check-stale(K1) ");
}

TEST_CASE("an event of the headplate makes the attachment's check stale")
{
    Question q = good_lift();
    q.events = {event(EventKind::drop, "P1")};
    q.events[0].at = minute(100);
    CHECK(finds(q, Code::check_stale, "A1"));
}

TEST_CASE("an answer that says stop stops until somebody entitled clears it")
{
    CHECK(codes(hook_answered(Answered::stop, {})) == "check-stopped(K1) ");
    CHECK(is_silent(hook_answered(Answered::stop, {ClearedBy{"sam", true}})));
}

TEST_CASE("a clearing by somebody not entitled or by the one who answered does not count")
{
    for (const ClearedBy& each : {ClearedBy{"sam", false}, ClearedBy{"sam", std::nullopt}, ClearedBy{"olga", true},
                                  ClearedBy{std::nullopt, true}})
        CHECK(codes(hook_answered(Answered::stop, {each})) == "check-stopped(K1) ");
}

TEST_CASE("a later right does not clear a stop of any shift")
{
    Question q = good_lift();
    Answer earlier = answer(q, "K1", "body");
    earlier.answer = Answered::stop;
    for (const Known<Instant> at : {Known<Instant>{minute(80)}, Known<Instant>{minute(-50'000)}, Known<Instant>{}}) {
        earlier.at = at;
        Question asked = q;
        asked.answers.push_back(earlier);
        CHECK(codes(asked) == "check-stopped(K1) ");
    }
}

TEST_CASE("an answer that says report is a caution until it is cleared")
{
    CHECK(codes(hook_answered(Answered::report, {})) == "check-report(K1) ");
    CHECK(is_silent(hook_answered(Answered::report, {ClearedBy{"sam", true}})));
    CHECK(codes(hook_answered(Answered::report, {ClearedBy{"olga", true}})) == "check-report(K1) ");
}

} // namespace cotter::rules
