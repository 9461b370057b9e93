#pragma once

// The items of a question: units with their model, papers, stops, sheet and looks, named by labels that are unique in
// it.

#include "register.hpp"

#include <map>
#include <string>
#include <vector>

namespace cotter::desk {

class ItemsOfQuestion {
public:
    // The units of the load path, top first.
    ItemsOfQuestion(const Book& book, std::vector<std::string> units, rules::Instant now);

    std::vector<rules::Item> items() const;
    std::vector<rules::Report> reports() const;
    std::vector<rules::Event> events() const;
    std::vector<rules::Clearing> clearings() const;
    std::vector<rules::Answer> answers() const;

    // The tag if no other unit in the path has it, else owner and serial; ids of other units stay as they are.
    std::string label(const std::string& unit) const;
    std::vector<rules::Id> labels(std::vector<rules::Id> units) const;

private:
    rules::Item item(const std::string& unit) const;
    void add_papers(rules::Item& item, const std::string& unit) const;
    void add_stops(rules::Item& item, const std::string& unit) const;

    const Book& book_;
    std::vector<std::string> units_;
    std::map<std::string, std::string> labels_;
    rules::Instant now_;
};

} // namespace cotter::desk
