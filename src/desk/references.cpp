#include "references.hpp"

#include "kinds.hpp"

namespace cotter::desk {

using records::Book;
using records::Json;

namespace {

bool is_there(const Book& book, const std::string& what, const std::string& id)
{
    return what == "record" ? book.find(id).has_value() : book.fact(what, id).has_value();
}

void need(const Book& book, const std::string& place, const std::string& what, const std::string& id)
{
    if (is_there(book, what, id))
        return;
    const bool vowel = what == "order" || what == "event";
    const std::string accepted =
        what == "record" ? "the hash of a record" : (vowel ? "the id of an " : "the id of a ") + what;
    throw records::FormError{place + ": " + records::shown(id) + " is not in this book; " + accepted +
                             " that is there is accepted"};
}

// Walks schema and value side by side.
void walk(const Book& book, const Json& schema, const Json& value, const std::string& place)
{
    if (value.is_string() && schema.contains("x-refers"))
        need(book, place, schema["x-refers"].get<std::string>(), value.get<std::string>());
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
    if (const auto what = kind->schema.find("x-about-refers"); what != kind->schema.end())
        need(book, "about", what->get<std::string>(), entry.about);
    if (entry.kind == "compared")
        need(book, "about", entry.body.value("what", ""), entry.about);
    walk(book, kind->schema, entry.body, "");
}

} // namespace cotter::desk
