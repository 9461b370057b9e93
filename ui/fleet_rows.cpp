#include "fleet_rows.hpp"

#include "amounts.hpp"
#include "local_time.hpp"

#include <algorithm>

namespace cotter::ui {

void FleetRows::look()
{
    if (!looked_of_.empty() && looked_at(outside_, units_.size()) == looked_of_)
        return;
    units_ = outside_.book.keys("unit");
    rows_.assign(units_.size(), std::nullopt);
    steps_.begin(units_.size());
    as_of_ = outside_.now();
    looked_of_ = looked_at(outside_, units_.size());
}

void FleetRows::make(std::size_t i)
{
    if (!rows_[i])
        rows_[i] = desk::board_row(outside_.book, units_[i], outside_.now(), outside_.hand("").day);
}

void FleetRows::step(std::size_t i)
{
    make(i);
    if (i + 1 == rows_.size())
        std::sort(rows_.begin(), rows_.end(), [](const auto& a, const auto& b) { return comes_before(*a, *b); });
}

std::string FleetRows::since() const
{
    if (as_of_.count() / 60 == outside_.now().count() / 60)
        return "";
    const std::string zone = desk::zone_of(outside_.book, desk::current_site(outside_.book));
    return words::clock_time(desk::local_minutes(as_of_, zone));
}

const desk::BoardRow& FleetRows::row(std::size_t i)
{
    make(i);
    return *rows_[i];
}

std::vector<desk::BoardRow> FleetRows::known_rows() const
{
    std::vector<desk::BoardRow> known;
    for (const auto& each : rows_)
        if (each)
            known.push_back(*each);
    return known;
}

void FleetRows::work(double milliseconds)
{
    steps_.work(outside_, milliseconds, [&](std::size_t i) { step(i); });
}

bool FleetRows::all_are_read()
{
    look();
    steps_.work_on(outside_, [&](std::size_t i) { step(i); });
    return !steps_.is_working();
}

} // namespace cotter::ui
