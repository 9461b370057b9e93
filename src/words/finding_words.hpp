#pragma once

// What a person reads for a finding: what is wrong, what clears it, and whose rule it is.

#include "finding.hpp"
#include "question.hpp"

#include <functional>
#include <string>
#include <string_view>

namespace cotter::words {

// The name a person knows for an id (of a person, pipe, model, unit, place).
using Naming = std::function<std::string(const std::string&)>;
std::string as_is(const std::string& id);

// The sentence and, under it, the reason with its numbers; the second may be empty.
struct Sentence {
    std::string headline, detail;
    std::string joined() const; // "headline. detail."
};

Sentence says(const rules::Finding& finding, const rules::Question& question, const Naming& naming = as_is);

// Why a plan is not issued: what a lift from that mark would be answered; without a mark, what stops a delivery's gear.
std::string says_of_planned_lift(const std::string& mark, const rules::Finding& finding,
                                 const rules::Question& question, const Naming& naming = as_is);

// What a person does to clear it, in an operator's words.
std::string_view clears(rules::Code code);

// One or two words for the button that clears it.
std::string_view button(rules::Code code);

// Regulation, standard and clause, maker's data or the firm's own rule.
std::string_view source(rules::Code code);
std::string short_source(rules::Code code); // the first of them, for a narrow line: "LOLER 9(3)(a)"

// Does this finding only matter once that one is cleared?
bool waits_for(rules::Code later, rules::Code first);

std::string_view verdict(bool may_lift); // MAY LIFT, DO NOT LIFT

} // namespace cotter::words
