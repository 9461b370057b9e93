// Rules of thumb of the trade, each of them common practice without a source.

#include "asking.hpp"

#include <doctest/doctest.h>

using namespace outside;
using namespace cotter::rules::literals;
using rules::Code;

namespace {

// A clamp with a sheet of one line, answered then.
rules::Question answered_at(rules::Instant at)
{
    rules::Question question = lift();
    rules::Item clamp = item(rules::Role::attachment, "C");
    clamp.sheet = {rules::SheetItem{"pads", {}}};
    question.items = {clamp};
    question.answers = {rules::Answer{"C", "pads", at, "op", "A", rules::Answered::right, {}}};
    return question;
}

rules::State state(const char* name, rules::Millimetres least, rules::Millimetres greatest)
{
    return {name, least, greatest};
}

rules::SettingRecord look(const char* id, const char* by, rules::Instant at)
{
    rules::SettingRecord made;
    made.id = id;
    made.kind = rules::SettingKind::seen;
    made.state = "2";
    made.by = by;
    made.at = at;
    made.after = {"change"};
    made.by_eye = made.at_unit = made.own_pin = made.authorised = true;
    return made;
}

rules::SettingRecord change(const char* by)
{
    rules::SettingRecord made = look("change", by, shift_start);
    made.kind = rules::SettingKind::changed;
    made.after = {};
    return made;
}

// A clamp whose pin was moved by `ann` for a barrel that it now serves, and one look since.
rules::Question looked_at_by(const char* person)
{
    rules::Question question = lift();
    rules::Item clamp = item(rules::Role::attachment, "C");
    clamp.model = rules::Model{};
    clamp.model->adjusts = true;
    clamp.model->states = {state("1", 300_mm, 499_mm), state("2", 500_mm, 700_mm)};
    question.items = {clamp};
    question.pipe = rules::Pipe{};
    question.pipe->barrel = 580_mm;
    question.setting_records = {change("ann"), look("look", person, shift_start + hours(1))};
    return question;
}

bool says_nothing_of_setting(const rules::Question& question)
{
    for (const Code code :
         {Code::setting_unknown, Code::setting_disputed, Code::setting_none, Code::setting_wrong, Code::setting_unseen})
        if (finds(question, code))
            return false;
    return true;
}

} // namespace

// Source: common practice, no source: a check each shift. That some check is needed: INDG422.
TEST_CASE("A sheet that was answered before this shift does not count")
{
    CHECK_FALSE(finds(answered_at(shift_start + hours(1)), Code::check_none));
    CHECK(finds(answered_at(shift_start - hours(24)), Code::check_none));
    CHECK(finds(answered_at(shift_start - hours(8)), Code::check_none));
}

// Source: common practice, no source. An answer of a time to come is none either.
TEST_CASE("A sheet that is dated after the lift does not count")
{
    CHECK(finds(answered_at(shift_start + hours(6)), Code::check_none));
}

// Source: common practice, no source: a second pair of eyes on a changed setting.
TEST_CASE("A changed setting wants the eyes of somebody who did not change it")
{
    CHECK(finds(looked_at_by("ann"), Code::setting_unseen));
    CHECK(says_nothing_of_setting(looked_at_by("bob")));
}

// Source: common practice, no source: the second pair of eyes knows the model, is at the unit and answers for itself.
TEST_CASE("A second pair of eyes counts only with authority, at the unit and under its own PIN")
{
    for (rules::Flag rules::SettingRecord::*part :
         {&rules::SettingRecord::authorised, &rules::SettingRecord::at_unit, &rules::SettingRecord::own_pin}) {
        rules::Question question = looked_at_by("bob");
        question.setting_records[1].*part = std::nullopt;
        CHECK(finds(question, Code::setting_unseen));
    }
}

// Source: common practice, no source: a look before the change says nothing of it, be it before by the clock or because
// the change was made in knowledge of it.
TEST_CASE("A look from before the change is no second pair of eyes")
{
    rules::Question by_clock = looked_at_by("bob");
    by_clock.setting_records.push_back(look("own look", "ann", shift_start + hours(1)));
    CHECK_FALSE(finds(by_clock, Code::setting_unseen));
    by_clock.setting_records[1].at = shift_start - rules::Instant{60};
    by_clock.setting_records[1].after = {};
    CHECK(finds(by_clock, Code::setting_unseen));

    rules::Question by_knowledge = looked_at_by("bob");
    by_knowledge.setting_records.push_back(look("own look", "ann", shift_start + hours(1)));
    by_knowledge.setting_records[1].after = {};
    by_knowledge.setting_records[0].after = {"look"};
    CHECK(finds(by_knowledge, Code::setting_unseen));
}
