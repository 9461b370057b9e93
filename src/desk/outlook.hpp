#pragma once

// What a site should know ahead of time: what changes within days, what is missing today, how many lifts and stops.

#include "register.hpp"

#include <string>
#include <vector>

namespace cotter::desk {

struct Change {
    rules::Day day;
    std::string of, what; // "CL-02", "last day of use"
};

// Last days of units at the site, of cards of the people admitted to it, and of its plans; first use of orders to it.
// From that day to so many days on, by day.
std::vector<Change> changes_ahead(const Book& book, const std::string& site, rules::Instant now, rules::Day today,
                                  int days);

// Units that hang on a machine here and whose check of this shift is not whole or no longer stands.
std::vector<std::string> checks_missing(const Book& book, const std::string& site, rules::Instant now);

struct OpenDefect {
    std::string unit, what;
    int days_old = 0;
    std::string check, item; // of an answer: the record's hash, the item
    std::string defect = ""; // of a report: its id
    std::string found_by = "";
    bool is_not_so = false; // `what` is the item, which was found not to be as it says
};
// Answers of checks and defects of reports that nobody has cleared, the oldest first.
std::vector<OpenDefect> open_defects(const Book& book, rules::Day today);

struct DayCount {
    rules::Day day;
    int lifts = 0, stops = 0; // lifts done; asked for and refused, or stops called
};
// So many days up to and with that one, the oldest first.
DayCount lifts_this_shift(const Book& book); // of the open shift, also over midnight; none is open: none
std::vector<DayCount> lifts_per_day(const Book& book, rules::Day today, int days);

} // namespace cotter::desk
