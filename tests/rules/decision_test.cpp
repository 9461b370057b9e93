#include "good_question.hpp"

#include <doctest/doctest.h>

#include <set>
#include <tuple>
#include <utility>

namespace cotter::rules {

TEST_CASE("a lift with everything in order may lift and has nothing to say")
{
    const Question q = good_lift();
    CAPTURE(codes(q));
    CHECK(is_silent(q));
    CHECK(decide(q).may_lift());
}

TEST_CASE("a dispatch for use with everything in order has nothing to say")
{
    const Question q = good_use();
    CAPTURE(codes(q));
    CHECK(is_silent(q));
}

TEST_CASE("a caution does not stop a lift")
{
    Question q = good_lift();
    q.site->warning_days = Days{200}; // every report is due in 96 days
    CHECK(finds(q, Code::exam_due, "A1"));
    CHECK(decide(q).may_lift());
}

TEST_CASE("a note does not stop a lift")
{
    Question q = good_lift();
    item(q, Role::attachment).owner = Owner::own;
    item(q, Role::attachment).between_own_sites = true;
    report(q, Role::attachment).copy.here = false;
    CHECK(codes(q) == "evidence-own-sites(A1) ");
    CHECK(decide(q).may_lift());
}

TEST_CASE("one stop is enough not to lift")
{
    Question q = good_lift();
    q.book->forked = true;
    CHECK(codes(q) == "book-forked() ");
    CHECK_FALSE(decide(q).may_lift());
}

TEST_CASE("a lift asked with nothing known has an answer and does not lift")
{
    Question q;
    q.purpose = Purpose::lift;
    CAPTURE(codes(q));
    CHECK_FALSE(decide(q).may_lift());
    for (const Code code :
         {Code::load_unknown, Code::sling_unrated, Code::hitch_unseen, Code::chart_none, Code::plan_none,
          Code::place_unconfirmed, Code::trench_unchecked, Code::thread_unknown, Code::book_unchecked})
        CHECK(finds(q, code, ""));
    for (const char* role : {"operator", "supervisor", "signaller"})
        CHECK(finds(q, Code::person_none, role));
}

TEST_CASE("every item without a fact has an answer and does not lift")
{
    for (const Role role : {Role::machine, Role::hitch, Role::headplate, Role::hook, Role::sling, Role::attachment}) {
        Question q = good_lift();
        Item& bare = item(q, role);
        const Id tag = bare.tag;
        bare = Item{};
        bare.role = role;
        bare.tag = tag;
        CAPTURE(tag);
        CHECK_FALSE(decide(q).may_lift());
    }
}

TEST_CASE("an item without a role has an answer")
{
    Question q = good_lift();
    item(q, Role::hook).role.reset();
    CHECK_FALSE(decide(q).findings.size() > 200);
}

TEST_CASE("a dispatch asked with nothing known has an answer")
{
    CHECK(finds(Question{}, Code::order_open, ""));
    CHECK(finds(Question{}, Code::book_unchecked, ""));
}

TEST_CASE("a day that is not known is after everything")
{
    Question q = good_lift();
    q.day.reset();
    CHECK(finds(q, Code::exam_out_of_date, "A1"));
    CHECK(finds(q, Code::plan_out_of_date, "plan"));
    CHECK(finds(q, Code::card_expired, "olga"));
}

TEST_CASE("with no shift open nothing was done this shift")
{
    Question q = good_lift();
    q.shift.reset();
    for (const Code code : {Code::check_none, Code::setting_unknown, Code::hitch_unseen, Code::place_unconfirmed,
                            Code::trench_unchecked, Code::machine_device})
        CHECK(finds(q, code));
}

TEST_CASE("this shift reaches from 60 minutes before its start")
{
    Question q = good_lift();
    q.trench->inspections[0].at = minute(-60);
    CHECK_FALSE(finds(q, Code::trench_unchecked));
    q.trench->inspections[0].at = minute(-60) - Instant{1};
    CHECK(finds(q, Code::trench_unchecked));
}

TEST_CASE("this shift is not later than now")
{
    Question q = good_lift();
    q.trench->inspections[0].at = minute(180);
    CHECK_FALSE(finds(q, Code::trench_unchecked));
    q.trench->inspections[0].at = minute(180) + Instant{1};
    CHECK(finds(q, Code::trench_unchecked));
}

TEST_CASE("at the end of the shift it is still open and a second later it is not")
{
    Question q = good_lift();
    q.now = minute(600);
    CHECK(is_silent(q));
    q.now = minute(600) + Instant{1};
    CHECK(finds(q, Code::trench_unchecked));
}

TEST_CASE("60 minutes before the shift it is open and a second earlier it is not")
{
    Question q = good_lift();
    q.trench->inspections[0].at = minute(-60);
    q.now = minute(-60);
    CHECK_FALSE(finds(q, Code::trench_unchecked));
    q.now = minute(-60) - Instant{1};
    CHECK(finds(q, Code::trench_unchecked));
}

TEST_CASE("an inspection without a time was not made this shift")
{
    Question q = good_lift();
    q.trench->inspections[0].at.reset();
    CHECK(finds(q, Code::trench_unchecked));
}

TEST_CASE("a now that is not known leaves nothing done this shift")
{
    Question q = good_lift();
    q.now.reset();
    CHECK(finds(q, Code::trench_unchecked));
}

namespace {

// Stops, cautions and notes of several rows and items, so that the order shows.
Question much_to_say()
{
    Question q = good_lift();
    q.book->damaged = true;
    q.site->warning_days = Days{200};
    for (const Role role : {Role::sling, Role::attachment, Role::hook}) {
        item(q, role).off_hire = true;
        item(q, role).scrapped = true;
        item(q, role).owner = Owner::own;
        item(q, role).between_own_sites = true;
        report(q, role).copy.here = false;
    }
    return q;
}

auto place_in_order(const Finding& each)
{
    return std::make_tuple(weight(each.code), row(each.code), each.about, each.code);
}

} // namespace

TEST_CASE("findings stand by weight then row then about then place in the row")
{
    const auto found = decide(much_to_say()).findings;
    REQUIRE(found.size() > 10);
    for (std::size_t i = 1; i < found.size(); ++i) {
        CAPTURE(name(found[i].code));
        CHECK(place_in_order(found[i - 1]) < place_in_order(found[i]));
    }
}

TEST_CASE("stops come first in the order of their units and notes last")
{
    const std::string all = codes(much_to_say());
    CAPTURE(all);
    CHECK(all.starts_with("unit-off-hire(A1) unit-scrapped(A1) unit-off-hire(K1) unit-scrapped(K1) unit-off-hire(S1) "
                          "unit-scrapped(S1) book-damaged() exam-due(A1)"));
    CHECK(all.ends_with("evidence-own-sites(A1) evidence-own-sites(K1) evidence-own-sites(S1) "));
}

TEST_CASE("abouts are ordered by their bytes")
{
    Question q = good_lift();
    item(q, Role::hook).tag = "k1"; // small letters after capitals
    for (const Role role : {Role::sling, Role::hook})
        item(q, role).scrapped = true;
    const std::string all = codes(q);
    CHECK(all.find("unit-scrapped(S1)") < all.find("unit-scrapped(k1)"));
}

TEST_CASE("there is at most one finding for a code and what it is about")
{
    Question q = much_to_say();
    for (int i = 0; i < 3; ++i) {
        q.events.push_back(event(EventKind::drop, "A1"));
        item(q, Role::attachment).stops.push_back(Stop{"stop", false});
    }
    std::set<std::pair<Code, std::string>> seen;
    for (const Finding& each : decide(q).findings)
        CHECK(seen.insert({each.code, each.about}).second);
}

TEST_CASE("the same code about two units gives two findings")
{
    Question q = good_lift();
    item(q, Role::hook).scrapped = true;
    item(q, Role::sling).scrapped = true;
    CHECK(codes(q) == "unit-scrapped(K1) unit-scrapped(S1) ");
}

} // namespace cotter::rules
