#pragma once

// Calls from a site to the yard, and their answers.

#include "outlook.hpp"
#include "work.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::desk {

struct Call {
    std::string id, unit, kind, site, why, by; // kind: swap, breakdown, collect
    rules::Instant at{0};
    std::optional<std::string> answer; // nothing: nobody has answered yet
    std::string answered_by = "";
};

// Those without an answer first, the oldest of them on top; then the answered, newest first.
std::vector<Call> calls(const Book& book);

Entry call_the_yard(const Hand& hand, const std::string& unit, const std::string& kind, const std::string& site,
                    const std::string& why);
Entry answer_a_call(const Hand& hand, const Call& call, const std::string& what);

// An answer of a check, a defect found, or one of a report.
Entry clear_defect(const Hand& hand, const OpenDefect& defect, const std::string& remedy,
                   const std::vector<std::string>& photos);

} // namespace cotter::desk
