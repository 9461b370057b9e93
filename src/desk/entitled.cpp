#include "entitled.hpp"

#include "kinds.hpp"
#include "register.hpp"
#include "signing.hpp"

#include <algorithm>
#include <set>

namespace cotter::desk {

using records::Entry;
using records::NotEntitled;

namespace {

const Roles clearing_roles{"supervisor", "manager", "appointed", "competent", "fitter"};
const Roles admitting_roles{"supervisor", "manager", "appointed"};

bool share_one(const Roles& a, const Roles& b)
{
    return std::any_of(a.begin(), a.end(),
                       [&](const auto& each) { return std::find(b.begin(), b.end(), each) != b.end(); });
}

std::string list_of(const Roles& roles)
{
    std::string text;
    for (std::size_t i = 0; i < roles.size(); ++i)
        text += (i == 0                  ? ""
                 : i + 1 == roles.size() ? " or "
                                         : ", ") +
                (roles[i] == "hire_desk" ? "hire desk" : roles[i]);
    return text;
}

void need_one_of(const Book& book, const char* field, const std::string& person, const Roles& allowed,
                 const std::string& doing)
{
    if (!share_one(roles_of(book, person), allowed))
        throw NotEntitled{field + (": " + records::shown(person)) + " may not " + doing + "; accepted is " +
                          list_of(allowed)};
}

Roles together(Roles roles, const Roles& more)
{
    for (const std::string& each : more)
        if (!share_one(roles, {each}))
            roles.push_back(each);
    return roles;
}

// Whose fact it is must be entitled to it; of a paper that is copied, whoever copies it will do. What is written down
// for another is no better than the word of who writes it: that is one who might do it, or who admits people.
void need_author(const Book& book, const Entry& entry, const Roles& allowed, const std::string& doing)
{
    if (entry.who != entry.by)
        need_one_of(book, "by", entry.by, together(allowed, admitting_roles), doing);
    if (entry.how != "copy" || !share_one(roles_of(book, entry.by), allowed))
        need_one_of(book, "who", entry.who, allowed, doing);
}

// Whoever has a role was admitted; only for others is the book searched for an admission.
bool is_open_to(const Book& book, const std::string& who) { return roles_of(book, who).empty() && !is_staffed(book); }

Roles roles_in(const Json& schema, const char* key) { return schema.value(key, Roles{}); }

// The first who is admitted begins the book; afterwards nobody admits himself.
void check_admission(const Book& book, const Entry& entry)
{
    if (!is_staffed(book)) {
        if (!share_one(entry.body.value("roles", Roles{}), admitting_roles))
            throw NotEntitled{"roles: the first who is admitted must be one who may admit others; accepted is " +
                              list_of(admitting_roles)};
    } else if (entry.who == entry.about || entry.by == entry.about) {
        throw NotEntitled{"who: nobody admits himself; another " + list_of(admitting_roles) + " is accepted"};
    }
}

// One sets one's own PIN; who admits people sets those of others. The first in a book is set by one who admits people.
void check_pin_set(const Book& book, const Entry& entry)
{
    if (entry.who != entry.by)
        throw NotEntitled{"who: a PIN is set by whoever writes it down; another is not accepted"};
    if (entry.who != entry.about || book.newest("pin_set", 1).empty())
        need_one_of(book, "who", entry.who, admitting_roles,
                    entry.who == entry.about ? "set the first PIN" : "set another's PIN");
}

// A correction can take away what stops; whoever sees more danger than was written calls a stop instead.
void check_correction(const Book& book, const Entry& entry)
{
    const auto old = book.find(entry.body.value("corrects", ""));
    if (!old)
        return;
    const records::Entry& it = old->entry;
    if (it.kind == "correction" || it.kind == "device")
        throw records::FormError{"corrects: a " + it.kind +
                                 " is not corrected; the hash of another record is accepted"};
    const Json& schema = records::find_kind(it.kind)->schema;
    const Roles own = roles_in(schema, "x-corrected-by"), writing = roles_in(schema, "x-by");
    need_author(book, entry,
                !own.empty()       ? own
                : !writing.empty() ? writing
                                   : clearing_roles,
                "correct a record of " + it.kind + " (anyone may call a stop)");
    if ((it.kind == "pre_use_check" || it.kind == "defect_found") && (it.who == entry.who || it.who == entry.by))
        throw NotEntitled{"who: " + records::shown(entry.who) +
                          " gave these answers; another who is entitled may correct them"};
    if (it.kind == "admission" && (it.about == entry.who || it.about == entry.by))
        throw NotEntitled{"who: nobody admits himself; another " + list_of(admitting_roles) + " is accepted"};
}

} // namespace

Roles roles_of(const Book& book, const std::string& person)
{
    return doc(book, "person", person).value("admission", Json::object()).value("roles", Roles{});
}

bool has_role(const Book& book, const std::string& person, const std::string& role)
{
    const Roles roles = roles_of(book, person);
    return std::find(roles.begin(), roles.end(), role) != roles.end();
}

Roles written_as(const Json& deed) { return deed.value("roles", Roles{}); }

bool is_competent(const Json& deed) { return share_one(written_as(deed), {"competent"}); }

bool is_supervisor(const Json& deed) { return share_one(written_as(deed), {"supervisor"}); }

bool may_clear(const Roles& roles) { return share_one(roles, clearing_roles); }

bool is_lifted(const Json& stop)
{
    const Json lifted = stop.value("lifted", Json::array());
    return std::any_of(lifted.begin(), lifted.end(), [](const Json& each) { return may_clear(written_as(each)); });
}

bool may_admit(const Book& book, const std::string& person)
{
    return share_one(roles_of(book, person), admitting_roles);
}

std::vector<std::string> who_may_admit(const Book& book)
{
    std::vector<std::string> people;
    for (const auto& fact : book.facts("person"))
        if (may_admit(book, fact.key.key))
            people.push_back(fact.key.key);
    return people;
}

std::string new_person_id() { return "person-" + records::new_salt().substr(0, 8); }

bool may_be_said_by_anyone(const Entry& entry)
{
    static const std::set<std::string> kinds{"stop_called", "defect_found", "event", "fall_of_ground",
                                             "lift_without_answer"};
    return kinds.count(entry.kind) > 0;
}

bool is_staffed(const Book& book) { return !book.newest("admission", 1).empty(); }

void check_entitled(const Book& book, const Entry& entry)
{
    if (entry.kind == "admission")
        check_admission(book, entry);
    if (entry.kind == "pin_set")
        check_pin_set(book, entry);
    if (entry.kind == "correction")
        return check_correction(book, entry);
    if (is_open_to(book, entry.by))
        return;
    const records::Kind* kind = records::find_kind(entry.kind);
    if (kind && kind->schema.contains("x-by"))
        need_author(book, entry, roles_in(kind->schema, "x-by"), "record " + entry.kind);
    else if (entry.who != entry.by && !may_be_said_by_anyone(entry))
        need_one_of(book, "by", entry.by, clearing_roles, "write down what " + records::shown(entry.who) + " did");
}

bool is_entitled(const Book& book, const Entry& entry)
try {
    check_entitled(book, entry);
    return true;
} catch (const records::FormError&) {
    return false;
}

} // namespace cotter::desk
