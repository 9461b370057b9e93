#include "setting_records.hpp"

#include <doctest/doctest.h>

namespace cotter::rules {

namespace {

Question with_look(void (*change)(SettingRecord&))
{
    Question q = good_lift();
    change(q.setting_records[1]);
    return q;
}

Question with_change(void (*change)(SettingRecord&))
{
    Question q = good_lift();
    change(q.setting_records[0]);
    return q;
}

Question set_to(const Id& state, Millimetres barrel)
{
    Question q = good_lift();
    q.pipe->barrel = barrel;
    for (SettingRecord& each : q.setting_records)
        each.state = state;
    return q;
}

const std::string unknown = "setting-unknown(A1)";
const std::string disputed = "setting-disputed(A1)";
const std::string none = "setting-none(A1)";
const std::string wrong = "setting-wrong(A1)";
const std::string unseen = "setting-unseen(A1)";

} // namespace

TEST_CASE("a model without an adjustment has no setting to ask")
{
    Question q = with_records({});
    model(q, Role::attachment).adjusts = false;
    CHECK(is_silent(q));
}

TEST_CASE("whether the model adjusts must be known")
{
    Question q = good_lift();
    model(q, Role::attachment).adjusts.reset();
    CHECK(setting_codes(q) == unknown);
    item(q, Role::attachment).model.reset();
    CHECK(setting_codes(q) == unknown);
}

TEST_CASE("a setting that nobody recorded is unknown though it was seen")
{
    CHECK(setting_codes(with_records({})) == unknown);
    CHECK(setting_codes(with_records({seen("L1", "hole 2", 40)})) == unknown);
}

TEST_CASE("a state that the model does not have is unknown")
{
    CHECK(setting_codes(set_to("hole 7", 800_mm)) == unknown);
}

TEST_CASE("a change that does not say to what is unknown")
{
    Question q = with_change([](SettingRecord& r) { r.state.reset(); });
    CHECK(setting_codes(q) != "");
    q.setting_records[1].state.reset();
    CHECK(setting_codes(q) == unknown);
}

TEST_CASE("a setting not seen by eye this shift is unknown")
{
    CHECK(setting_codes(with_look([](SettingRecord& r) { r.by_eye = false; })) == unknown);
    CHECK(setting_codes(with_look([](SettingRecord& r) { r.by_eye.reset(); })) == unknown);
    CHECK(setting_codes(with_look([](SettingRecord& r) { r.at.reset(); })) == unknown);
}

TEST_CASE("a look of an earlier shift is not of this one")
{
    Question q = good_lift();
    q.setting_records[0].at = minute(-100);
    q.setting_records[1].at = minute(-60);
    CHECK(setting_codes(q).empty());
    q.setting_records[1].at = minute(-61);
    CHECK(setting_codes(q) == unknown);
}

TEST_CASE("an unknown setting silences the rest of the row")
{
    Question q = set_to("hole 1", 800_mm);
    q.setting_records.pop_back();
    CHECK(setting_codes(q) == unknown);
}

TEST_CASE("concurrent changes to different states are disputed")
{
    CHECK(setting_codes(with_records({changed("C1", "hole 1", 30), changed("C2", "hole 2", 31),
                                      seen("L1", "hole 2", 40, {"C2"})})) == disputed);
}

TEST_CASE("concurrent changes to one state are not disputed")
{
    CHECK(setting_codes(with_records({changed("C1", "hole 2", 30), changed("C2", "hole 2", 31),
                                      seen("L1", "hole 2", 40, {"C1", "C2"})}))
              .empty());
}

TEST_CASE("a look that saw another state is disputed")
{
    CHECK(setting_codes(with_look([](SettingRecord& r) { r.state = "hole 1"; })) == disputed);
}

TEST_CASE("one later look at the unit that reaches the whole dispute ends it")
{
    Question q = with_look([](SettingRecord& r) { r.state = "hole 1"; });
    q.setting_records.push_back(seen("L2", "hole 2", 50, {"L1"}));
    CHECK(setting_codes(q).empty());
}

TEST_CASE("a disputed setting silences none and wrong and unseen")
{
    Question q = with_look([](SettingRecord& r) { r.state = "hole 1"; });
    q.pipe->barrel = 650_mm;
    CHECK(setting_codes(q) == disputed);
}

TEST_CASE("a state serves both ends of its range and no more")
{
    CHECK(setting_codes(set_to("hole 2", 750_mm)).empty());
    CHECK(setting_codes(set_to("hole 2", 900_mm)).empty());
    CHECK(setting_codes(set_to("hole 1", 600_mm)).empty());
    CHECK(setting_codes(set_to("hole 1", 700_mm)).empty());
    CHECK(setting_codes(set_to("hole 1", 750_mm)) == wrong);
    CHECK(setting_codes(set_to("hole 2", 700_mm)) == wrong);
}

TEST_CASE("a wrong setting says the barrel and the nearest end of what it serves")
{
    CHECK(finding(set_to("hole 2", 700_mm), Code::setting_wrong, "A1")->measured == Figure{700.0});
    CHECK(finding(set_to("hole 2", 700_mm), Code::setting_wrong, "A1")->limit == Figure{750.0});
    CHECK(finding(set_to("hole 1", 800_mm), Code::setting_wrong, "A1")->limit == Figure{700.0});
}

TEST_CASE("a barrel between and outside the states has no setting")
{
    for (const Millimetres barrel : {599_mm, 701_mm, 749_mm, 901_mm})
        CHECK(setting_codes(set_to("hole 2", barrel)) == none);
}

TEST_CASE("a state whose range is not known serves nothing")
{
    Question q = good_lift();
    model(q, Role::attachment).states[1].greatest.reset();
    CHECK(setting_codes(q) == none);
    model(q, Role::attachment).states.push_back({"hole 3", 750_mm, 900_mm});
    CHECK(setting_codes(q) == wrong);
}

TEST_CASE("a wrong setting silences the second look")
{
    Question q = set_to("hole 1", 800_mm);
    q.setting_records[1].by = "carl";
    CHECK(setting_codes(q) == wrong);
}

TEST_CASE("with the barrel not known neither none nor wrong is asked")
{
    Question q = good_lift();
    q.pipe->barrel.reset();
    CHECK(setting_codes(q).empty());
    q.setting_records[1].by = "carl";
    CHECK(setting_codes(q) == unseen);
}

TEST_CASE("whoever changed the setting is no second person")
{
    CHECK(setting_codes(with_look([](SettingRecord& r) { r.by = "carl"; })) == unseen);
    CHECK(setting_codes(with_look([](SettingRecord& r) { r.by.reset(); })) == unseen);
}

TEST_CASE("with nobody named for the change nobody is a second person")
{
    CHECK(setting_codes(with_change([](SettingRecord& r) { r.by.reset(); })) == unseen);
}

TEST_CASE("a second person is authorised and at the unit and uses their own PIN")
{
    for (Flag SettingRecord::*each : {&SettingRecord::authorised, &SettingRecord::at_unit, &SettingRecord::own_pin})
        for (const Flag flag : {Flag{false}, Flag{}}) {
            Question q = good_lift();
            q.setting_records[1].*each = flag;
            CHECK(setting_codes(q) == unseen);
        }
}

TEST_CASE("the second look need not be of this shift")
{
    Question q = with_records(
        {changed("C1", "hole 2", -500), seen("L1", "hole 2", -490, {"C1"}), seen("L2", "hole 2", 20, {"L1"})});
    q.setting_records[2].at_unit = false; // by eye, this shift, from the cab
    CHECK(setting_codes(q).empty());
    q.setting_records.erase(q.setting_records.begin() + 1);
    q.setting_records[1].after = {"C1"};
    CHECK(setting_codes(q) == unseen);
}

TEST_CASE("a look in the second of the change is since it and one before is not")
{
    Question q = good_lift();
    q.setting_records[1].at = minute(30);
    CHECK(setting_codes(q).empty());
    q.setting_records[1].at = minute(30) - Instant{1};
    CHECK(setting_codes(q) == unknown);
}

TEST_CASE("a look before the last change does not serve for it")
{
    CHECK(setting_codes(with_records({changed("C1", "hole 2", 10), seen("L1", "hole 2", 20, {"C1"}),
                                      changed("C2", "hole 2", 30, {"L1"})})) == unknown);
}

TEST_CASE("a look that the change knew is before it even by a clock set back")
{
    CHECK(setting_codes(with_records({changed("C1", "hole 2", 10), seen("L1", "hole 2", 50, {"C1"}),
                                      changed("C2", "hole 2", 30, {"L1"})})) == unknown);
}

TEST_CASE("a change at an unknown time has not been seen since")
{
    CHECK(setting_codes(with_change([](SettingRecord& r) { r.at.reset(); })) == unknown);
}

TEST_CASE("all who made a disputed change count as changers after it has ended")
{
    Question q = with_records(
        {changed("C1", "hole 1", 30), changed("C2", "hole 2", 31), seen("L1", "hole 2", 40, {"C1", "C2"})});
    CHECK(setting_codes(q).empty());
    for (const char* changer : {"by C1", "by C2"}) {
        q.setting_records[2].by = changer;
        CHECK(setting_codes(q) == unseen);
    }
}

} // namespace cotter::rules
