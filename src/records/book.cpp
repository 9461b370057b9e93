#include "book.hpp"

#include <algorithm>

namespace cotter::records {

namespace {

template <class Wanted> std::vector<Fact> those(std::vector<Fact> facts, Wanted is_wanted)
{
    facts.erase(std::remove_if(facts.begin(), facts.end(), [&](const Fact& each) { return !is_wanted(each); }),
                facts.end());
    return facts;
}

} // namespace

std::vector<Fact> Book::open_facts(const std::string& kind) const
{
    return those(facts(kind), [](const Fact& each) { return each.open; });
}

std::vector<Fact> Book::facts_since(const std::string& kind, rules::Instant first) const
{
    return those(facts(kind), [&](const Fact& each) { return each.at >= first.count(); });
}

std::vector<std::string> Book::keys(const std::string& kind) const
{
    std::vector<std::string> all;
    for (const Fact& each : facts(kind))
        all.push_back(each.key.key);
    return all;
}

std::size_t Book::units_with_tag(const std::string& tag) const
{
    const auto units = facts("unit");
    return static_cast<std::size_t>(
        std::count_if(units.begin(), units.end(), [&](const Fact& each) { return each.doc.value("tag", "") == tag; }));
}

} // namespace cotter::records
