#include "orders_page.hpp"

#include "attachment_picture.hpp"
#include "foot.hpp"

#include "amounts.hpp"
#include "finding_words.hpp"
#include "fleet_weeks.hpp"
#include "title_block.hpp"

#include <algorithm>
#include <numeric>

namespace cotter::ui {

using figures::Sign;

namespace {

constexpr int quarter = 13; // weeks

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

std::string site_of(const records::Book& book, const desk::Order& order)
{
    return order.site.empty() ? say("site not known") : desk::shown_name(book, order.site);
}

std::string hire_of(const desk::Order& order)
{
    return say("first use {}, to {}", day_or(order.first_use, "not known"), day_or(order.end, "an end not known"));
}

} // namespace

void OrdersPage::go(Page page)
{
    page_ = page;
    reading_.back_to_the_top();
    looked_of_.clear();
}

void OrdersPage::look()
{
    const rules::Instant now = outside_.now();
    const std::string of = looked_at(outside_);
    if (of == looked_of_)
        return;
    looked_of_ = of;
    const rules::Day today = outside_.hand("").day;
    orders_ = desk::orders(outside_.book);
    if ((page_ == Page::units || page_ == Page::unit) && chosen_ < orders_.size())
        units_ = desk::units_for(outside_.book, orders_[chosen_], now, today);
    if (page_ == Page::weeks)
        weeks_ = desk::weeks_ahead(outside_.book, now, today, quarter);
}

void OrdersPage::orders(Sheet& sheet)
{
    std::vector<ReadLine> lines;
    for (const desk::Order& each : orders_) {
        std::vector<std::string> pipes;
        for (const std::string& pipe : each.pipes)
            pipes.push_back(desk::shown_name(outside_.book, pipe));
        const bool is_open = pipes.empty() || each.hitch.empty() || !each.end || !each.first_use;
        lines.push_back({false, is_open ? std::optional{Sign::warning} : std::nullopt, each.id + ": " + each.customer,
                         site_of(outside_.book, each) + " \u00b7 " + hire_of(each) + " \u00b7 " +
                             (pipes.empty() ? say("sizes not known") : joined(pipes)) + " \u00b7 " +
                             say("hitch {}", each.hitch.empty() ? say("not known") : each.hitch),
                         "Units"});
    }
    if (lines.empty())
        lines.push_back({false, std::nullopt, "No order is in the book yet",
                         "Record the first one: customer, site, pipe sizes with their maker, hitch, days."});
    const auto pressed = reading_.draw(sheet, "Orders, by first day of use", lines, {"Back", "Record one", "Weeks"});
    if (pressed.line) {
        chosen_ = *pressed.line;
        go(Page::units);
    }
    if (pressed.button == "Back")
        go(Page::gone);
    if (pressed.button == "Record one")
        record_.emplace(outside_, "order");
    if (pressed.button == "Weeks")
        go(Page::weeks);
}

namespace {

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

// What stops it, each with what clears it; then what is only to be known.
ReadLine OrdersPage::line_of(const desk::OrderUnit& unit, const desk::Order& order) const
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
    const bool chosen = std::find(order.units.begin(), order.units.end(), unit.unit) != order.units.end();
    return {false, unit.would_do() ? unit.cautions.empty() ? Sign::in_order : Sign::warning : Sign::stop,
            unit.label + (unit.model.empty() ? "" : " \u00b7 " + unit.model) +
                (unit.setting.empty() ? "" : " \u00b7 " + say("set to {}", unit.setting)) +
                (chosen ? " \u00b7 " + say("chosen") : ""),
            says.empty() ? "Would do as it stands" : first_of(says), "Draw"};
}

// Which state each pipe wants, model by model; said before the wagon leaves.
std::vector<ReadLine> OrdersPage::lines_of(const desk::Order& order) const
{
    std::vector<ReadLine> lines;
    std::vector<std::string> seen;
    for (const desk::OrderUnit& unit : units_) {
        const std::string model = desk::doc(outside_.book, "unit", unit.unit).value("model", "");
        if (std::find(seen.begin(), seen.end(), model) != seen.end())
            continue;
        seen.push_back(model);
        const auto needs = desk::needs_of(outside_.book, order, model);
        std::vector<std::string> says;
        for (const desk::PipeNeeds& each : needs)
            says.push_back(desk::shown_name(outside_.book, each.pipe) + ": " +
                           (each.states.empty() ? say("no setting serves it") : joined(each.states, " / ")));
        const bool two = desk::needs_two_states(needs);
        lines.push_back({false, two ? std::optional{Sign::warning} : std::nullopt,
                         two ? say("{}: these sizes need two settings", unit.model) : unit.model, joined(says)});
    }
    return lines;
}

void OrdersPage::units(Sheet& sheet)
{
    const desk::Order& order = orders_.at(chosen_);
    std::vector<ReadLine> lines{{true, {}, "Settings that the sizes want", ""}};
    for (ReadLine& each : lines_of(order))
        lines.push_back(std::move(each));
    lines.push_back({true, {}, "Units, as if sent today", ""});
    const std::size_t before = lines.size();
    for (const desk::OrderUnit& each : units_)
        lines.push_back(line_of(each, order));
    const auto pressed = reading_.draw(sheet, order.id + ", " + hire_of(order), lines, {"Back"});
    if (pressed.button == "Back")
        go(Page::orders);
    if (pressed.line && *pressed.line >= before) {
        shown_ = *pressed.line - before;
        page_ = Page::unit;
        reading_.back_to_the_top();
    }
}

namespace {

// What is still to do, with the part of the unit that it is about.
struct ToDo {
    figures::Note::To to;
    std::string words, more;
    Sign sign = Sign::to_do;
};

figures::Note::To part_of(rules::Code code)
{
    switch (row(code)) {
    case rules::Row::setting: return figures::Note::To::hole;
    case rules::Row::pipe:
    case rules::Row::load: return figures::Note::To::pipe;
    default: return figures::Note::To::head;
    }
}

std::vector<ToDo> to_do(const desk::OrderUnit& unit, const words::Naming& naming)
{
    std::vector<ToDo> all;
    if (unit.headplate)
        all.push_back({figures::Note::To::head, words::said(*unit.headplate), "Change it before the wagon leaves."});
    for (const auto* list : {&unit.stops, &unit.cautions})
        for (const rules::Finding& each : *list) {
            const words::Sentence sentence = words::says(each, unit.question, naming);
            all.push_back({part_of(each.code), sentence.headline,
                           sentence.detail + ". " + words::in_language(std::string{words::clears(each.code)}) + ".",
                           list == &unit.stops ? Sign::to_do : Sign::warning});
        }
    return all;
}

} // namespace

void OrdersPage::draw_unit(Sheet& sheet, const desk::OrderUnit& unit, const Box& box) const
{
    const rules::Item* item = rules::find_item(unit.question, rules::Role::attachment);
    if (!item || !item->model) {
        sheet.wrapped({box.x + 6, box.y + 10, box.w - 12, 0}, Letter::text,
                      "Its model is not in this book, so it is not drawn.", 3);
        return;
    }
    const std::string model = desk::doc(outside_.book, "unit", unit.unit).value("model", "");
    auto picture = picture_of(desk::doc(outside_.book, "model", model), *item->model, unit.question);
    for (const desk::PipeNeeds& need : desk::needs_of(outside_.book, orders_.at(chosen_), model))
        for (figures::StatePlace& each : picture.states)
            each.wanted =
                each.wanted || std::find(need.states.begin(), need.states.end(), each.name) != need.states.end();
    const auto naming = [&](const std::string& id) { return desk::shown_name(outside_.book, id); };
    int number = 0;
    for (const ToDo& each : to_do(unit, naming))
        if (++number <= 6)
            picture.notes.push_back({each.to, std::to_string(number)});
    sheet.figure(figures::attachment(picture, box.w - 8, box.h - 10), box.x + 4, box.y + 4);
}

// Drawn, with a number for each thing that is still to do, and beside it what.
void OrdersPage::unit(Sheet& sheet)
{
    if (shown_ >= units_.size())
        return go(Page::units);
    const desk::OrderUnit& it = units_[shown_];
    const std::vector<std::string> buttons{"Back"};
    const Box area = begin_page(sheet, it.label + " \u00b7 " + it.model, buttons);
    const bool narrow = sheet.is_narrow();
    const Box left{area.x, area.y, narrow ? area.w : area.w * 0.45, narrow ? area.h * 0.45 : area.h};
    const Box right{narrow ? area.x : left.w, narrow ? area.y + left.h : area.y, narrow ? area.w : area.w - left.w,
                    narrow ? area.h - left.h : area.h};
    draw_unit(sheet, it, left);
    std::vector<ReadLine> lines;
    int number = 0;
    for (const ToDo& each : to_do(it, [&](const std::string& id) { return desk::shown_name(outside_.book, id); }))
        lines.push_back(
            {false, each.sign, std::to_string(++number) + ". " + words::in_language(each.words), each.more});
    if (lines.empty())
        lines.push_back({false, Sign::in_order, "Would do as it stands", ""});
    reading_.list(sheet, lines, right);
    if (draw_foot(sheet, buttons) == "Back") {
        page_ = Page::units;
        reading_.back_to_the_top();
    }
}

// All attachments, then the models, those that fall short first; as many as fit.
void OrdersPage::draw_weeks(Sheet& sheet, const Box& area) const
{
    std::vector<std::size_t> models(weeks_.empty() ? 0 : weeks_.front().models.size());
    std::iota(models.begin(), models.end(), std::size_t{0});
    std::stable_partition(models.begin(), models.end(), [&](std::size_t model) {
        return std::any_of(weeks_.begin(), weeks_.end(),
                           [&](const desk::Week& each) { return each.models[model].is_short(); });
    });
    models.resize(std::min(models.size(), figures::fleet_columns_that_fit(area.w) - 1));
    std::vector<std::string> headings{say("All of them")};
    for (const std::size_t each : models)
        headings.push_back(desk::shown_name(outside_.book, weeks_.front().models[each].model));
    std::vector<figures::FleetWeek> drawn;
    const auto cell = [](int wanted, int in_date) {
        return figures::FleetCell{wanted, in_date, say("{} of {}", wanted, in_date)};
    };
    for (const desk::Week& each : weeks_) {
        drawn.push_back({words::short_day(each.monday), each.is_short(), {cell(each.wanted, each.in_date)}});
        for (const std::size_t model : models)
            drawn.back().cells.push_back(cell(each.models[model].only, each.models[model].in_date));
    }
    sheet.figure(figures::fleet_weeks(headings, drawn, area.w, area.h), area.x, area.y);
}

void OrdersPage::weeks(Sheet& sheet)
{
    const auto short_of =
        std::find_if(weeks_.begin(), weeks_.end(), [](const desk::Week& each) { return each.is_short(); });
    const std::vector<std::string> buttons{"Back"};
    const Box area = begin_page(sheet,
                                short_of == weeks_.end() ? say("The coming quarter")
                                                         : say("Short from {}: have one examined, or hire one in",
                                                               words::short_day(short_of->monday)),
                                buttons);
    constexpr double under = 11;
    draw_weeks(sheet, {area.x, area.y, area.w, area.h - under});
    const Lettering small{Letter::second, true};
    sheet.wrapped({4, area.y + area.h - under + 1.4, area.w - 8, 0}, small,
                  "Wanted by orders, of those in date to the week's end. Of a model: the orders that no other serves.",
                  2, colours().second);
    if (draw_foot(sheet, buttons) == "Back")
        go(Page::orders);
}

bool OrdersPage::draw(Sheet& sheet)
{
    if (record_) {
        if (!record_->draw(sheet))
            record_.reset();
        return true;
    }
    look();
    switch (page_) {
    case Page::orders: orders(sheet); break;
    case Page::units: units(sheet); break;
    case Page::unit: unit(sheet); break;
    case Page::weeks: weeks(sheet); break;
    case Page::gone: break;
    }
    ui::draw(sheet, title_block(outside_, "DESK", ""));
    return page_ != Page::gone;
}

} // namespace cotter::ui
