#pragma once

#include "question.hpp"

namespace cotter::rules {

// Has the setting ever been changed by the record? Before that no look settles how it stands.
bool was_ever_set(const Question& question);

// Does this state take that barrel? Both ends are included; a range that is not known serves nothing.
bool serves(const State& state, Millimetres barrel);

// The state of that name; nullptr if the model has none.
const State* state_named(const Model& model, const Known<Id>& name);

} // namespace cotter::rules
