#include "load.hpp"

#include "mass.hpp"

namespace cotter::rules {

namespace {

std::optional<double> sum(std::optional<double> a, Known<Kilograms> b)
{
    return a && b ? std::optional{*a + static_cast<double>(b->count())} : std::nullopt;
}

bool counts_on_machine(const Case& asked, const Item& item, bool hitch_too)
{
    if (item.role == Role::machine)
        return false;
    const bool in_chart = asked.question.chart && yes(asked.question.chart->includes_hitch);
    return item.role != Role::hitch || hitch_too || !in_chart;
}

} // namespace

std::optional<double> hanging_kg(const Case& asked, const Pipe& pipe)
{
    const auto mass = mass_of(pipe).used;
    if (asked.dispatch)
        return mass;
    const auto& move = asked.question.move;
    return move ? sum(sum(mass, move->water), move->mud) : std::nullopt;
}

std::optional<double> load_under(const Case& asked, std::size_t i, std::optional<double> hanging)
{
    const auto& items = asked.question.items;
    auto load = hanging;
    for (std::size_t below = i + 1; below < items.size(); ++below)
        load = sum(load, items[below].mass);
    return load;
}

std::optional<double> load_on_machine(const Case& asked, bool hitch_too, std::optional<double> hanging)
{
    auto load = hanging;
    for (const Item& item : asked.question.items)
        if (counts_on_machine(asked, item, hitch_too))
            load = sum(load, item.mass);
    if (asked.dispatch)
        return load;
    const auto& move = asked.question.move;
    return move ? sum(sum(load, move->shackles), move->bucket) : std::nullopt;
}

std::optional<double> load_on_machine(const Case& asked, bool hitch_too)
{
    const auto& pipe = asked.question.pipe;
    return pipe ? load_on_machine(asked, hitch_too, hanging_kg(asked, *pipe)) : std::nullopt;
}

bool is_near(double load, Kilograms rating)
{
    const double limit = static_cast<double>(rating.count());
    return load <= limit && load * 100 > limit * near_percent;
}

} // namespace cotter::rules
