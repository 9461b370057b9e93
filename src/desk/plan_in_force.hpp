#pragma once

// Which lift plan counts, and which of its pipes are still as they were planned.

#include "reason.hpp"
#include "register.hpp"

#include <string>
#include <vector>

namespace cotter::desk {

// The plan in force there on that day that has the standing place, if one is asked for; else the newest in force, else
// the newest; {} if there is none.
Json plan_for(const Book& book, const std::string& site, rules::Day day, const std::string& standing = "");

// Issued, and the day is one of its days.
bool is_in_force(const Json& plan, rules::Day day);

// All plans in force there on that day, the newest first; if none is, the newest alone.
std::vector<Json> plans_for(const Book& book, const std::string& site, rules::Day day);

// Standing places of all plans in force there on that day, the newest plan's first; of one mark in two plans the first.
std::vector<Json> places_in_force(const Book& book, const std::string& site, rules::Day day);

// The plan's pipe types without those whose sizes are others than when it was made: it was worked out for another pipe.
std::vector<rules::Id> pipes_as_planned(const Book& book, const Json& plan, rules::Instant made);

// When the issue of the plan that stands was made.
rules::Instant made_at(const Book& book, const std::string& plan);

// The sizes of a pipe type as they are kept in a plan.
Json planned_sizes(const Book& book, const std::string& pipe);

// A unit as it is kept in a plan: what its figures were worked out from.
Json planned_gear(const Book& book, const std::string& unit);

// Is this load path, top first, and this chart what the plan was worked out for, its units and models unchanged? A plan
// without a worksheet does not say.
bool is_as_planned(const Book& book, const Json& plan, rules::Instant made, const std::vector<std::string>& path,
                   const std::string& chart);

// What is not as it was when the plan that stands was issued, each in a sentence; lifts with it are outside of the
// plan.
std::vector<Reason> changes_since(const Book& book, const Json& plan);

// Marks of this plan's body that another issued plan of the site has on a day of both: a mark is of one plan.
struct TakenMark {
    std::string mark, plan;
};
std::vector<TakenMark> taken_marks(const Book& book, const std::string& plan, const Json& body);

} // namespace cotter::desk
