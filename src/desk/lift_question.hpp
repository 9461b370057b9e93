#pragma once

// From the records of a book to the question that the decision is asked with.

#include "register.hpp"

#include "question.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::desk {

// Who asks for which lift. Ids as in the book; what is left empty comes from the newest records.
struct LiftAsked {
    std::string unit, pipe, machine, on_the_levers;
    std::string supervisor, signaller;                // empty: as named for today
    std::string standing;                             // empty: the place confirmed last
    std::optional<rules::Millimetres> radius, height; // taped, in place of the plan's figures
    std::optional<rules::Sector> sector;
    rules::Instant now{0};
};

// The units of the load path, top first: machine, hitch, headplate, hooks, slings, attachment.
std::vector<std::string> load_path(const Book& book, const LiftAsked& asked);

rules::Question lift_question(const Book& book, const LiftAsked& asked);

// A question about one unit alone: its papers, events, defects and whereabouts. For the due board.
rules::Question unit_question(const Book& book, const std::string& unit, rules::Instant now, rules::Day day);

} // namespace cotter::desk
