#pragma once

#include "decide.hpp"
#include "finding_words.hpp"
#include "form.hpp"

#include <ostream>

namespace cotter::cli {

using records::Json;

// The answer to a question, in QUESTION's form: id, outcome, findings.
Json decision_json(const rules::Question& question, const rules::Decision& decision,
                   const words::Naming& naming = words::as_is);

// The same for a person in a terminal.
void tell(const rules::Question& question, const rules::Decision& decision, const words::Naming& naming,
          std::ostream& out);

} // namespace cotter::cli
