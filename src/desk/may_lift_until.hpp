#pragma once

#include "question.hpp"

#include <string>

namespace cotter::desk {

// Until when the answer to a question stays MAY LIFT if nothing else happens: the last whole second, within the shift.
// An examination, a plan or a card may end at a midnight before the shift does. A question that may not be lifted now,
// or has no shift, gives its own `now`. `zone` is the site's.
rules::Instant may_lift_until(const rules::Question& question, const std::string& zone);

} // namespace cotter::desk
