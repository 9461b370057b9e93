#pragma once

// Yard: orders in the order of their first use; the units of each, the coming quarter and a new order open from here.

#include "order_units_page.hpp"
#include "record_page.hpp"
#include "weeks_page.hpp"

namespace cotter::ui {

class OrdersPage {
public:
    OrdersPage(const Outside& outside, FleetRows& fleet) : outside_{outside}, fleet_{fleet} {}
    bool draw(Sheet& sheet); // false when it is left

private:
    void look();
    bool list(Sheet& sheet);
    ReadLine line_of(const desk::Order& order) const;

    const Outside& outside_;
    FleetRows& fleet_;
    std::string looked_of_;
    std::vector<desk::Order> orders_;
    std::vector<ReadLine> lines_;
    ReadPage reading_;
    std::optional<OrderUnitsPage> units_;
    std::optional<WeeksPage> weeks_;
    std::optional<RecordPage> record_;
};

} // namespace cotter::ui
