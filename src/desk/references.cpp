#include "references.hpp"

#include "kinds.hpp"
#include "register.hpp"

#include <algorithm>

namespace cotter::desk {

using records::Book;
using records::FormError;
using records::Json;

namespace {

bool is_one_of(const Json& list, const std::string& name)
{
    return std::find(list.begin(), list.end(), name) != list.end();
}

std::string words_of(const Json& list)
{
    std::string text;
    for (const Json& each : list)
        text += (text.empty() ? "" : " or ") + each.get<std::string>();
    return text;
}

[[noreturn]] void refuse(const std::string& place, const std::string& id, const std::string& accepted)
{
    throw FormError{place + ": " + records::shown(id) + " is not in this book; " + accepted +
                    " that is there is accepted"};
}

// A record by its hash, of the kinds that make sense there.
void need_record(const Book& book, const std::string& place, const Json& schema, const std::string& hash)
{
    const auto found = book.find(hash);
    if (!found)
        refuse(place, hash, "the hash of a record");
    if (schema.contains("x-kinds") && !is_one_of(schema["x-kinds"], found->entry.kind))
        throw FormError{place + ": that is a record of " + found->entry.kind + "; one of " +
                        words_of(schema["x-kinds"]) + " is accepted"};
}

void need(const Book& book, const std::string& place, const std::string& what, const std::string& id)
{
    const bool vowel = what == "order" || what == "event";
    if (!book.fact(what, id))
        refuse(place, id, (vowel ? "the id of an " : "the id of a ") + what);
}

// A unit is what it hangs as: no attachment stands in for a sling.
void need_role(const Book& book, const std::string& place, const Json& roles, const std::string& unit)
{
    const std::string role = doc(book, "unit", unit).value("role", "");
    if (!is_one_of(roles, role))
        throw FormError{place + ": " + records::shown(unit) + " is a " + role + "; a " + words_of(roles) +
                        " is accepted"};
}

void need_named(const Book& book, const std::string& place, const Json& schema, const std::string& id)
{
    const std::string what = schema["x-refers"].get<std::string>();
    if (what == "record")
        return need_record(book, place, schema, id);
    need(book, place, what, id);
    if (schema.contains("x-role"))
        need_role(book, place, schema["x-role"], id);
}

// Walks schema and value side by side.
void walk(const Book& book, const Json& schema, const Json& value, const std::string& place)
{
    if (value.is_string() && schema.contains("x-refers"))
        need_named(book, place, schema, value.get<std::string>());
    if (value.is_array() && schema.contains("items"))
        for (std::size_t i = 0; i < value.size(); ++i)
            walk(book, schema["items"], value[i], place + "[" + std::to_string(i) + "]");
    if (!value.is_object())
        return;
    const Json properties = schema.value("properties", Json::object());
    const Json others = schema.value("additionalProperties", Json::object());
    for (const auto& [key, each] : value.items())
        walk(book,
             properties.contains(key) ? properties[key]
             : others.is_object()     ? others
                                      : Json::object(),
             each, place.empty() ? key : place + "." + key);
}

} // namespace

void check_references(const Book& book, const records::Entry& entry)
{
    const records::Kind* kind = records::find_kind(entry.kind);
    if (!kind)
        return;
    const Json& schema = kind->schema;
    if (schema.contains("x-about-refers"))
        need(book, "about", schema["x-about-refers"].get<std::string>(), entry.about);
    if (schema.contains("x-about-role"))
        need_role(book, "about", schema["x-about-role"], entry.about);
    if (entry.kind == "compared" || entry.kind == "source_page")
        need(book, "about", entry.body.value("what", ""), entry.about);
    walk(book, schema, entry.body, "");
}

} // namespace cotter::desk
