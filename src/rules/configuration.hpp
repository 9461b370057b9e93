#pragma once

#include "case.hpp"

namespace cotter::rules {

// In which configuration the item is today. The state that stands counts as one only if the model says so.
Known<Id> configuration_of(const Case& asked, const Item& item);

} // namespace cotter::rules
