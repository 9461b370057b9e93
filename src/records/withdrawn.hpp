#pragma once

#include "record.hpp"

#include <vector>

namespace cotter::records {

// Does the correction take the old record away altogether?
bool is_void(const Record& correction);

// A called stop, a check, a defect found, an event: their correction could remove a stop.
bool may_stop(const Record& record);

// What is left of such a record and its correction: the stop stays, and the correction's author counts as one who
// lifts or clears it; whether that person is entitled is asked where the records become a question.
std::vector<Record> withdrawn(const Record& record, const Record& correction);

} // namespace cotter::records
