#pragma once

// A unit for an order, drawn: a number for each thing that is still to do before the wagon leaves, and beside it what.

#include "orders.hpp"
#include "outside.hpp"
#include "read_page.hpp"

#include "attachment.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class OrderUnitPage {
public:
    OrderUnitPage(const Outside& outside, desk::Order order, std::string unit)
        : outside_{outside}, order_{std::move(order)}, unit_{std::move(unit)}
    {
    }
    bool draw(Sheet& sheet); // false when it is left

private:
    void look(); // anew where the book, the minute or the language has changed
    void add(figures::Note::To to, const std::string& words, const std::string& more, figures::Sign sign);
    void add_findings(const desk::OrderUnit& unit, const std::vector<rules::Finding>& findings, figures::Sign sign);
    void look_at_picture(const desk::OrderUnit& unit);
    void draw_picture(Sheet& sheet, const Box& box) const;

    const Outside& outside_;
    desk::Order order_;
    std::string unit_, looked_of_, title_;
    std::optional<figures::AttachmentPicture> picture_; // nothing: its model is not in the book
    std::vector<ReadLine> lines_;
    ReadPage reading_;
};

} // namespace cotter::ui
