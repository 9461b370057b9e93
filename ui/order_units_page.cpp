#include "order_units_page.hpp"

#include "amounts.hpp"
#include "finding_words.hpp"
#include "title_block.hpp"

#include <algorithm>

namespace cotter::ui {

using figures::Sign;

namespace {

std::string day_or(const std::optional<rules::Day>& day, const char* without)
{
    return day ? words::short_day(*day) : say(without);
}

std::string joined(const std::vector<std::string>& all, const char* with = ", ")
{
    std::string text;
    for (const std::string& each : all)
        text += (text.empty() ? "" : with) + each;
    return text;
}

// What comes first in words; how much more there is, is drawn.
std::string first_of(const std::vector<std::string>& says)
{
    constexpr std::size_t shown = 2;
    std::string text;
    for (std::size_t i = 0; i < says.size() && i < shown; ++i)
        text += (i > 0 ? " " : "") + says[i];
    return says.size() > shown ? text + " " + say("And {} more.", says.size() - shown) : text;
}

} // namespace

std::string name_of(const desk::Order& order)
{
    return order.id.starts_with("order-") ? order.customer : order.id + ": " + order.customer; // made by the screen
}

std::string hire_of(const desk::Order& order)
{
    return say("first use {}, to {}", day_or(order.first_use, "not known"), day_or(order.end, "an end not known"));
}

// What stops it, each with what clears it; then what is only to be known.
ReadLine OrderUnitsPage::line_of(const desk::OrderUnit& unit) const
{
    const auto naming = [&](const std::string& id) { return desk::shown_name(outside_.book, id); };
    std::vector<std::string> says;
    if (unit.headplate)
        says.push_back(say("{}. Change it before the wagon leaves.", words::said(*unit.headplate)));
    for (const auto* list : {&unit.stops, &unit.cautions})
        for (const rules::Finding& each : *list) {
            const words::Sentence sentence = words::says(each, unit.question, naming);
            says.push_back(sentence.headline + (sentence.detail.empty() ? "" : ": " + sentence.detail) + ". " +
                           words::in_language(std::string{words::clears(each.code)}) + ".");
        }
    const bool chosen = std::find(order_.units.begin(), order_.units.end(), unit.unit) != order_.units.end();
    return {false, unit.would_do() ? unit.cautions.empty() ? Sign::in_order : Sign::warning : Sign::stop,
            unit.label + (unit.model.empty() ? "" : " \u00b7 " + unit.model) +
                (unit.setting.empty() ? "" : " \u00b7 " + say("set to {}", unit.setting)) +
                (chosen ? " \u00b7 " + say("chosen") : ""),
            says.empty() ? "Would do as it stands" : first_of(says), "Draw"};
}

// Which state each pipe wants, model by model; said before the wagon leaves.
void OrderUnitsPage::add_settings()
{
    std::vector<std::string> seen;
    bool any_serves_all = order_.pipes.empty();
    for (const desk::OrderUnit& unit : units_) {
        const std::string model = desk::doc(outside_.book, "unit", unit.unit).value("model", "");
        if (std::find(seen.begin(), seen.end(), model) != seen.end())
            continue;
        seen.push_back(model);
        const auto needs = desk::needs_of(outside_.book, order_, model);
        any_serves_all = any_serves_all || desk::serves_all(needs);
        std::vector<std::string> says;
        for (const desk::PipeNeeds& each : needs)
            says.push_back(desk::shown_name(outside_.book, each.pipe) + ": " +
                           (each.states.empty() ? say("no setting serves it") : joined(each.states, " / ")));
        const bool two = desk::needs_two_states(needs);
        lines_.push_back({false, two ? std::optional{Sign::warning} : std::nullopt,
                          two ? say("{}: these sizes need two settings", unit.model) : unit.model, joined(says)});
    }
    if (!any_serves_all && !steps_.is_stopped())
        lines_.push_back({false, Sign::warning, "No model here serves all of these sizes",
                          "Send two models, or hire one in, before the wagon leaves."});
}

void OrderUnitsPage::ask(std::size_t i)
{
    units_.push_back(desk::unit_for(outside_.book, order_, asked_[i], outside_.now(), outside_.hand("").day));
}

void OrderUnitsPage::begin()
{
    asked_ = desk::attachments(outside_.book);
    steps_.begin(asked_.size());
    units_.clear();
    lines_.clear();
    lines_of_.reset();
    looked_of_ = looked_at(outside_, asked_.size());
}

// Which are best is known once all are asked; until then none is shown, unless the rest is to be left out.
void OrderUnitsPage::look()
{
    if (looked_of_.empty() || looked_at(outside_, asked_.size()) != looked_of_)
        begin();
    steps_.work_on(outside_, [&](std::size_t i) { ask(i); });
    if (steps_.is_working() || lines_of_ == units_.size())
        return;
    lines_of_ = units_.size();
    desk::best_first(units_, order_);
    lines_ = {{true, {}, "Settings that the sizes want", ""}};
    add_settings();
    lines_.push_back({true, {}, "Units, as if sent today", ""});
    before_ = lines_.size();
    for (const desk::OrderUnit& each : units_)
        lines_.push_back(line_of(each));
}

bool OrderUnitsPage::list(Sheet& sheet)
{
    look();
    std::vector<std::string> buttons{"Back"};
    if (const char* button = steps_.button(); *button)
        buttons.insert(buttons.begin(), button);
    const std::string about = *steps_.button() ? said_of(steps_) : hire_of(order_);
    const auto pressed = reading_.draw(sheet, name_of(order_) + ", " + about, lines_, buttons);
    steps_.press(pressed.button);
    if (pressed.line && *pressed.line >= before_)
        unit_.emplace(outside_, order_, units_.at(*pressed.line - before_).unit);
    ui::draw(sheet, title_block(outside_, "DESK", ""));
    return pressed.button != "Back";
}

bool OrderUnitsPage::draw(Sheet& sheet)
{
    if (!unit_)
        return list(sheet);
    if (!unit_->draw(sheet))
        unit_.reset();
    return true;
}

} // namespace cotter::ui
