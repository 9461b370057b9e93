#pragma once

#include "day.hpp"
#include "figure.hpp"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace cotter::figures {

struct DueMark {
    std::string label, date;          // "KB-04", "Fri 4 Dec"
    int column = 0;                   // attachments, slings and hooks, machines and hitches
    std::optional<rules::Day> latest; // nothing: not known
    std::optional<Sign> sign;         // only when something must be done
};

// The due board as a section through time: today is the ground line, weeks from Monday go down like depth on a staff,
// units hang at their date on leaders; what is out of date or without a date stands above ground.
// Marks below it that do not fit are left out and counted in `left_out`; above it each column says how many more.
struct DueSection {
    Figure figure;
    int left_out = 0, left_out_stops = 0;
};
struct DueReading {
    std::function<std::string(rules::Day)> name_of; // a day as a person reads it, weekday first: "Fri 4 Dec"
    std::function<std::string(int, int)> left_out;  // "3 more are not drawn; 2 of them may not lift"
    std::function<std::string(int)> out_too;        // "3 more", in a column above ground
    int weeks = 12;                                 // that the section is deep
};
DueSection due_section(const std::vector<DueMark>& marks, rules::Day today, double width, double height,
                       const DueReading& reading);

} // namespace cotter::figures
