#pragma once

// A complete question that may lift with nothing to say, and a dispatch for use with nothing to say.
// A test changes one thing in it. The masses are whole: pipe 1400 kg, so that attachment, sling, hook, headplate and
// hitch carry 1400, 1650, 1680, 1700 and 1800 kg and the machine 2000 kg.

#include "decide.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace cotter::rules {

using namespace literals;

Question good_lift(); // on Wed 25 Nov 2026, three hours into a shift of ten
Question good_use();  // the same attachment on a wagon, for first use on 30 Nov and a hire to 29 Jan 2027

Day day(std::string_view text);
Instant minute(int after_start_of_shift);

Item& item(Question& question, Role role);     // that must be there
Model& model(Question& question, Role role);   // of that item
Report& report(Question& question, Role role); // that names that item
void remove_item(Question& question, Role role);
void remove_report(Question& question, Role role);

Event event(EventKind kind, const Id& unit);       // of today, 10 minutes into the shift, with id "E1"
Report exceptional(Question& question, Role role); // of today: an examination after exceptional circumstances, proved

std::optional<Finding> finding(const Question& question, Code code, std::string_view about);
bool finds(const Question& question, Code code, std::string_view about);
bool finds(const Question& question, Code code); // about anything
bool is_silent(const Question& question);        // no finding at all
std::string codes(const Question& question);     // for the message of a failed test

} // namespace cotter::rules
