// The briefing on the plan in force: read out in Site, signed by each person; in the Cab by whom the finding names.

#include "lift_question.hpp"
#include "plan_in_force.hpp"
#include "rig.hpp"
#include "written.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using tests::Rig;
using tests::SampleBook;

namespace {

// The plan in force as it stands, issued once more: everybody's signature is of the issue before.
void issue_anew(SampleBook& sample)
{
    desk::Hand quill;
    quill.by = "quill";
    quill.at = *desk::parse_instant("2026-11-25T07:55:00Z");
    quill.day = *rules::parse_day("2026-11-25");
    const auto records = sample.store().newest("lift_plan", 1);
    auto body = records.front().entry.body;
    body["issue"] = body["issue"].get<int>() + 1;
    desk::write(sample.store(), {desk::entry(quill, "lift_plan", records.front().entry.about, body)});
}

std::size_t briefed_on(const SampleBook& sample, int issue)
{
    std::size_t count = 0;
    for (const auto& plan : const_cast<SampleBook&>(sample).store().facts("plan"))
        for (const auto& each : plan.doc.value("briefed", records::Json::array()))
            count += each["issue"] == issue ? 1 : 0;
    return count;
}

} // namespace

TEST_CASE("each person signs the issue that is in force, and has signed it then")
{
    SampleBook sample;
    issue_anew(sample);
    const int issue = sample.store().newest("lift_plan", 1).front().entry.body["issue"];
    CHECK(briefed_on(sample, issue) == 0);
    Rig rig{sample.store(), ui::Door::site};
    rig.tap("People");
    if (!rig.target("Briefing"))
        rig.tap("More");
    rig.tap("Briefing");
    CHECK(rig.shows("issue " + std::to_string(issue)));
    CHECK(rig.shows("Signs after it was read out"));
    rig.tap("Sign");
    rig.tap("Sign");
    CHECK(briefed_on(sample, issue) == 2);
    for (int i = 0; i < 6 && !rig.shows("Has signed this issue"); ++i)
        rig.key(ImGuiKey_PageDown);
    CHECK(rig.shows("Has signed this issue"));
}

TEST_CASE("in the Cab who is not briefed signs from the finding itself")
{
    SampleBook sample;
    issue_anew(sample);
    const int issue = sample.store().newest("lift_plan", 1).front().entry.body["issue"];
    Rig rig{sample.store(), ui::Door::cab};
    for (const std::string& next : {std::string{"T. Dunmore (invented)"}, std::string{"EX-14"}, std::string{"Mark B"},
                                    sample.store().fact("pipe", "sk-450")->doc.value("name", "")})
        rig.tap(next);
    CHECK(rig.shows("DO NOT LIFT"));
    for (int i = 0; i < 6 && rig.target("Brief"); ++i) {
        rig.tap("Brief");
        rig.tap("I was briefed");
    }
    CHECK(briefed_on(sample, issue) >= 2);
    CHECK_FALSE(rig.shows("Not briefed"));
}
