#include "fleet_rows.hpp"

#include <algorithm>
#include <chrono>

namespace cotter::ui {

namespace {

constexpr std::size_t few = 500; // units that are worked out anew each minute

} // namespace

// A great fleet's findings of the hour wait for the next record or day; the heading says since when they stand.
std::string FleetRows::looked_of() const
{
    return units_.size() <= few
               ? looked_at(outside_)
               : std::to_string(outside_.book.state().head.seq) + rules::to_string(outside_.hand("").day);
}

void FleetRows::look()
{
    if (!looked_of_.empty() && looked_of() == looked_of_)
        return;
    units_ = outside_.book.keys("unit");
    rows_.assign(units_.size(), std::nullopt);
    known_ = next_ = 0;
    stopped_ = false;
    as_of_ = outside_.now();
    looked_of_ = looked_of();
}

void FleetRows::make(std::size_t i)
{
    if (rows_[i])
        return;
    rows_[i] = desk::board_row(outside_.book, units_[i], outside_.now(), outside_.hand("").day);
    if (++known_ == units_.size())
        sort();
}

void FleetRows::sort()
{
    std::sort(rows_.begin(), rows_.end(), [](const auto& a, const auto& b) { return comes_before(*a, *b); });
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

bool FleetRows::all_are_read()
{
    constexpr double at_once = 300, a_frame = 30; // ms
    look();
    work(known_ == 0 ? at_once : a_frame);
    return !is_working();
}

void FleetRows::work(double milliseconds)
{
    using Clock = std::chrono::steady_clock;
    const auto until = Clock::now() + std::chrono::duration_cast<Clock::duration>(
                                          std::chrono::duration<double, std::milli>{milliseconds});
    while (is_working() && Clock::now() < until && next_ < units_.size())
        make(next_++);
    if (is_working() && outside_.keep_drawing)
        outside_.keep_drawing();
}

} // namespace cotter::ui
