#pragma once

// Small questions made by hand, of which one finding is looked for and all others are left alone.

#include "decide.hpp"

#include <algorithm>
#include <string>

namespace outside {

namespace rules = cotter::rules;

inline const rules::Finding* find(const rules::Decision& decision, rules::Code code)
{
    const auto found = std::find_if(decision.findings.begin(), decision.findings.end(),
                                    [&](const rules::Finding& each) { return each.code == code; });
    return found == decision.findings.end() ? nullptr : &*found;
}

inline bool finds(const rules::Question& question, rules::Code code)
{
    return find(rules::decide(question), code) != nullptr;
}

inline rules::Day day(const std::string& text) { return rules::parse_day(text).value(); }

inline rules::Item item(rules::Role role, const char* tag)
{
    rules::Item made;
    made.role = role;
    made.tag = tag;
    return made;
}

inline constexpr rules::Instant shift_start{1'781'679'600}; // 2026-06-17 07:00 UTC
inline constexpr rules::Instant hours(std::int64_t count) { return rules::Instant{count * 3600}; }

// A lift at noon of a shift from 07:00 to 17:00.
inline rules::Question lift()
{
    rules::Question question;
    question.id = "q";
    question.purpose = rules::Purpose::lift;
    question.day = day("2026-06-17");
    question.now = shift_start + hours(5);
    question.shift = rules::Shift{shift_start, shift_start + hours(10), day("2026-06-17")};
    return question;
}

} // namespace outside
