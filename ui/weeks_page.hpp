#pragma once

// Yard: the coming quarter, which weeks are short, of all attachments and of each model.

#include "fleet_rows.hpp"
#include "orders.hpp"
#include "sheet.hpp"

#include <string>
#include <vector>

namespace cotter::ui {

class WeeksPage {
public:
    WeeksPage(const Outside& outside, FleetRows& fleet) : outside_{outside}, fleet_{fleet} {}
    bool draw(Sheet& sheet); // false when it is left

private:
    void look(); // once the fleet is read
    std::string heading() const;
    void draw_weeks(Sheet& sheet, const Box& area) const;

    const Outside& outside_;
    FleetRows& fleet_;
    std::string looked_of_;
    std::vector<desk::Week> weeks_;
};

} // namespace cotter::ui
