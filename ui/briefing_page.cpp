#include "briefing_page.hpp"

#include "plan_numbers.hpp"
#include "title_block.hpp"

#include "plan_in_force.hpp"
#include "plan_lines.hpp"
#include "written.hpp"

#include <algorithm>

namespace cotter::ui {

using records::Json;

namespace {

bool has_signed(const Json& plan, const std::string& person)
{
    const Json briefed = plan.value("briefed", Json::array());
    return std::any_of(briefed.begin(), briefed.end(), [&](const Json& each) {
        return each["person"] == person && each["issue"] == plan.value("issue", Json{});
    });
}

std::vector<Json> plans_in_force(const Outside& outside)
{
    const rules::Day today = outside.hand("").day;
    auto plans = desk::plans_for(outside.book, desk::current_site(outside.book), today);
    std::erase_if(plans, [&](const Json& each) { return !desk::is_in_force(each, today); });
    return plans;
}

} // namespace

std::optional<Json> plan_to_sign(const Outside& outside, const std::string& person)
{
    for (const Json& each : plans_in_force(outside))
        if (!has_signed(each, person))
            return each;
    return std::nullopt;
}

void sign_briefing(const Outside& outside, const Json& plan, const std::string& person)
{
    outside.signing.once(person, [&outside, plan, person] {
        desk::write(outside.book, {desk::brief(outside.hand(person), plan, person)});
    });
}

// Everybody who is admitted here, who has not signed yet first.
void BriefingPage::add_people(const Json& plan)
{
    const auto& book = outside_.book;
    const std::string site = desk::current_site(book);
    for (const auto& person : book.facts("person"))
        if (person.doc.value("admission", Json::object()).value("site", "") == site)
            people_.push_back(person.key.key);
    std::stable_partition(people_.begin(), people_.end(),
                          [&](const std::string& each) { return !has_signed(plan, each); });
    for (const std::string& each : people_) {
        const bool signed_it = has_signed(plan, each);
        lines_.push_back({false, signed_it ? figures::Sign::in_order : figures::Sign::to_do,
                          desk::shown_name(book, each),
                          signed_it ? "Has signed this issue" : "Signs after it was read out and understood",
                          signed_it ? "" : "Sign"});
    }
}

void BriefingPage::look()
{
    const std::string of = looked_at(outside_) + std::to_string(shown_);
    if (of == looked_of_)
        return;
    looked_of_ = of;
    const auto& book = outside_.book;
    plans_ = plans_in_force(outside_);
    lines_.clear();
    people_.clear();
    if (plans_.empty()) {
        lines_.push_back({false, figures::Sign::stop, "No lift plan is in force here",
                          "The appointed person issues one first: Plans"});
        return;
    }
    const Json& plan = plans_[shown_ % plans_.size()];
    lines_.push_back({true, {}, "Who signs", ""});
    add_people(plan);
    lines_.push_back({true, {}, "What is read out", ""});
    for (const Json& each : desk::lines_of_plan(book, plan)) {
        const PlanNumbers::Line line = PlanNumbers::line_of(book, each);
        lines_.push_back({false, {}, line.words + ": " + line.value, line.how});
    }
}

bool BriefingPage::draw(Sheet& sheet)
{
    look();
    std::vector<std::string> buttons{"Back"};
    if (plans_.size() > 1)
        buttons.emplace_back("Next plan");
    const Json plan = plans_.empty() ? Json::object() : plans_[shown_ % plans_.size()];
    const std::string heading =
        plan.empty() ? say("Briefing") : say("Briefing: {}, issue {}", plan.value("id", ""), plan.value("issue", 0));
    const auto pressed = reading_.draw(sheet, heading, lines_, buttons);
    ui::draw(sheet, title_block(outside_, "READ ONLY", ""));
    if (pressed.button == "Next plan") {
        ++shown_;
        reading_.back_to_the_top();
    }
    if (pressed.line && *pressed.line >= 1 && *pressed.line <= people_.size())
        sign_briefing(outside_, plan, people_[*pressed.line - 1]);
    return pressed.button != "Back";
}

} // namespace cotter::ui
