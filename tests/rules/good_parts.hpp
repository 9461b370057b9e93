#pragma once

// The parts of the good question.

#include "good_question.hpp"

#include <vector>

namespace cotter::rules::good {

Proof proved();
Report half_yearly(const Id& unit);
std::vector<Item> items(); // the whole load path

Answer right(const Id& unit, const Id& line);
std::vector<SettingRecord> setting_records(); // changed by carl, then seen by lena
Pipe pipe();
Move move();
Chart chart();
SetUp set_up();
Person person(const Id& id, std::vector<Id> authorised);
Plan plan();
Strutting strutting();
Order order();

} // namespace cotter::rules::good
