// Row dispatch: is the wagon loaded with what the order needs, for as long as the hire lasts?
// Source: firm's own rule; LOLER 1998 reg. 9(4) for the papers that go with it.

#include "case.hpp"

#include <algorithm>

namespace cotter::rules {

namespace {

bool is_settled(Known<Listed> part) { return part == Listed::listed || part == Listed::not_applicable; }

void ask_parts(const Item& item, Findings& out)
{
    const LooseParts parts = item.loose_parts.value_or(LooseParts{});
    if (!is_settled(parts.headplate) || !is_settled(parts.pin) || !is_settled(parts.keeper))
        out.add(Code::loose_parts, item.tag);
}

// The latest date of an item that is in date on that day.
Known<Day> latest_if_in_date(const Question& question, const Item& item, Known<Day> day)
{
    if (!day)
        return std::nullopt;
    const auto latest = papers_of(question, item, *day).governing.latest;
    return latest && *day <= *latest ? latest : std::nullopt;
}

// In date on both days, and falls due before the hire's end.
void ask_hire(const Case& asked, const Order& order, std::size_t i, Findings& out)
{
    const Item& item = asked.question.items[i];
    const auto on_dispatch = latest_if_in_date(asked.question, item, asked.question.day);
    const auto on_first_use = latest_if_in_date(asked.question, item, order.first_use_day);
    if (on_dispatch && on_first_use && order.end_day && *on_first_use < *order.end_day)
        out.add(Code::hire_due, item.tag, *on_first_use, *order.end_day, Unit::day);
}

bool is_open(const Order& order)
{
    return order.pipes.empty() || !order.hitch || !order.end_day ||
           std::any_of(order.pipes.begin(), order.pipes.end(), [](const Pipe& pipe) { return !pipe.barrel; });
}

} // namespace

void dispatch_row(const Case& asked, Findings& out)
{
    for (const Item& item : asked.question.items)
        if (item.role == Role::attachment)
            ask_parts(item, out);
    const auto& order = asked.question.order;
    if (!order || is_open(*order))
        out.add(Code::order_open, order ? about(order->id) : std::string{});
    if (order)
        for (std::size_t i = 0; i < asked.question.items.size(); ++i)
            ask_hire(asked, *order, i, out);
}

} // namespace cotter::rules
