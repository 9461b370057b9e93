#include "accept.hpp"

#include "entitled.hpp"
#include "pins.hpp"
#include "question_form.hpp"
#include "references.hpp"
#include "sense.hpp"

namespace cotter::desk {

using records::Entry;
using records::FormError;
using records::Json;

namespace {

Json without_nulls(const Json& json)
{
    if (!json.is_object())
        return json;
    Json known = Json::object();
    for (const auto& [key, each] : json.items())
        if (!each.is_null())
            known[key] = without_nulls(each);
    return known;
}

void check_how(const Entry& entry)
{
    if (entry.how != "pin" && entry.how != "name only" && entry.how != "seen" && entry.how != "phone" &&
        entry.how != "copy")
        records::refuse("how", entry.how, "\"pin\", \"name only\", \"seen\", \"phone\" or \"copy\"");
    if (entry.who != entry.by && (entry.how == "name only" || entry.how == "pin"))
        throw FormError{"how: " + records::shown(entry.how) + " is not accepted for what " + entry.who +
                        " says and another writes down; \"seen\", \"phone\" or \"copy\" is"};
}

void check_person(const Book& book, const char* field, const std::string& id)
{
    if (id.empty())
        throw FormError{std::string{field} + ": the id of a person is needed"};
    if (!book.fact("person", id) && is_staffed(book))
        throw FormError{std::string{field} + ": " + records::shown(id) +
                        " is not a person in this book; the id of one is accepted"};
}

void check_signature(const Book& book, const Entry& entry)
{
    check_how(entry);
    if (entry.kind == "clock_notice") // the program's own hand
        return;
    check_person(book, "by", entry.by);
    const bool is_copied = entry.how == "copy"; // the author of a paper is no person of the book
    if (entry.who != entry.by && !is_copied && !may_be_said_by_anyone(entry))
        check_person(book, "who", entry.who);
    check_pin_given(book, entry);
    if (entry.who.empty())
        throw FormError{"who: whose fact it is is missing; the id of a person is needed"};
}

// What stands in a correction's body is asked what the old record was asked, at its own time.
void check_new_body(const Book& book, const Entry& entry)
{
    auto old = book.find(entry.body.value("corrects", ""));
    if (!old || !entry.body.contains("body"))
        return;
    old->entry.body = entry.body["body"];
    check_references(book, old->entry);
    check_sense(book, old->entry);
}

// A book has one place for its daily copies: that of the device it is on.
void name_the_device(const Book& book, Entry& entry)
{
    if (entry.about == "device")
        entry.about = book.state().device;
    if (entry.about != book.state().device)
        throw FormError{"about: " + records::shown(entry.about) + " is not this device; \"device\" is accepted"};
}

} // namespace

void accept(const Book& book, Entry& entry)
{
    entry.body = without_nulls(entry.body);
    if (entry.kind == "backup_place")
        name_the_device(book, entry);
    check_signature(book, entry);
    check_references(book, entry);
    check_sense(book, entry);
    check_new(book, entry);
    check_entitled(book, entry);
    if (entry.kind == "correction")
        check_new_body(book, entry);
    entry.roles = roles_of(book, entry.who);
}

} // namespace cotter::desk
