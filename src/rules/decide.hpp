#pragma once

#include "finding.hpp"
#include "question.hpp"

namespace cotter::rules {

// Changes whenever an answer could; stored beside each decision that is recorded.
inline constexpr int edition = 1;

// May this lift (or this dispatch for use) go ahead? Pure and total: every question has an answer, and the answer has
// every finding. What is not known stops. A dispatch is asked on its own day and on the first day of use; one for
// repair, examination, return or scrap has no findings. For a dispatch
// `shift` holds the instants of its day.
Decision decide(const Question& question);

} // namespace cotter::rules
