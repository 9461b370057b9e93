#include "orders_page.hpp"

#include "title_block.hpp"

#include <algorithm>

namespace cotter::ui {

using figures::Sign;

ReadLine OrdersPage::line_of(const desk::Order& order) const
{
    std::string pipes;
    for (const std::string& each : order.pipes)
        pipes += (pipes.empty() ? "" : ", ") + desk::shown_name(outside_.book, each);
    const bool is_open = pipes.empty() || order.hitch.empty() || !order.end || !order.first_use;
    return {false, is_open ? std::optional{Sign::warning} : std::nullopt, name_of(order),
            (order.site.empty() ? say("site not known") : desk::shown_name(outside_.book, order.site)) + " \u00b7 " +
                hire_of(order) + " \u00b7 " + (pipes.empty() ? say("sizes not known") : pipes) + " \u00b7 " +
                (order.machine.empty() ? "" : order.machine + ", ") +
                say("hitch {}", order.hitch.empty() ? say("not known") : order.hitch),
            "Units"};
}

void OrdersPage::look()
{
    const std::string of = looked_at(outside_);
    if (of == looked_of_)
        return;
    looked_of_ = of;
    orders_ = desk::orders(outside_.book);
    lines_.clear();
    const rules::Day today = outside_.hand("").day;
    const auto over = std::stable_partition(orders_.begin(), orders_.end(),
                                            [&](const desk::Order& each) { return !each.is_over(today); });
    for (auto each = orders_.begin(); each != orders_.end(); ++each) {
        lines_.push_back(line_of(*each));
        if (each >= over)
            lines_.back().words += " \u00b7 " + say("is over");
    }
    if (lines_.empty())
        lines_.push_back({false, std::nullopt, "No order is in the book yet",
                          "Record the first one: customer, site, pipe sizes with their maker, hitch, days."});
}

bool OrdersPage::list(Sheet& sheet)
{
    look();
    const auto pressed = reading_.draw(sheet, "Orders, by first day of use", lines_, {"Back", "Record one", "Weeks"});
    if (pressed.line)
        units_.emplace(outside_, orders_.at(*pressed.line));
    if (pressed.button == "Record one")
        record_.emplace(outside_, "order");
    if (pressed.button == "Weeks")
        weeks_.emplace(outside_, fleet_);
    ui::draw(sheet, title_block(outside_, "DESK", ""));
    return pressed.button != "Back";
}

bool OrdersPage::draw(Sheet& sheet)
{
    const auto is_drawn = [&](auto& page) {
        if (page && !page->draw(sheet))
            page.reset();
        else if (page)
            return true;
        return false;
    };
    return is_drawn(record_) || is_drawn(units_) || is_drawn(weeks_) || list(sheet);
}

} // namespace cotter::ui
