#include "plan_results.hpp"

namespace cotter::desk {

namespace {

Json json_of(const Result& r)
{
    Json each{{"what", r.what}, {"value", r.value}, {"unit", r.unit}, {"formula", r.formula}, {"source", r.source}};
    if (!r.about.empty())
        each["about"] = r.about;
    return each;
}

} // namespace

void Results::add(const Result& result) { list_.push_back(json_of(result)); }

void Results::at_most(const Result& result, std::int64_t limit)
{
    check(result, limit, result.value <= limit, "at most");
}

void Results::at_least(const Result& result, std::int64_t limit)
{
    check(result, limit, result.value >= limit, "at least");
}

void Results::say(const std::string& what, const std::string& about, const std::string& says,
                  const std::string& formula, const char* source)
{
    Json each{{"what", what}, {"says", says}, {"formula", formula}, {"source", source}};
    if (!about.empty())
        each["about"] = about;
    list_.push_back(std::move(each));
}

void Results::check(const Result& result, std::int64_t limit, bool holds, const char* accepted)
{
    Json each = json_of(result);
    each["limit"] = limit;
    each["limit_is"] = accepted;
    list_.push_back(std::move(each));
    if (!holds)
        refuse(result.about, "{} {} {}; {} {} is accepted", result.what, result.value, result.unit, accepted, limit);
}

} // namespace cotter::desk
