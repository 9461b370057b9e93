#pragma once

// Everything that a book says of one unit in a period of days at the site, both ends included; and what was in force
// when the period began.

#include "register.hpp"

#include <set>
#include <string>
#include <vector>

namespace cotter::desk {

// Outside: shown only because a correction in here names it, or corrects a record in here.
enum class When { before, within, outside };

struct PeriodRecord {
    records::Record record;
    When when = When::within;
};

struct UnitPeriod {
    std::string unit;
    rules::Day from{}, to{};
    std::vector<PeriodRecord> records; // by time, device and number
};

UnitPeriod unit_period(const Book& book, const std::string& unit, rules::Day from, rules::Day to);

// The records by which something stood on the first day of the period although they are older: the governing and the
// newest paper, what is open, how it was set, fitted and where it was. Hashes; `before` is the book up to the day
// before.
std::set<std::string> in_force(const Book& before, const std::string& unit, rules::Day from);

} // namespace cotter::desk
