#include "foreseen.hpp"

#include <stdexcept>

namespace cotter::desk {

void Foreseen::add(const records::Entry& entry)
{
    if (entry.kind != "person" && entry.kind != "admission")
        return;
    records::Fact person = fact("person", entry.about).value_or(records::Fact{});
    person.key = {"person", entry.about};
    if (entry.kind == "admission")
        person.doc["admission"] = entry.body;
    admitted_ = admitted_ || entry.kind == "admission";
    people_[entry.about] = std::move(person);
}

std::vector<records::Record> Foreseen::append(std::vector<records::Entry>)
{
    throw std::logic_error{"a book that is foreseen is not written"};
}

std::optional<records::Fact> Foreseen::fact(const std::string& kind, const std::string& key) const
{
    const auto found = kind == "person" ? people_.find(key) : people_.end();
    return found == people_.end() ? book_.fact(kind, key) : std::optional{found->second};
}

// Whether anybody is admitted is all that is asked of it.
std::vector<records::Record> Foreseen::newest(const std::string& kind, std::size_t count) const
{
    return kind == "admission" && admitted_ ? std::vector<records::Record>(1) : book_.newest(kind, count);
}

} // namespace cotter::desk
