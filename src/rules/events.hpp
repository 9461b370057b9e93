#pragma once

#include "papers.hpp"
#include "question.hpp"

namespace cotter::rules {

// Is it an event at all: like-for-like parts that the model lists, and lay-up, are none.
bool is_event(const Event& event, const Item& item);

// Is it of a kind that can stop: no touch, and no repair that is not structural?
bool can_stop(const Event& event, const Item& item);

// Does it stop the item on that day: from its own day on until an examination or an assessment clears it?
// A touch never stops. Source: LOLER reg. 9(3)(a)(iv) ("exceptional circumstances"); which events count is the firm's
// own rule.
bool stops(const Papers& papers, const Item& item, const Event& event, Day today);

// A touch asks for two people who have looked at it.
bool wants_looking_at(const Event& event);

// Does this report clear that event for the item?
bool clears(const Report& report, const Event& event);

} // namespace cotter::rules
