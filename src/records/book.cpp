#include "book.hpp"

#include <algorithm>

namespace cotter::records {

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
    return static_cast<std::size_t>(std::count_if(
        units.begin(), units.end(), [&](const Fact& each) { return each.doc.value("tag", "") == tag; }));
}

} // namespace cotter::records
