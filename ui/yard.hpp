#pragma once

// Yard: every unit with its setting, evidence and latest date; the orders.

#include "board.hpp"
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
    explicit Yard(const Outside& outside) : outside_{outside}, today_{outside} {}
    bool draw(Sheet& sheet); // false when the person goes back to the first screen

private:
    void list(Sheet& sheet, const Box& area);
    bool draw_page(Sheet& sheet);

    const Outside& outside_;
    Today today_;
    bool shows_today_ = false;
    std::optional<OrdersPage> orders_;
    std::optional<YardCalls> calls_;
    std::optional<RecordPage> record_;
    TouchScroll scroll_;
    std::vector<desk::BoardRow> rows_;
    std::string rows_of_;
};

} // namespace cotter::ui
