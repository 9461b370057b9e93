#include "import_ids.hpp"

#include "column.hpp"

namespace cotter::desk {

using records::FormError;

namespace {

std::string known_as(const std::string& owner, const std::string& serial)
{
    return normal(owner) + '\n' + normal(serial);
}

// "PC 07/a" as "pc-07-a".
std::string id_in(const std::string& text)
{
    std::string id;
    for (const char c : text) {
        const std::string said = normal({&c, 1});
        if (!said.empty() && c != '%')
            id += said;
        else if (!id.empty() && id.back() != '-')
            id += '-';
    }
    return id.ends_with('-') ? id.substr(0, id.size() - 1) : id;
}

} // namespace

UnitIds::UnitIds(const Book& book)
{
    for (const records::Fact& fact : book.facts("unit")) {
        taken_.insert(fact.key.key);
        known_[known_as(fact.doc.value("owner_firm", ""), fact.doc.value("serial", ""))] = fact.key.key;
    }
}

std::string UnitIds::id_of(const std::string& owner, const std::string& serial, const std::string& tag)
{
    if (owner.empty() || serial.empty())
        throw FormError{"without an id a unit is known by its owner and serial; both are needed"};
    const std::string name = known_as(owner, serial);
    if (const auto found = known_.find(name); found != known_.end())
        return found->second;
    for (const std::string& id : {id_in(tag), id_in(tag + "-" + serial)})
        if (!id.empty() && taken_.insert(id).second) {
            known_[name] = id;
            return id;
        }
    throw FormError{"no id can be made of tag " + records::shown(tag) + " and serial " + records::shown(serial) +
                    " that no other unit has; an id is needed"};
}

void UnitIds::check(const std::string& id, const std::string& owner, const std::string& serial)
{
    taken_.insert(id);
    const auto [found, is_new] = known_.try_emplace(known_as(owner, serial), id);
    if (!is_new && found->second != id && !owner.empty() && !serial.empty())
        throw FormError{"the unit " + records::shown(found->second) + " has this owner and serial; its id is accepted"};
}

} // namespace cotter::desk
