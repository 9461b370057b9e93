// What must hold for every lift and every trench, asked of many at random by RapidCheck: that a worse thing never turns
// DO NOT LIFT into MAY LIFT, and that where the site lies, or which hand it is of, changes no outcome.

#include "good_question.hpp"
#include "trench_path.hpp"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>

namespace cotter::rules {

namespace {

template <class Quantity> void add(Known<Quantity>& to, int by) { to = Quantity{to->count() + by}; }

int whole(int from, int to) { return *rc::gen::inRange(from, to + 1); }

// Falls with radius, over front and side, at three heights.
Chart falling_chart()
{
    Chart chart = *good_lift().chart;
    chart.cells.clear();
    for (const Sector over : {Sector::front, Sector::side})
        for (const int height : {0, 1000, 2000}) {
            int rated = whole(2000, 6000);
            for (const int radius : {3000, 4000, 5000, 6000}) {
                chart.cells.push_back({over, Millimetres{height}, Millimetres{radius}, Kilograms{rated}});
                rated -= whole(0, 900);
            }
        }
    return chart;
}

// Of lifts round about what may be lifted.
Question some_lift()
{
    Question q = good_lift();
    q.chart = falling_chart();
    q.pipe->stated = Kilograms{whole(1400, 2600)};
    q.move->nose_radius = Millimetres{whole(3000, 6000)};
    q.move->centre_radius = Millimetres{whole(3000, 6000)};
    q.move->pin_to_centre = Millimetres{whole(0, 1300)};
    q.thread->gap = Millimetres{whole(2500, 4200)};
    item(q, Role::attachment).plate = Kilograms{whole(1300, 2800)};
    q.plan->greatest = Kilograms{whole(1900, 3300)};
    return q;
}

int may_lift = 0, lifts = 0;

// More of what is bad, or less of what is good.
template <class Worsen> void never_better(const char* what, const Worsen& worsen)
{
    may_lift = lifts = 0;
    const bool holds = rc::check(what, [&] {
        const Question before = some_lift();
        Question after = before;
        worsen(after);
        const bool could = decide(before).may_lift();
        may_lift += could ? 1 : 0;
        ++lifts;
        RC_ASSERT(could || !decide(after).may_lift());
    });
    CHECK(holds);
    CHECK(may_lift > 0); // or the property says nothing
    CHECK(may_lift < lifts);
}

Box moved(const Box& box, double x, double y) { return {box.left + x, box.bottom + y, box.right + x, box.top + y}; }

PathAsked some_trench()
{
    PathAsked asked;
    const double half = whole(900, 1400), outside = whole(300, 800) / 2.0, gap = whole(1700, 3600);
    asked.body = {{-half, -outside, half, outside},
                  {-whole(200, 600) * 1.0, -outside, whole(200, 600) * 1.0, outside + whole(100, 500)}};
    const double under = whole(1000, 2500), depth = whole(100, 300);
    for (const double left : {-gap - 2 * depth, -depth, gap, 2 * gap + depth})
        asked.obstacles.push_back({{left, under, left + depth, under + depth}, whole(0, 120) * 1.0});
    const double end = whole(-600, 300);
    asked.obstacles.push_back({{end - 2 * half, 0, end, 2 * outside}, 20});
    asked.tilt_limit = whole(0, 15);
    asked.laid = {end + 20 + half, end + 20 + half + 400};
    return asked;
}

PathAsked moved(PathAsked asked, double x, double y)
{
    for (Obstacle& each : asked.obstacles)
        each.box = moved(each.box, x, y);
    asked.bed += y;
    asked.laid = {asked.laid.from + x, asked.laid.to + x};
    return asked;
}

Box mirrored(const Box& box) { return {-box.right, box.bottom, -box.left, box.top}; }

PathAsked mirrored(PathAsked asked)
{
    for (Box& each : asked.body)
        each = mirrored(each);
    for (Obstacle& each : asked.obstacles)
        each.box = mirrored(each.box);
    asked.laid = {-asked.laid.to, -asked.laid.from};
    return asked;
}

// Of the paths, how many were found: all or none would say nothing.
struct Found {
    int paths = 0, trenches = 0;
    bool add(const PathAsked& asked)
    {
        const bool is_found = !find_path(asked).empty();
        paths += is_found ? 1 : 0;
        ++trenches;
        return is_found;
    }
    bool says_something() const { return 0 < paths && paths < trenches; }
};

} // namespace

TEST_CASE("inside a chart that falls with radius, nothing worse lifts what could not be lifted")
{
    never_better("more load", [](Question& q) { add(q.pipe->stated, whole(1, 600)); });
    never_better("more mud", [](Question& q) { add(q.move->mud, whole(1, 600)); });
    never_better("more radius", [](Question& q) {
        for (Known<Millimetres> Move::*each : {&Move::nose_radius, &Move::centre_radius})
            add((*q.move).*each, whole(0, 6000 - static_cast<int>(((*q.move).*each)->count())));
    });
    never_better("less gap", [](Question& q) { add(q.thread->gap, -whole(1, 800)); });
    never_better("less room", [](Question& q) { add(q.thread->room, -whole(1, 2000)); });
    never_better("less rating on the plate", [](Question& q) { add(item(q, Role::attachment).plate, -whole(1, 800)); });
    never_better("less rating on the chart", [](Question& q) {
        for (Cell& each : q.chart->cells)
            add(each.rated, -whole(0, 500));
    });
    never_better("less planned", [](Question& q) { add(q.plan->greatest, -whole(1, 500)); });
    never_better("more moment", [](Question& q) { add(q.move->pin_to_centre, whole(1, 500)); });
}

TEST_CASE("a trench moved by whole millimetres has a path where it had one")
{
    Found found;
    CHECK(rc::check("moved", [&] {
        const PathAsked here = some_trench();
        const PathAsked there = moved(here, whole(-50'000, 50'000), whole(-9'000, 9'000));
        RC_ASSERT(found.add(here) == found.add(there));
    }));
    CHECK(found.says_something());
}

TEST_CASE("a mirrored trench has a path where the other has one")
{
    Found found;
    CHECK(rc::check("mirrored", [&] {
        const PathAsked left = some_trench();
        RC_ASSERT(found.add(left) == found.add(mirrored(left)));
    }));
    CHECK(found.says_something());
}

} // namespace cotter::rules
