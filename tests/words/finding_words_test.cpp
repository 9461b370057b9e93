#include "finding_words.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <string>
#include <vector>

namespace cotter::words {

using namespace rules;

namespace {

Day day(const char* text) { return parse_day(text).value(); }

std::vector<Code> every_code()
{
    std::vector<Code> all;
    for (int i = 0; i < code_count; ++i)
        all.push_back(static_cast<Code>(i));
    return all;
}

Finding finding(Code code, Figure measured = {}, Figure limit = {}, Unit unit = Unit::none, std::string about = "A1")
{
    return {code, std::move(about), measured, limit, unit};
}

std::string joined(const Finding& found, const Question& question = {}) { return says(found, question).joined(); }

// All that a person reads for a code, filled with nothing known and with numbers.
std::vector<std::string> texts(Code code)
{
    const Sentence bare = says(finding(code, {}, {}, Unit::none, ""), Question{});
    const Sentence full = says(finding(code, Figure{12'345.0}, Figure{10'000.0}, Unit::kilogram), Question{});
    return {bare.headline,
            bare.detail,
            full.headline,
            full.detail,
            std::string{clears(code)},
            std::string{button(code)},
            std::string{source(code)}};
}

bool has(const std::string& text, std::string_view part) { return text.find(part) != std::string::npos; }

// A grab of two states, standing at hole 1 under an 800 mm barrel.
Question wrongly_set()
{
    Question q;
    Item grab;
    grab.role = Role::attachment;
    grab.tag = "A1";
    grab.model = Model{};
    grab.model->states = {{"hole 1", Millimetres{600}, Millimetres{700}},
                          {"hole 2", Millimetres{750}, Millimetres{900}}};
    q.items = {grab};
    SettingRecord changed;
    changed.id = "C1";
    changed.kind = SettingKind::changed;
    changed.state = "hole 1";
    q.setting_records = {changed};
    q.pipe = Pipe{};
    q.pipe->barrel = Millimetres{800};
    return q;
}

} // namespace

TEST_CASE("every code has a headline and a detail and what clears it and a button and a source")
{
    for (const Code code : every_code()) {
        CAPTURE(name(code));
        for (const std::string& text : texts(code))
            CHECK_FALSE(text.empty());
    }
}

TEST_CASE("no text holds the name of a code")
{
    for (const Code code : every_code())
        for (const std::string& text : texts(code))
            for (const Code other : every_code()) {
                CAPTURE(text);
                CHECK_FALSE(has(text, name(other)));
            }
}

TEST_CASE("no text cries out")
{
    for (const Code code : every_code())
        for (const std::string& text : texts(code)) {
            CAPTURE(text);
            CHECK_FALSE(has(text, "!"));
        }
}

TEST_CASE("nothing is left to fill in")
{
    for (const Code code : every_code())
        for (const std::string& text : texts(code)) {
            CAPTURE(text);
            CHECK(text.find_first_of("{}") == std::string::npos);
        }
}

TEST_CASE("no text begins or ends in a blank or ends in a full stop")
{
    for (const Code code : every_code())
        for (const std::string& text : texts(code)) {
            CAPTURE(text);
            REQUIRE_FALSE(text.empty());
            CHECK(text.front() != ' ');
            CHECK(text.back() != ' ');
            if (text != source(code))
                CHECK(text.back() != '.');
            CHECK_FALSE(has(text, "  "));
        }
}

TEST_CASE("a button has one or two words")
{
    for (const Code code : every_code()) {
        const std::string_view text = button(code);
        CAPTURE(text);
        CHECK(std::count(text.begin(), text.end(), ' ') <= 1);
    }
}

TEST_CASE("a source is a law or a standard or the maker's or said to be none")
{
    constexpr std::array known{"LOLER 1998",
                               "PUWER 1998",
                               "CDM 2015",
                               "EN ",
                               "ISO ",
                               "HSE ",
                               "maker's data",
                               "firm's own rule",
                               "common practice, no source",
                               "plane geometry"};
    for (const Code code : every_code()) {
        const std::string_view text = source(code);
        CAPTURE(text);
        CHECK(std::any_of(known.begin(), known.end(), [&](std::string_view each) { return text.starts_with(each); }));
    }
}

TEST_CASE("a short source is the first of them without its year")
{
    CHECK(short_source(Code::exam_due) == "LOLER 9(3)(a)");
    CHECK(short_source(Code::machine_device) == "ISO 10567:1992 item 3.4");
    for (const Code code : every_code())
        CHECK_FALSE(short_source(code).empty());
}

TEST_CASE("what a finding is about is named and nothing is named where it is about nothing")
{
    CHECK(says(finding(Code::chart_none, {}, {}, Unit::none, "M1"), {}).headline == "No lift chart: M1");
    CHECK(says(finding(Code::chart_none, {}, {}, Unit::none, ""), {}).headline == "No lift chart");
}

TEST_CASE("a unit is named as a person knows it")
{
    const Naming named = [](const std::string& id) { return "the yellow one (" + id + ")"; };
    CHECK(says(finding(Code::chart_none, {}, {}, Unit::none, "M1"), {}, named).headline ==
          "No lift chart: the yellow one (M1)");
}

TEST_CASE("a name with braces is left as it is")
{
    const Naming named = [](const std::string&) { return std::string{"{limit}"}; };
    CHECK(says(finding(Code::chart_none), {}, named).headline == "No lift chart: {limit}");
}

TEST_CASE("a load over its rating says both with their unit")
{
    CHECK(joined(finding(Code::hook_over_rating, Figure{16'801.2}, Figure{16'000.0}, Unit::kilogram, "K1")) ==
          "Too heavy for the hook: K1. 16 802 kg of 16 000 kg.");
}

TEST_CASE("a figure that is not known says so")
{
    const Sentence said = says(finding(Code::pipe_mass, {}, Figure{1500.0}, Unit::kilogram), {});
    CHECK(has(said.headline, "Not known whether this attachment takes the pipe")); // not that it is too heavy
    CHECK(has(said.detail, "Its mass, or the maker's, is not known"));
}

TEST_CASE("an examination that is due says in how many days")
{
    const auto due = [](const char* last) {
        return says(finding(Code::exam_due, Figure{day("2026-11-25")}, Figure{day(last)}, Unit::day), {});
    };
    CHECK(due("2026-11-25").headline == "Examination due today: A1");
    CHECK(due("2026-11-26").headline == "Examination due in 1 day: A1");
    CHECK(due("2026-12-09").headline == "Examination due in 14 days: A1");
    CHECK(due("2026-12-09").detail == "Last day of use Wed 9 Dec 2026");
}

TEST_CASE("a card that runs out says in how many days")
{
    const Finding found =
        finding(Code::card_due, Figure{day("2026-11-25")}, Figure{day("2026-11-27")}, Unit::day, "sid");
    CHECK(says(found, {}).headline == "Card runs out in 2 days: sid");
}

TEST_CASE("an examination out of date says its last day of use")
{
    CHECK(has(joined(finding(Code::exam_out_of_date, Figure{day("2026-11-25")}, Figure{day("2026-11-24")}, Unit::day)),
              "Last day of use was Tue 24 Nov 2026"));
}

TEST_CASE("a wrong setting says how it stands and what the barrel wants")
{
    const Finding found = finding(Code::setting_wrong, Figure{800.0}, Figure{700.0}, Unit::millimetre);
    CHECK(says(found, wrongly_set()).headline == "Set to hole 1: A1");
    CHECK(has(says(found, wrongly_set()).detail, "800 mm wants hole 2"));
}

TEST_CASE("a barrel that two states take may have either")
{
    Question q = wrongly_set();
    q.items[0].model->states.push_back({"hole 3", Millimetres{800}, Millimetres{950}});
    CHECK(has(says(finding(Code::setting_wrong), q).detail, "wants hole 2 or hole 3"));
}

TEST_CASE("a barrel that is not known wants another setting")
{
    Question q = wrongly_set();
    q.pipe.reset();
    CHECK(has(says(finding(Code::setting_wrong), q).detail, "wants another setting"));
}

TEST_CASE("outside the plan says whether load or radius or what it names")
{
    CHECK(says(finding(Code::plan_outside, Figure{2000.0}, Figure{1999.0}, Unit::kilogram, "plan"), {}).detail ==
          "Load 2000 kg of 1999 kg");
    CHECK(says(finding(Code::plan_outside, Figure{5200.0}, Figure{5199.0}, Unit::millimetre, "plan"), {}).detail ==
          "Radius 5200 mm of 5199 mm");
    CHECK(has(says(finding(Code::plan_outside), {}).detail, "not in it"));
}

TEST_CASE("headline and detail are joined into sentences")
{
    CHECK(Sentence{"No lift chart", "It is missing"}.joined() == "No lift chart. It is missing.");
    CHECK(Sentence{"No lift chart", ""}.joined() == "No lift chart.");
}

TEST_CASE("the verdict is one of two")
{
    CHECK(verdict(true) == "MAY LIFT");
    CHECK(verdict(false) == "DO NOT LIFT");
}

TEST_CASE("what only matters later waits for what comes first")
{
    CHECK(waits_for(Code::setting_unseen, Code::setting_wrong));
    CHECK(waits_for(Code::check_stale, Code::setting_wrong));
    CHECK(waits_for(Code::check_stale, Code::hitch_unseen));
    CHECK(waits_for(Code::briefing_none, Code::plan_out_of_date));
}

TEST_CASE("no code waits for itself and no two wait for each other")
{
    for (const Code a : every_code())
        for (const Code b : every_code())
            if (waits_for(a, b)) {
                CAPTURE(name(a));
                CHECK_FALSE(waits_for(b, a));
            }
}

TEST_CASE("an exam finding does not wait")
{
    for (const Code code : every_code())
        CHECK_FALSE(waits_for(Code::exam_none, code));
}

} // namespace cotter::words
