// What each person does becomes a record that its kind accepts; and whether the clock is believed.

#include "clock.hpp"
#include "decide.hpp"
#include "decision_form.hpp"
#include "fake_book.hpp"
#include "kinds.hpp"
#include "local_time.hpp"
#include "work.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using namespace cotter::desk;
using cotter::tests::FakeBook;

TEST_SUITE_BEGIN("work");

namespace {

constexpr rules::Instant morning{1795590000}; // 2026-11-25T07:00:00Z

Hand some_hand()
{
    Hand hand;
    hand.by = "farrow";
    hand.at = morning;
    hand.day = rules::utc_day(morning);
    hand.boot = "boot-1";
    hand.boot_seconds = 1000;
    return hand;
}

Json written(const rules::Question& question)
{
    const auto code = [](rules::Code each) { return std::string{rules::name(each)}; };
    return records::write_decision(rules::decide(question),
                                   {[&](const rules::Finding& each) { return code(each.code); }, code, code});
}

std::vector<Entry> every_act()
{
    const Hand hand = some_hand();
    const FakeBook book;
    const rules::Question question;
    return {open_a_shift(hand, "s", 8 * 3600, "Europe/London"),
            stand_down(hand, "shift"),
            check_a_unit(hand, book, "u", "m", {{"pin", "right", ""}, {"jaw", "stop", "bent"}}),
            see_the_setting(hand, "u", "hole 1"),
            change_the_setting(hand, "u", "hole 1"),
            see_the_lock(hand, "h", true),
            prove_devices(hand, "m", true, false),
            confirm_place(hand, "s", "B", true, true, true, true),
            inspect_trench(hand, "s", "B", true),
            name_people(hand, book, "s", {{"supervisor", "hallam"}}),
            brief(hand, {{"id", "plan"}, {"issue", 2}}, "iqbal"),
            compare(hand, "model", "m"),
            call_a_stop(hand, "u", "bent"),
            something_happened(hand, "knock", "u", "a strut"),
            ask_for_a_lift(hand, question, written(question)),
            lift_step(hand, "picked_up", "lift"),
            lift_step(hand, "set_down", "lift"),
            lift_step(hand, "lift_done", "lift")};
}

// The newest record, by this boot or another.
records::Record last_record(std::int64_t seconds, const std::string& boot, std::int64_t boot_seconds)
{
    records::Record record;
    record.entry.at = morning + rules::Instant{seconds};
    record.entry.boot = boot;
    record.entry.boot_seconds = boot_seconds;
    return record;
}

// "back", "jump" or "" for a wall clock so many seconds from the newest record, the boot clock at 1000.
std::string notice(const FakeBook& book, std::int64_t seconds)
{
    const auto notices =
        watch_the_clock(some_hand(), book, {morning + rules::Instant{seconds}, rules::Instant{0}, "boot-1", 1000});
    if (notices.empty())
        return "";
    CHECK(notices.size() == 1);
    records::check_body(*records::find_kind("clock_notice"), notices[0].body);
    return notices[0].body["kind"].get<std::string>();
}

} // namespace

TEST_CASE("every act makes a record that its kind accepts, with whose fact it is, who wrote it and when")
{
    for (const Entry& each : every_act()) {
        CAPTURE(each.kind);
        const records::Kind* kind = records::find_kind(each.kind);
        REQUIRE(kind != nullptr);
        CHECK_NOTHROW(records::check_body(*kind, each.body));
        CHECK(each.about != "");
        CHECK(each.who == "farrow");
        CHECK(each.by == "farrow");
        CHECK(each.at == morning);
        CHECK(rules::to_string(each.day) == "2026-11-25");
        CHECK(each.boot == "boot-1");
    }
}

TEST_CASE("a shift is at most fourteen hours, and may cross midnight")
{
    const Json body = open_a_shift(some_hand(), "s", 20 * 3600, "Europe/London").body;
    CHECK(body["end"].get<std::int64_t>() - body["start"].get<std::int64_t>() == 14 * 3600);
    CHECK(body["last_day"] == "2026-11-25");
    CHECK(open_a_shift(some_hand(), "s", 14 * 3600, "Pacific/Auckland").body["last_day"] == "2026-11-26");
}

TEST_CASE("people named for a shift that crosses midnight stay named until its end")
{
    const auto at = [](const char* text) { return *parse_instant(text); };
    FakeBook book;
    book.with("site", "s", {{"zone", "Europe/London"}})
        .with("shift", "night",
              {{"site", "s"},
               {"start", at("2026-11-25T18:00:00Z").count()},
               {"end", at("2026-11-26T05:00:00Z").count()}});
    const auto day = [&](const char* now) { return rules::to_string(working_day(book, "s", at(now))); };
    CHECK(day("2026-11-25T23:59:59Z") == "2026-11-25");
    CHECK(day("2026-11-26T00:00:00Z") == "2026-11-25");
    CHECK(day("2026-11-26T05:00:00Z") == "2026-11-25");
    CHECK(day("2026-11-26T05:00:01Z") == "2026-11-26");
    CHECK(day("2026-11-25T12:00:00Z") == "2026-11-25");
    Hand hand = some_hand();
    hand.at = at("2026-11-26T00:30:00Z");
    CHECK(name_people(hand, book, "s", {}).body["day"] == "2026-11-25");
}

