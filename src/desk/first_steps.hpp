#pragma once

// What a new site still needs before its first check, in order; and check sheets to begin with.

#include "work.hpp"

#include <string>
#include <vector>

namespace cotter::desk {

struct FirstStep {
    enum class Kind { admit, sheets, machine, attachment, couple, operator_ } kind;
    bool done = false;
};

std::vector<FirstStep> first_steps(const Book& book);
bool is_begun(const Book& book); // every step is done, or a shift has been worked

// A sheet for attachments and one for machines, to be replaced by the makers' and the firm's own. Source: common
// practice, no source; the items follow what PUWER 1998 reg. 6 and LOLER 1998 reg. 9 leave to be seen by eye.
std::vector<Entry> sheets_to_begin_with(const Hand& hand);

} // namespace cotter::desk
