// What state of an adjustment stands by the records of changes and looks.

#include "setting_records.hpp"
#include "standing.hpp"

#include <doctest/doctest.h>

#include <set>

namespace cotter::rules {

namespace {

using Records = std::vector<SettingRecord>;

void check_disputed(const Records& records, bool disputed)
{
    in_every_order(records, [&](const Records& turned) { CHECK(standing_of(turned).disputed == disputed); });
}

void check_stands(const Records& records, const Id& state)
{
    in_every_order(records, [&](const Records& turned) {
        CHECK_FALSE(standing_of(turned).disputed);
        CHECK(standing_of(turned).state == state);
    });
}

template <class List> std::set<Id> ids(const List& list) { return {list.begin(), list.end()}; }

bool same(const Standing& a, const Standing& b)
{
    return a.ever_changed == b.ever_changed && a.disputed == b.disputed && a.state == b.state &&
           a.changed_at == b.changed_at && ids(a.known_to_changes) == ids(b.known_to_changes) &&
           ids(a.changers) == ids(b.changers) && a.changer_unknown == b.changer_unknown &&
           a.change_time_unknown == b.change_time_unknown;
}

const Records two_changes{changed("C1", "a", 1), changed("C2", "b", 2)};

Records and_then(Records records, SettingRecord next)
{
    records.push_back(std::move(next));
    return records;
}

} // namespace

TEST_CASE("without a record nothing stands")
{
    const Standing none = standing_of({});
    CHECK_FALSE(none.ever_changed);
    CHECK_FALSE(none.disputed);
    CHECK_FALSE(none.state);
}

TEST_CASE("a look alone sets nothing")
{
    const Standing looked = standing_of({seen("L1", "a", 1)});
    CHECK_FALSE(looked.ever_changed);
    CHECK_FALSE(looked.state);
}

TEST_CASE("the last change stands whatever the clocks say")
{
    check_stands({changed("C1", "a", 9), changed("C2", "b", 2, {"C1"})}, "b");
    check_stands({changed("C1", "a", 1), changed("C2", "b", 2, {"C1"}), changed("C3", "a", 3, {"C2"})}, "a");
}

TEST_CASE("a change knows what the records that it knew had known")
{
    check_disputed({changed("C1", "a", 1), seen("L1", "a", 2, {"C1"}), changed("C2", "b", 3, {"L1"})}, false);
}

TEST_CASE("concurrent changes are disputed only if they differ")
{
    check_disputed(two_changes, true);
    check_disputed({changed("C1", "a", 1), changed("C2", "a", 2)}, false);
}

TEST_CASE("a look that saw what stands disputes nothing and one that saw another state does")
{
    check_disputed({changed("C1", "a", 1), seen("L1", "a", 2, {"C1"})}, false);
    check_disputed({changed("C1", "a", 1), seen("L1", "b", 2, {"C1"})}, true);
}

TEST_CASE("a look that did not know the change and saw another state is disputed")
{
    check_disputed({changed("C1", "a", 1), seen("L1", "b", 2)}, true);
}

TEST_CASE("a look and a change that do not know each other are disputed whichever clock is ahead")
{
    check_disputed({changed("C1", "a", 1), seen("L1", "a", 2, {"C1"}), changed("C2", "b", 3, {"C1"})}, true);
    check_disputed({changed("C1", "a", 1), seen("L1", "a", 3, {"C1"}), changed("C2", "b", 2, {"C1"})}, true);
    check_disputed({changed("C1", "a", 1), seen("L1", "b", 2, {"C1"}), changed("C2", "b", 3, {"C1"})}, true); // and C1
}

TEST_CASE("a look that does not say what it saw disputes nothing")
{
    Records records{changed("C1", "a", 1), seen("L1", "b", 2, {"C1"})};
    records[1].state.reset();
    check_disputed(records, false);
}

TEST_CASE("a look at an older state that a later change knew is no dispute")
{
    check_disputed({changed("C1", "a", 1), seen("L1", "a", 2, {"C1"}), changed("C2", "b", 3, {"C1", "L1"}),
                    seen("L2", "b", 4, {"C2"})},
                   false);
}

TEST_CASE("a look that knew every change ends the dispute and what it saw stands")
{
    check_stands(and_then(two_changes, seen("L1", "b", 3, {"C1", "C2"})), "b");
    check_stands(and_then(two_changes, seen("L1", "a", 3, {"C1", "C2"})), "a");
    check_stands(and_then(two_changes, seen("L1", "c", 3, {"C1", "C2"})), "c");
}

TEST_CASE("a look that knew only one of the changes does not end the dispute")
{
    check_disputed(and_then(two_changes, seen("L1", "b", 3, {"C2"})), true);
    check_disputed(and_then(two_changes, seen("L1", "a", 3, {"C2"})), true);
}

TEST_CASE("two looks that knew one change each do not end the dispute together")
{
    check_disputed({two_changes[0], two_changes[1], seen("L1", "b", 3, {"C1"}), seen("L2", "b", 4, {"C2"})}, true);
}

TEST_CASE("a look not at the unit does not end the dispute")
{
    for (const Flag flag : {Flag{false}, Flag{}}) {
        SettingRecord look = seen("L1", "b", 3, {"C1", "C2"});
        look.at_unit = flag;
        check_disputed(and_then(two_changes, look), true);
    }
}

TEST_CASE("a later change does not end the dispute")
{
    check_disputed(and_then(two_changes, changed("C3", "b", 3, {"C1", "C2"})), true);
}

TEST_CASE("a look after the later change ends the dispute")
{
    Records records = and_then(two_changes, changed("C3", "a", 3, {"C1", "C2"}));
    check_stands(and_then(records, seen("L1", "a", 4, {"C3"})), "a");
}

TEST_CASE("a dispute between a look and a change is ended by one later look that knew both")
{
    const Records records{changed("C1", "a", 1), seen("L1", "b", 2, {"C1"})};
    check_disputed(and_then(records, seen("L2", "a", 3, {"C1"})), true); // did not know of the look
    check_stands(and_then(records, seen("L2", "a", 3, {"C1", "L1"})), "a");
    check_stands(and_then(records, seen("L2", "b", 3, {"C1", "L1"})), "b");
}

TEST_CASE("a record that joins an ended dispute opens it again")
{
    Records records = and_then(two_changes, seen("L1", "b", 3, {"C1", "C2"}));
    check_disputed(and_then(records, changed("C3", "c", 4, {"C1"})), true);
}

TEST_CASE("a change after the dispute has ended stands")
{
    Records records = and_then(two_changes, seen("L1", "b", 3, {"C1", "C2"}));
    check_stands(and_then(records, changed("C3", "a", 4, {"L1"})), "a");
}

TEST_CASE("a later look that saw another state than the one that ended the dispute is disputed")
{
    Records records = and_then(two_changes, seen("L1", "b", 3, {"C1", "C2"}));
    check_disputed(and_then(records, seen("L2", "b", 4, {"L1"})), false);
    check_disputed(and_then(records, seen("L2", "a", 4, {"L1"})), true);
}

TEST_CASE("changers are those of the last change")
{
    in_every_order({changed("C1", "a", 1), changed("C2", "b", 2, {"C1"})}, [](const Records& turned) {
        CHECK(ids(standing_of(turned).changers) == std::set<Id>{"by C2"});
        CHECK(standing_of(turned).changed_at == minute(2));
    });
}

TEST_CASE("changers of an ended dispute are all who made one of its changes")
{
    in_every_order(and_then(two_changes, seen("L1", "b", 3, {"C1", "C2"})), [](const Records& turned) {
        CHECK(ids(standing_of(turned).changers) == std::set<Id>{"by C1", "by C2"});
    });
}

TEST_CASE("changers of an ended dispute count beside whoever made a change after it began")
{
    Records records = and_then(two_changes, changed("C3", "a", 3, {"C1", "C2"}));
    in_every_order(and_then(records, seen("L1", "a", 4, {"C3"})), [](const Records& turned) {
        CHECK(ids(standing_of(turned).changers) == std::set<Id>{"by C1", "by C2", "by C3"});
    });
}

TEST_CASE("standing is the same for any order of the records")
{
    const std::vector<Records> histories{
        {changed("C1", "a", 1), changed("C2", "b", 1), seen("L1", "a", 1, {"C1", "C2"}), changed("C3", "b", 1, {"L1"}),
         seen("L2", "b", 1, {"C3"})},
        {changed("C1", "a", 5), changed("C2", "b", 4, {"C1"}), seen("L1", "a", 3, {"C1"}), seen("L2", "b", 2, {"C2"}),
         changed("C3", "c", 1, {"L1"})},
        {changed("C1", "a", 1), seen("L1", "b", 2, {"C1"}), seen("L2", "a", 2, {"C1"}), changed("C2", "c", 2, {"L1"}),
         seen("L3", "c", 3, {"C2", "L2"})}};
    for (const Records& history : histories) {
        const Standing first = standing_of(history);
        in_every_order(history, [&](const Records& turned) { CHECK(same(standing_of(turned), first)); });
    }
}

TEST_CASE("records that know each other in a ring or know nothing that is here still have a standing")
{
    check_disputed(
        {changed("C1", "a", 1, {"C2"}), changed("C2", "b", 2, {"C1"}), seen("L1", "a", 3, {"nowhere"})},
        standing_of({changed("C1", "a", 1, {"C2"}), changed("C2", "b", 2, {"C1"}), seen("L1", "a", 3, {"nowhere"})})
            .disputed);
}

} // namespace cotter::rules
