#pragma once

// Yard: orders in the order of their first use, the units that would do and what is still to do before the wagon
// leaves; which weeks of the quarter are short.

#include "orders.hpp"
#include "outside.hpp"
#include "read_page.hpp"
#include "record_page.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class OrdersPage {
public:
    explicit OrdersPage(const Outside& outside) : outside_{outside} {}
    bool draw(Sheet& sheet); // false when it is left

private:
    enum class Page { orders, units, unit, weeks, gone };

    void look(); // anew each minute, and when something was written
    void orders(Sheet& sheet);
    void units(Sheet& sheet);
    void unit(Sheet& sheet);
    void weeks(Sheet& sheet);
    void draw_weeks(Sheet& sheet, const Box& area) const;
    void draw_unit(Sheet& sheet, const desk::OrderUnit& unit, const Box& box) const;
    void go(Page page);
    std::vector<ReadLine> lines_of(const desk::Order& order) const;
    ReadLine line_of(const desk::OrderUnit& unit, const desk::Order& order) const;

    const Outside& outside_;
    Page page_ = Page::orders;
    std::string looked_of_;
    std::vector<desk::Order> orders_;
    std::size_t chosen_ = 0, shown_ = 0; // of orders_, of units_
    std::vector<desk::OrderUnit> units_;
    std::vector<desk::Week> weeks_;
    ReadPage reading_;
    std::optional<RecordPage> record_;
};

} // namespace cotter::ui