TEST_CASE("a lift that was asked for carries the question, the whole decision and the edition of the rules")
{
    rules::Question question;
    question.id = "q";
    question.purpose = rules::Purpose::lift;
    const Json decision = written(question);
    const Entry asked = ask_for_a_lift(some_hand(), question, decision);
    CHECK(asked.about == "lift 2026-11-25T07:00:00Z");
    CHECK(asked.body["question"]["id"] == "q");
    CHECK(asked.body["outcome"] == "do_not_lift");
    REQUIRE(asked.body["findings"].size() > 5);
    CHECK(asked.body["findings"] == decision["findings"]);
    CHECK(asked.body["findings"][0]["says"] == asked.body["findings"][0]["code"]);
    CHECK(asked.body["findings"][0]["clears"] == asked.body["findings"][0]["code"]);
    CHECK(asked.body["edition"] == rules::edition);
}

TEST_CASE("a number that is not whole stands in a record as text")
{
    const Json decision = {{"findings", {{{"measured", 1234.5}, {"limit", 1234}}}}};
    CHECK(records::in_whole_numbers(decision)["findings"][0] == Json{{"measured", "1234.5"}, {"limit", 1234}});
}

TEST_CASE("within one boot the clock is believed as long as it drifts no more than two minutes from the boot clock")
{
    FakeBook book;
    book.with(last_record(0, "boot-1", 940)); // a minute ago by the boot clock
    CHECK(notice(book, 60) == "");
    CHECK(notice(book, 60 + 120) == "");
    CHECK(notice(book, 60 + 121) == "jump");
    CHECK(notice(book, 0) == "");
    CHECK(notice(book, -1) == "back");
}

TEST_CASE("a clock that fell back within one boot is found before it passes the newest record")
{
    FakeBook book;
    book.with(last_record(0, "boot-1", 500)); // 500 s ago by the boot clock
    CHECK(notice(book, 500 - 120) == "");
    CHECK(notice(book, 500 - 121) == "back");
}

TEST_CASE("across boots only a clock before the newest record is a notice")
{
    FakeBook book;
    book.with(last_record(0, "boot-0", 5));
    CHECK(notice(book, 0) == "");
    CHECK(notice(book, 86'400 * 30) == "");
    CHECK(notice(book, -1) == "back");
}

TEST_CASE("a clock before the program was built is a notice")
{
    FakeBook book;
    book.with(last_record(0, "boot-0", 5));
    const auto notices = [&](std::int64_t built) {
        return watch_the_clock(some_hand(), book, {morning, rules::Instant{built}, "boot-1", 1000});
    };
    CHECK(notices(morning.count()).empty());
    REQUIRE(notices(morning.count() + 1).size() == 1);
    CHECK(notices(morning.count() + 1)[0].body["kind"] == "back");
}

TEST_CASE("a notice that nobody has confirmed is not written again")
{
    FakeBook book;
    book.with(last_record(0, "boot-0", 5)).with("clock", "h", {{"kind", "back"}, {"confirmed", Json::array()}});
    CHECK(notice(book, -1) == "");
    FakeBook confirmed;
    confirmed.with(last_record(0, "boot-0", 5))
        .with("person", "hallam", {{"admission", {{"roles", {"supervisor"}}}}})
        .with("clock", "h",
              {{"kind", "back"},
               {"confirmed",
                {{{"by", "hallam"}, {"roles", {"supervisor"}}, {"at", morning.count()}, {"to", morning.count()}}}}});
    CHECK(notice(confirmed, -1) == "back");
    FakeBook by_another;
    by_another.with(last_record(0, "boot-0", 5))
        .with("clock", "h",
              {{"kind", "back"},
               {"confirmed",
                {{{"by", "farrow"}, {"roles", {"operator"}}, {"at", morning.count()}, {"to", morning.count()}}}}});
    CHECK(notice(by_another, -1) == "");
}

TEST_CASE("an empty book and a sample book have no clock to be watched")
{
    CHECK(notice(FakeBook{}, -1000) == "");
    FakeBook sample;
    sample.as_sample().with(last_record(0, "boot-1", 940));
    CHECK(notice(sample, -1000) == "");
}

TEST_CASE("a unit is found by tag, by owner and serial and by its id, and by nothing else")
{
    FakeBook book;
    book.with("unit", "u-1", {{"tag", "PC-07"}, {"owner_firm", "Fenwold"}, {"serial", "1"}})
        .with("unit", "u-2", {{"tag", "PC-08"}, {"owner_firm", "Fenwold"}, {"serial", "2"}});
    for (const char* name : {"PC-07", "Fenwold/1", "u-1"})
        CHECK(find_unit(book, name) == "u-1");
    for (const char* name : {"pc-07", "Fenwold", "Fenwold/3", "", "/"})
        CHECK_THROWS_AS(find_unit(book, name), NotFound);
    book.with("unit", "u-3", {{"tag", "PC-07"}, {"owner_firm", "Ridgeway"}, {"serial", "1"}});
    CHECK_THROWS_AS(find_unit(book, "PC-07"), NotFound);
    CHECK(label_of(book, "u-1") == "PC-07 (Fenwold)");
    CHECK(find_unit(book, "PC-07 (Fenwold)") == "u-1");
    CHECK(label_of(book, "u-2") == "PC-08");
}

TEST_SUITE_END();
