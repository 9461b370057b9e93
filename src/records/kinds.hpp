#pragma once

// The kinds of record: each is a JSON Schema in kinds/NAME.json, which is also its help.

#include "form.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace cotter::records {

struct Kind {
    std::string name;
    Json schema;
};

const std::vector<Kind>& kinds(); // in name order
const Kind* find_kind(std::string_view name);

// FormError naming field, value and what is accepted if the body is not as the kind's schema says.
void check_body(const Kind& kind, const Json& body);

// Names of the top-level fields whose values are kept apart from the record.
std::vector<std::string> private_fields(const Kind& kind);

} // namespace cotter::records
