#pragma once

// The figures of a plan that was worked out, each with its limit, formula and source.

#include "reason.hpp"
#include "register.hpp"

#include <concepts>
#include <string>
#include <vector>

namespace cotter::desk {

struct Result {
    std::string what, about;
    std::int64_t value;
    const char* unit;
    std::string formula;
    const char* source;
};

// Collects the results; what passes its limit is a refusal too.
class Results {
public:
    void add(const Result& result);
    void at_most(const Result& result, std::int64_t limit);
    void at_least(const Result& result, std::int64_t limit);
    void say(const std::string& what, const std::string& about, const std::string& says, const std::string& formula,
             const char* source); // where it is no number
    template <typename... Values> void refuse(const std::string& about, const std::string& why, const Values&... values)
    {
        refusals.push_back({about, why, {in_text(values)...}});
    }

    Json take() { return std::move(list_); }
    std::vector<Reason> refusals;

private:
    static std::string in_text(const std::string& value) { return value; }
    static std::string in_text(std::integral auto value) { return std::to_string(value); }
    void check(const Result& result, std::int64_t limit, bool holds, const char* accepted);

    Json list_ = Json::array();
};

} // namespace cotter::desk
