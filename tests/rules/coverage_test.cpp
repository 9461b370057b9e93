// Every code there is: its name, row and weight, and one change of the good question that brings it up.
// A code without an entry here fails.

#include "good_question.hpp"

#include <doctest/doctest.h>

#include <array>
#include <set>

namespace cotter::rules {

namespace {

enum class From { lift, use };

struct Entry {
    Code code;
    const char* about;
    void (*change)(Question&);
    From from = From::lift;
};

Report& of(Question& q, Role role) { return report(q, role); }
Sling& sling(Question& q) { return *item(q, Role::sling).sling; }
Model& grab(Question& q) { return model(q, Role::attachment); }
Person& operator_(Question& q) { return *q.people["operator"]; }

template <Role role> void unrate(Question& q)
{
    item(q, role).plate.reset();
    model(q, role).rating.reset();
}

template <Role role, std::int64_t kg> void rate(Question& q) { item(q, role).plate = Kilograms{kg}; }

template <std::int64_t kg> void rate_chart(Question& q)
{
    for (Cell& each : q.chart->cells)
        each.rated = Kilograms{kg};
}

void set_all(Question& q, const Id& state)
{
    for (SettingRecord& each : q.setting_records)
        each.state = state;
}

void could_become(Question& q)
{
    of(q, Role::hook).defects = {Defect{"D1", Danger::could_become, day("2026-12-31"), std::nullopt}};
}

template <NoticeKind kind> void notice(Question& q) { q.clock->notices = {ClockNotice{kind, {}}}; }

const std::vector<Entry>& entries()
{
    static const std::vector<Entry> all{
        {Code::exam_none, "K1", [](Question& q) { remove_report(q, Role::hook); }},
        {Code::exam_future, "K1", [](Question& q) { of(q, Role::hook).report_day = day("2026-11-26"); }},
        {Code::exam_out_of_date, "K1", [](Question& q) { of(q, Role::hook).latest = day("2026-11-24"); }},
        {Code::exam_unsafe, "K1", [](Question& q) { of(q, Role::hook).safe = false; }},
        {Code::exam_incomplete, "K1", [](Question& q) { of(q, Role::hook).swl.reset(); }},
        {Code::exam_config, "K1",
         [](Question& q) {
             of(q, Role::hook).configurations = {{"tip", 9000_kg}};
         }},
        {Code::exam_event, "K1", [](Question& q) { q.events = {event(EventKind::overload, "K1")}; }},
        {Code::exam_due, "K1", [](Question& q) { of(q, Role::hook).latest = day("2026-12-09"); }},
        {Code::exam_particulars, "K1", [](Question& q) { of(q, Role::hook).particulars.tests.reset(); }},
        {Code::exam_defect_dated, "K1", could_become},
        {Code::exam_long, "K1", [](Question& q) { of(q, Role::hook).latest = day("2027-03-02"); }},
        {Code::event_touch, "K1", [](Question& q) { q.events = {event(EventKind::touch, "K1")}; }},
        {Code::evidence_missing, "K1", [](Question& q) { of(q, Role::hook).copy.here = false; }},
        {Code::evidence_own_sites, "K1",
         [](Question& q) {
             of(q, Role::hook).copy.here = false;
             item(q, Role::hook).owner = Owner::own;
             item(q, Role::hook).between_own_sites = true;
         }},
        {Code::data_unproved, "chart", [](Question& q) { q.chart->proof.compared.clear(); }},
        {Code::fact_disputed, "K1", [](Question& q) { item(q, Role::hook).disputed = {"plate_kg"}; }},
        {Code::check_none, "K1", [](Question& q) { item(q, Role::hook).sheet.clear(); }},
        {Code::check_stale, "A1", [](Question& q) { q.coupled_at = minute(91); }},
        {Code::check_stopped, "M1", [](Question& q) { q.answers[0].answer = Answered::stop; }},
        {Code::check_report, "M1", [](Question& q) { q.answers[0].answer = Answered::report; }},
        {Code::setting_unknown, "A1", [](Question& q) { q.setting_records.clear(); }},
        {Code::setting_disputed, "A1", [](Question& q) { q.setting_records[1].state = "hole 1"; }},
        {Code::setting_none, "A1", [](Question& q) { q.pipe->barrel = 720_mm; }},
        {Code::setting_wrong, "A1", [](Question& q) { set_all(q, "hole 1"); }},
        {Code::setting_unseen, "A1", [](Question& q) { q.setting_records[1].own_pin = false; }},
        {Code::pipe_size, "pipe-600", [](Question& q) { q.pipe->bore = 399_mm; }},
        {Code::pipe_length, "pipe-600", [](Question& q) { grab(q).length.reset(); }},
        {Code::pipe_shape, "pipe-600", [](Question& q) { q.pipe->shape = Shape::bend; }},
        {Code::pipe_mass, "pipe-600", [](Question& q) { grab(q).greatest_pipe = 1399_kg; }},
        {Code::pipe_material, "pipe-600", [](Question& q) { q.pipe->material = "clay"; }},
        {Code::pipe_mass_differs, "pipe-600", [](Question& q) { q.pipe->stated = 1168_kg; }},
        {Code::attachment_unrated, "A1", unrate<Role::attachment>},
        {Code::hook_unrated, "K1", unrate<Role::hook>},
        {Code::sling_unrated, "S1", [](Question& q) { sling(q).tag_to_45.reset(); }},
        {Code::headplate_unrated, "P1", unrate<Role::headplate>},
        {Code::hitch_unrated, "H1", unrate<Role::hitch>},
        {Code::load_unknown, "A1", [](Question& q) { q.move->mud.reset(); }},
        {Code::attachment_over_rating, "A1", rate<Role::attachment, 1399>},
        {Code::hook_over_rating, "K1", rate<Role::hook, 1679>},
        {Code::sling_over_rating, "S1", [](Question& q) { sling(q).tag_to_45 = 1649_kg; }},
        {Code::headplate_over_rating, "P1", rate<Role::headplate, 1699>},
        {Code::hitch_over_rating, "H1", rate<Role::hitch, 1799>},
        {Code::sling_angle, "S1", [](Question& q) { sling(q).angle = Millidegrees{60'001}; }},
        {Code::attachment_near_rating, "A1", rate<Role::attachment, 1400>},
        {Code::hook_near_rating, "K1", rate<Role::hook, 1680>},
        {Code::sling_near_rating, "S1", [](Question& q) { sling(q).tag_to_45 = 1650_kg; }},
        {Code::headplate_near_rating, "P1", rate<Role::headplate, 1700>},
        {Code::hitch_near_rating, "H1", rate<Role::hitch, 1800>},
        {Code::chart_none, "M1", [](Question& q) { q.chart.reset(); }},
        {Code::chart_other, "M1", [](Question& q) { q.set_up->arm = "short"; }},
        {Code::reach_off_chart, "M1", [](Question& q) { q.move->lay_height = 2001_mm; }},
        {Code::reach_over_rating, "M1", rate_chart<1999>},
        {Code::mount_unrated, "M1", [](Question& q) { q.set_up->mount_mass.reset(); }},
        {Code::mount_over_rating, "M1", [](Question& q) { q.set_up->mount_mass = 1999_kg; }},
        {Code::machine_device, "M1", [](Question& q) { q.set_up->valves_proved_at.reset(); }},
        {Code::reach_near_rating, "M1", rate_chart<2000>},
        {Code::hitch_headplate, "H1", [](Question& q) { item(q, Role::hitch).pattern = "S70"; }},
        {Code::hitch_unseen, "H1", [](Question& q) { item(q, Role::hitch).lock_seen.clear(); }},
        {Code::plan_none, "", [](Question& q) { q.plan->signed_ = false; }},
        {Code::plan_out_of_date, "plan", [](Question& q) { q.plan->last_day = day("2026-11-24"); }},
        {Code::plan_outside, "plan", [](Question& q) { q.plan->greatest = 1999_kg; }},
        {Code::briefing_none, "olga", [](Question& q) { q.plan->briefed.erase(q.plan->briefed.begin()); }},
        {Code::person_none, "signaller", [](Question& q) { q.people.erase("signaller"); }},
        {Code::person_not_authorised, "olga", [](Question& q) { operator_(q).authorised.pop_back(); }},
        {Code::card_expired, "olga", [](Question& q) { operator_(q).card_last_day = day("2026-11-24"); }},
        {Code::card_expired_allowed, "olga",
         [](Question& q) {
             operator_(q).card_last_day = day("2026-11-24");
             q.site->expired_card_stops = false;
         }},
        {Code::card_due, "olga", [](Question& q) { operator_(q).card_last_day = day("2026-12-09"); }},
        {Code::place_unconfirmed, "place", [](Question& q) { q.place->confirmed[0].services = false; }},
        {Code::trench_unchecked, "place", [](Question& q) { q.trench->inspections.clear(); }},
        {Code::unit_quarantined, "K1",
         [](Question& q) {
             item(q, Role::hook).stops = {Stop{"stop", false}};
         }},
        {Code::unit_elsewhere, "K1", [](Question& q) { item(q, Role::hook).at_site = "yard"; }},
        {Code::unit_off_hire, "K1", [](Question& q) { item(q, Role::hook).off_hire = true; }},
        {Code::unit_scrapped, "K1", [](Question& q) { item(q, Role::hook).scrapped = true; }},
        {Code::thread_unknown, "place", [](Question& q) { q.thread->room.reset(); }},
        {Code::thread_tight, "place", [](Question& q) { q.thread->gap = 2699_mm; }},
        {Code::loose_parts, "A1", [](Question& q) { item(q, Role::attachment).loose_parts.reset(); }, From::use},
        {Code::hire_due, "A1", [](Question& q) { of(q, Role::attachment).latest = day("2027-01-28"); }, From::use},
        {Code::order_open, "order", [](Question& q) { q.order->hitch.reset(); }, From::use},
        {Code::clock_back, "", notice<NoticeKind::back>},
        {Code::clock_jump, "", notice<NoticeKind::jump>},
        {Code::book_unchecked, "", [](Question& q) { q.book->opening_check_done.reset(); }},
        {Code::book_damaged, "", [](Question& q) { q.book->damaged = true; }},
        {Code::book_forked, "", [](Question& q) { q.book->forked = true; }},
    };
    return all;
}

Question good(From from) { return from == From::lift ? good_lift() : good_use(); }

} // namespace

TEST_CASE("every code has one entry here")
{
    CHECK(code_count == 83);
    std::multiset<Code> entered;
    for (const Entry& each : entries())
        entered.insert(each.code);
    for (int i = 0; i < code_count; ++i) {
        const Code code = static_cast<Code>(i);
        CAPTURE(name(code));
        CHECK(entered.count(code) == 1);
    }
}

TEST_CASE("every code comes up by its change of the good question and not without it")
{
    for (const Entry& each : entries()) {
        Question q = good(each.from);
        CHECK_FALSE(finds(q, each.code));
        each.change(q);
        CAPTURE(name(each.code));
        CAPTURE(codes(q));
        CHECK(finds(q, each.code, each.about));
    }
}

TEST_CASE("a code that stops does not let lift and any other alone does")
{
    for (const Entry& each : entries()) {
        Question q = good(each.from);
        each.change(q);
        CAPTURE(codes(q));
        CHECK(decide(q).may_lift() == (weight(each.code) != Weight::stop));
    }
}

TEST_CASE("every code has a name of its own in small letters and hyphens")
{
    std::set<std::string_view> names;
    for (int i = 0; i < code_count; ++i) {
        const std::string_view each = name(static_cast<Code>(i));
        CAPTURE(each);
        CHECK(names.insert(each).second);
        CHECK(each.find_first_not_of("abcdefghijklmnopqrstuvwxyz-") == std::string_view::npos);
        CHECK(each.find('-') != std::string_view::npos);
    }
}

TEST_CASE("codes stand by row and in a row stops before cautions before notes")
{
    for (int i = 1; i < code_count; ++i) {
        const Code last = static_cast<Code>(i - 1), next = static_cast<Code>(i);
        CAPTURE(name(next));
        CHECK(row(last) <= row(next));
        if (row(last) == row(next))
            CHECK(weight(last) <= weight(next));
    }
}

TEST_CASE("cautions and notes are those of the table")
{
    const std::set<std::string_view> cautions{"exam-due",          "exam-particulars",  "exam-defect-dated",
                                              "exam-long",         "event-touch",       "fact-disputed",
                                              "check-report",      "pipe-mass-differs", "attachment-near-rating",
                                              "hook-near-rating",  "sling-near-rating", "headplate-near-rating",
                                              "hitch-near-rating", "reach-near-rating", "card-expired-allowed",
                                              "card-due",          "hire-due",          "order-open"};
    for (int i = 0; i < code_count; ++i) {
        const Code code = static_cast<Code>(i);
        CAPTURE(name(code));
        const Weight expected = code == Code::evidence_own_sites ? Weight::note
                                : cautions.count(name(code)) > 0 ? Weight::caution
                                                                 : Weight::stop;
        CHECK(weight(code) == expected);
    }
}

TEST_CASE("every unit of a figure has its sign")
{
    CHECK(name(Unit::none) == "");
    CHECK(name(Unit::kilogram) == "kg");
    CHECK(name(Unit::millimetre) == "mm");
    CHECK(name(Unit::millidegree) == "mdeg");
    CHECK(name(Unit::newton_metre) == "N m");
    CHECK(name(Unit::day) == "day");
    CHECK(name(Unit::person) == "people");
}

} // namespace cotter::rules
