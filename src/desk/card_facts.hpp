#pragma once

// From the records of a book to the lift card of one lift.

#include "lift_question.hpp"

#include "hold_points.hpp"

namespace cotter::desk {

// `question` is the one that was asked of the lift.
rules::CardFacts card_facts(const Book& book, const LiftAsked& asked, const rules::Question& question);

// Lifts done in the shift that is open at the current site: of one pipe type, or of all.
int laid_this_shift(const Book& book, const std::string& pipe = "");

} // namespace cotter::desk
