#include "entitled.hpp"

#include "register.hpp"

#include <algorithm>
#include <array>

namespace cotter::desk {

using records::Entry;
using records::FormError;

namespace {

constexpr std::array clearing_roles{"supervisor", "manager", "appointed", "competent", "fitter"};
constexpr std::array admitting_roles{"supervisor", "manager", "appointed"};

template <std::size_t N>
bool has_one_of(const Book& book, const std::string& person, const std::array<const char*, N>& roles)
{
    return std::any_of(roles.begin(), roles.end(), [&](const char* role) { return has_role(book, person, role); });
}

void check_admission(const Book& book, const Entry& entry)
{
    if (!may_admit(book, entry.who) && is_staffed(book))
        throw FormError{"who: \"" + entry.who +
                        "\" may not admit people; a lifting supervisor, site manager or appointed person may"};
}

// A correction can take away what stops; whoever sees more danger than was written calls a stop instead.
void check_correction(const Book& book, const Entry& entry)
{
    if (!may_clear(book, entry.who))
        throw FormError{"who: \"" + entry.who +
                        "\" may not correct a record; a supervisor, manager, appointed or competent person or a "
                        "fitter may, and anyone may call a stop"};
    const auto old = book.find(entry.body.value("corrects", ""));
    if (old && old->entry.kind == "correction")
        throw FormError{"corrects: that record is itself a correction; the hash of the first record is accepted"};
    const bool answers = old && (old->entry.kind == "pre_use_check" || old->entry.kind == "defect_found");
    if (answers && old->entry.who == entry.who)
        throw FormError{"who: \"" + entry.who + "\" gave these answers; another who is entitled may correct them"};
}

} // namespace

bool has_role(const Book& book, const std::string& person, const std::string& role)
{
    const Json admission = doc(book, "person", person).value("admission", Json::object());
    const auto roles = admission.value("roles", std::vector<std::string>{});
    return std::find(roles.begin(), roles.end(), role) != roles.end();
}

bool may_clear(const Book& book, const std::string& person) { return has_one_of(book, person, clearing_roles); }

bool may_admit(const Book& book, const std::string& person) { return has_one_of(book, person, admitting_roles); }

bool is_staffed(const Book& book)
{
    const auto people = book.facts("person");
    return std::any_of(people.begin(), people.end(), [&](const auto& each) { return may_admit(book, each.key.key); });
}

void check_entitled(const Book& book, const Entry& entry)
{
    if (entry.kind == "person" || entry.kind == "admission")
        check_admission(book, entry);
    if (entry.kind == "correction")
        check_correction(book, entry);
}

} // namespace cotter::desk
