#pragma once

// Yard: every unit with its setting, evidence and latest date; the orders.

#include "fleet_rows.hpp"
#include "orders_page.hpp"
#include "outside.hpp"
#include "record_page.hpp"
#include "scroll.hpp"
#include "title_block.hpp"
#include "today.hpp"
#include "yard_calls.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class Yard {
public:
    explicit Yard(const Outside& outside) : outside_{outside}, rows_{outside}, today_{outside} {}
    bool draw(Sheet& sheet); // false when the person goes back to the first screen

private:
    void list(Sheet& sheet, const Box& area);
    bool draw_page(Sheet& sheet);
    std::string heading() const;

    const Outside& outside_;
    FleetRows rows_;
    Today today_;
    bool shows_today_ = false;
    std::optional<OrdersPage> orders_;
    std::optional<YardCalls> calls_;
    std::optional<RecordPage> record_;
    TouchScroll scroll_;
};

} // namespace cotter::ui
