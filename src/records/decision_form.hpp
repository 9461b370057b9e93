#pragma once

// The JSON form of a decision: what `judge` and `lift` print, and what a lift asked for is recorded with.

#include "decide.hpp"
#include "form.hpp"

#include <functional>
#include <string>

namespace cotter::records {

// What a person reads for a finding; this layer has no words of its own.
struct FindingTexts {
    std::function<std::string(const rules::Finding&)> says;
    std::function<std::string(rules::Code)> source, clears;
};

std::string_view name(rules::Weight weight);

// {outcome, findings: [{code, weight, about, says, measured, limit, unit, source, clears}]}; measured and limit a
// number, a day or null.
Json write_decision(const rules::Decision& decision, const FindingTexts& texts);

// The same for a record, which holds whole numbers only: any other number stands as text.
Json in_whole_numbers(Json decision);

} // namespace cotter::records
