// Row reach. The machine of the good question bears 2,000 kg at 5.2 m, its mounting 2,000 kg at 1.0 m.

#include "good_question.hpp"

#include <doctest/doctest.h>

#include <array>

namespace cotter::rules {

namespace {

Question chart_of(Kilograms rated)
{
    Question q = good_lift();
    for (Cell& each : q.chart->cells)
        each.rated = rated;
    return q;
}

template <class Change> std::string after(const Change& change)
{
    Question q = good_lift();
    change(q);
    return codes(q);
}

const std::string off = "reach-off-chart(M1) ";

} // namespace

TEST_CASE("a lift needs a chart")
{
    CHECK(after([](Question& q) { q.chart.reset(); }) == "chart-none(M1) ");
}

TEST_CASE("the chart is for the machine as it stands now")
{
    for (Known<Id> SetUp::*each : {&SetUp::arm, &SetUp::blade, &SetUp::counterweight}) {
        Question q = good_lift();
        (*q.set_up).*each = "another";
        CHECK(codes(q) == "chart-other(M1) ");
        (*q.set_up).*each = std::nullopt;
        CHECK(codes(q) == "chart-other(M1) ");
    }
}

TEST_CASE("a chart that does not say for what it holds is for another machine")
{
    for (Known<Id> Chart::*each : {&Chart::arm, &Chart::blade, &Chart::counterweight}) {
        Question q = good_lift();
        (*q.chart).*each = std::nullopt;
        CHECK(codes(q) == "chart-other(M1) ");
    }
}

TEST_CASE("unknown on both sides is not the same")
{
    Question q = good_lift();
    q.chart->blade.reset();
    q.set_up->blade.reset();
    CHECK(codes(q) == "chart-other(M1) ");
}

TEST_CASE("both radii count and the greater one may reach the last line of the chart and no farther")
{
    for (Known<Millimetres> Move::*each : {&Move::nose_radius, &Move::centre_radius}) {
        Question q = good_lift();
        (*q.move).*each = 6000_mm;
        CHECK(is_silent(q));
        (*q.move).*each = 6001_mm;
        q.plan->greatest_radius = 9000_mm;
        CHECK(codes(q) == off);
        (*q.move).*each = std::nullopt;
        CHECK(codes(q) == off);
    }
}

TEST_CASE("nearer than the first line of the chart is off it")
{
    CHECK(after([](Question& q) { q.move->nose_radius = q.move->centre_radius = 4000_mm; }) == "");
    CHECK(after([](Question& q) { q.move->nose_radius = q.move->centre_radius = 3999_mm; }) == off);
}

TEST_CASE("pick and slew and lay must each be on the chart")
{
    for (Known<Millimetres> Move::*each : {&Move::pick_height, &Move::slew_height, &Move::lay_height}) {
        Question q = good_lift();
        (*q.move).*each = 2000_mm;
        CHECK(is_silent(q));
        (*q.move).*each = 2001_mm;
        CHECK(codes(q) == off);
        (*q.move).*each = Millimetres{-1};
        CHECK(codes(q) == off);
        (*q.move).*each = std::nullopt;
        CHECK(codes(q) == off);
    }
}

TEST_CASE("a blank among the corners is off the chart")
{
    CHECK(after([](Question& q) { q.chart->cells[0].rated.reset(); }) == off);
}

TEST_CASE("a blank of the other sector counts unless the slew stays in one")
{
    Question q = good_lift();
    for (Cell& each : q.chart->cells)
        if (each.over == Sector::side)
            each.rated.reset();
    CHECK(is_silent(q));
    q.move->sector = Sector::both;
    CHECK(codes(q) == off);
    q.move->sector.reset();
    CHECK(codes(q) == off);
}

TEST_CASE("a load equal to the lowest corner is allowed and a kilogram more is not")
{
    CHECK(codes(chart_of(2000_kg)) == "reach-near-rating(M1) ");
    CHECK(codes(chart_of(1999_kg)) == "reach-over-rating(M1) ");
}

// 2,000 is 90 % of 2,222.2.
TEST_CASE("a load is near the rating at this reach over 90 % of it")
{
    CHECK(codes(chart_of(2222_kg)) == "reach-near-rating(M1) ");
    CHECK(is_silent(chart_of(2223_kg)));
}

TEST_CASE("the lowest of front and side governs unless the slew stays in one")
{
    Question q = good_lift();
    for (Cell& each : q.chart->cells)
        if (each.over == Sector::side)
            each.rated = 1999_kg;
    CHECK(is_silent(q));
    q.move->sector = Sector::side;
    CHECK(codes(q) == "reach-over-rating(M1) ");
    q.move->sector = Sector::both;
    CHECK(codes(q) == "reach-over-rating(M1) ");
}

TEST_CASE("the lowest point of the move governs")
{
    Question q = good_lift();
    for (Cell& each : q.chart->cells)
        each.rated = each.height == 0_mm ? 1999_kg : 4000_kg;
    q.move->pick_height = q.move->slew_height = 2000_mm; // on the upper line
    q.move->lay_height = 2000_mm;
    CHECK(is_silent(q));
    q.move->lay_height = 1999_mm;
    CHECK(codes(q) == "reach-over-rating(M1) ");
}

TEST_CASE("off the chart the rating is not asked")
{
    Question q = chart_of(1_kg);
    q.move->lay_height.reset();
    CHECK(codes(q) == off);
}

TEST_CASE("the hitch counts on the machine unless it is in the chart")
{
    Question q = chart_of(1999_kg);
    q.chart->includes_hitch = true; // 1,800
    CHECK_FALSE(finds(q, Code::reach_over_rating));
    q.chart->includes_hitch.reset();
    CHECK(finds(q, Code::reach_over_rating, "M1"));
}

TEST_CASE("shackles and a bucket left on count on the machine")
{
    for (Known<Kilograms> Move::*each : {&Move::shackles, &Move::bucket}) {
        Question q = chart_of(2000_kg);
        (*q.move).*each = 1_kg;
        CHECK(codes(q) == "reach-over-rating(M1) ");
    }
}

TEST_CASE("a free mounting is not asked")
{
    CHECK(after([](Question& q) { q.set_up->mounting = Mounting::free, q.set_up->mount_mass.reset(); }) == "");
}

TEST_CASE("a rigid or unknown mounting needs the maker's figures and a known moment")
{
    const std::string unrated = "mount-unrated(M1) ";
    CHECK(after([](Question& q) { q.set_up->mount_mass.reset(); }) == unrated);
    CHECK(after([](Question& q) { q.set_up->mount_moment.reset(); }) == unrated);
    CHECK(after([](Question& q) { q.move->pin_to_centre.reset(); }) == unrated);
    CHECK(after([](Question& q) { q.set_up->mounting.reset(); }) == "");
    CHECK(after([](Question& q) { q.set_up->mounting.reset(), q.set_up->mount_mass.reset(); }) == unrated);
}

TEST_CASE("a load equal to the mounting's mass is allowed and a kilogram more is not")
{
    CHECK(after([](Question& q) { q.set_up->mount_mass = 2000_kg; }) == "");
    CHECK(after([](Question& q) { q.set_up->mount_mass = 1999_kg; }) == "mount-over-rating(M1) ");
}

// 2,000 kg x 9.81 m/s2 x 1.0 m = 19,620 N m.
TEST_CASE("a moment equal to the mounting's is allowed and more is not")
{
    CHECK(after([](Question& q) { q.set_up->mount_moment = NewtonMetres{19'620}; }) == "");
    CHECK(after([](Question& q) { q.set_up->mount_moment = NewtonMetres{19'619}; }) == "mount-over-rating(M1) ");
    CHECK(after([](Question& q) { q.set_up->mount_moment = NewtonMetres{19'620}, q.move->pin_to_centre = 1001_mm; }) ==
          "mount-over-rating(M1) ");
}

TEST_CASE("the hitch always counts at the mounting")
{
    Question q = good_lift();
    q.chart->includes_hitch = true;
    q.set_up->mount_mass = 1999_kg;
    CHECK(codes(q) == "mount-over-rating(M1) ");
}

TEST_CASE("valves and overload warning are proved this shift")
{
    for (Known<Instant> SetUp::*each : {&SetUp::valves_proved_at, &SetUp::overload_warning_proved_at}) {
        Question q = good_lift();
        (*q.set_up).*each = minute(-60);
        CHECK(is_silent(q));
        (*q.set_up).*each = minute(-61);
        CHECK(codes(q) == "machine-device(M1) ");
        (*q.set_up).*each = std::nullopt;
        CHECK(codes(q) == "machine-device(M1) ");
    }
}

namespace {

// A chart that the good move is off, with one rating at the least radius and one at 5 m.
bool asks_devices(std::int64_t at_1_m, std::int64_t at_5_m)
{
    Question q = good_lift();
    q.set_up->valves_proved_at.reset();
    q.chart->cells = {{Sector::front, 0_mm, 1000_mm, Kilograms{at_1_m}},
                      {Sector::front, 0_mm, 5000_mm, Kilograms{at_5_m}}};
    return finds(q, Code::machine_device, "M1");
}

} // namespace

TEST_CASE("a chart of 1000 kg at its least radius needs no devices and over it does")
{
    CHECK_FALSE(asks_devices(1000, 100));
    CHECK(asks_devices(1001, 100));
}

// 815 kg x 9.81 x 5 m = 39,975.8 N m; 816 kg: 40,024.8 N m.
TEST_CASE("a chart up to 40000 N m needs no devices and over it does")
{
    CHECK_FALSE(asks_devices(1000, 815));
    CHECK(asks_devices(1000, 816));
}

TEST_CASE("the least radius is the least that the chart rates")
{
    Question q = good_lift();
    q.set_up->valves_proved_at.reset();
    q.chart->cells = {{Sector::front, 0_mm, 1000_mm, std::nullopt}, {Sector::front, 0_mm, 2000_mm, 1001_kg}};
    CHECK(finds(q, Code::machine_device, "M1"));
    q.chart->cells[0].rated = 1000_kg;
    CHECK_FALSE(finds(q, Code::machine_device));
}

TEST_CASE("with no set-up recorded the row speaks of chart and mounting and devices")
{
    CHECK(after([](Question& q) { q.set_up.reset(); }) == "chart-other(M1) mount-unrated(M1) machine-device(M1) ");
}

} // namespace cotter::rules
