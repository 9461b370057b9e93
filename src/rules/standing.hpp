#pragma once

// What state of an adjustment stands, by the records of changes and looks.

#include "question.hpp"

#include <vector>

namespace cotter::rules {

struct Standing {
    bool ever_changed = false;
    bool disputed = false;     // until one later look at the unit that knew of every change and look in the dispute
    Known<Id> state;           // nothing: never changed, or not said
    Known<Instant> changed_at; // of the last change; nothing: not known when
    std::vector<Id> known_to_changes; // records that the last changes knew: looks before them
    std::vector<Id> changers;         // all who may have set what stands
    bool changer_unknown = false;
    bool change_time_unknown = false;
};

// The same for any order of the records. Two records that do not reach each other through `after` are concurrent.
Standing standing_of(const std::vector<SettingRecord>& records);

} // namespace cotter::rules
