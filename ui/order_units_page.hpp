#pragma once

// One order: the settings that its sizes want, and the units that would do, the chosen ones first; each opens drawn.

#include "in_steps.hpp"
#include "order_unit_page.hpp"
#include "read_page.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class OrderUnitsPage {
public:
    OrderUnitsPage(const Outside& outside, desk::Order order) : outside_{outside}, order_{std::move(order)} {}
    bool draw(Sheet& sheet); // false when it is left

private:
    void begin();
    void look(); // anew where the book, the minute or the language has changed; a few units a frame
    void ask(std::size_t i);
    void add_settings();
    bool list(Sheet& sheet);
    ReadLine line_of(const desk::OrderUnit& unit) const;

    const Outside& outside_;
    desk::Order order_;
    std::string looked_of_;
    std::vector<std::string> asked_; // which units
    InSteps steps_;
    std::vector<desk::OrderUnit> units_;
    std::optional<std::size_t> lines_of_; // of so many units
    std::size_t before_ = 0;              // lines before theirs
    std::vector<ReadLine> lines_;
    ReadPage reading_;
    std::optional<OrderUnitPage> unit_;
};

// By its own name where it has one, and its customer.
std::string name_of(const desk::Order& order);
// "first use 1 Dec, to 15 Jan".
std::string hire_of(const desk::Order& order);

} // namespace cotter::ui
