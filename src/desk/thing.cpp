#include "thing.hpp"

#include "kinds.hpp"

namespace cotter::desk {

namespace {

// Without what the fold adds.
Json body_in(const std::string& kind, const Json& doc)
{
    Json body = Json::object();
    for (const auto& [field, unused] : records::find_kind(kind)->schema.at("properties").items())
        if (doc.contains(field))
            body[field] = doc[field];
    return body;
}

Json body_of(const Json& thing)
{
    Json body = thing;
    body.erase("id");
    body.erase("admission");
    return body;
}

void add_if_other(std::vector<Entry>& entries, Entry made, const Json& before)
{
    if (known_in(made.body) != known_in(before))
        entries.push_back(std::move(made));
}

} // namespace

Json thing_in(const Book& book, const Shape& shape, const records::Fact& fact)
{
    const std::string& id = fact.key.key;
    Json thing = body_in(shape.kind, fact.doc);
    thing["id"] = id;
    if (shape.what != What::people)
        return thing;
    thing.erase("name"); // there it stands as a hash
    if (const auto name = book.private_value("person " + id, "name"))
        thing["name"] = *name;
    if (const Json admission = fact.doc.value("admission", Json::object()); !admission.empty())
        thing["admission"] = body_in("admission", admission);
    return thing;
}

Json thing_in(const Book& book, const Shape& shape, const std::string& id)
{
    const auto fact = book.fact(shape.fact, id);
    return fact ? thing_in(book, shape, *fact) : Json::object();
}

std::vector<Entry> entries_for(const Hand& hand, const Shape& shape, const Json& before, const Json& now)
{
    const std::string id = now.at("id").get<std::string>();
    std::vector<Entry> entries;
    if (before.empty())
        entries.push_back(entry(hand, shape.kind, id, body_of(now)));
    else
        add_if_other(entries, entry(hand, shape.kind, id, body_of(now)), body_of(before));
    if (shape.what == What::people)
        add_if_other(entries, entry(hand, "admission", id, now.value("admission", Json::object())),
                     before.value("admission", Json::object()));
    return entries;
}

Json known_in(const Json& thing)
{
    if (!thing.is_object())
        return thing;
    Json known = Json::object();
    for (const auto& [field, value] : thing.items())
        if (Json inner = known_in(value); !inner.is_null() && !(inner.is_object() && inner.empty()))
            known[field] = std::move(inner);
    return known;
}

Json parts_of(const Shape& shape, const Json& thing)
{
    const Json::json_pointer list{shape.list};
    return !shape.parts.empty() && thing.contains(list) ? thing.at(list) : Json::array();
}

std::string key_of(const Shape& shape, const Json& part)
{
    std::string key;
    for (std::size_t i = 0; i < shape.keys; ++i)
        key += (i == 0 ? "" : " ") + text_of(shape.parts[i], part);
    return key;
}

} // namespace cotter::desk
