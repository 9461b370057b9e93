#include "people.hpp"

#include "entitled.hpp"
#include "kinds.hpp"
#include "register.hpp"

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

std::vector<std::string> who_may_write(const records::Book& book, const std::string& kind)
{
    const Json by = records::find_kind(kind)->schema.value("x-by", Json::array());
    std::vector<std::string> people;
    for (const auto& fact : book.facts("person")) {
        const auto roles = desk::roles_of(book, fact.key.key);
        if (by.empty() || std::any_of(by.begin(), by.end(), [&](const Json& role) {
                return std::find(roles.begin(), roles.end(), role.get<std::string>()) != roles.end();
            }))
            people.push_back(fact.key.key);
    }
    return people;
}

Choice choice_of_people(const records::Book& book, const std::string& question, const std::vector<std::string>& people,
                        const std::string& if_none)
{
    Choice choice{question, people.empty() ? if_none : "", {}, false, "Back"};
    for (const std::string& each : people)
        choice.options.push_back({desk::shown_name(book, each), "", std::nullopt});
    return choice;
}

} // namespace cotter::ui
