#include "people.hpp"

#include <algorithm>

namespace cotter::ui {

using records::Json;

std::vector<std::string> people_with(const records::Book& book, const char* list, const std::string& wanted)
{
    std::vector<std::string> people;
    for (const auto& fact : book.facts("person")) {
        const auto has = fact.doc.value("admission", Json::object()).value(list, std::vector<std::string>{});
        if (std::find(has.begin(), has.end(), wanted) != has.end())
            people.push_back(fact.key.key);
    }
    return people;
}

} // namespace cotter::ui
