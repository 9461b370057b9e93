#include "to_compare.hpp"

#include "field_unit.hpp"
#include "kinds.hpp"

#include <algorithm>
#include <array>

namespace cotter::desk {

namespace {

constexpr std::array<std::pair<const char*, const char*>, 4> compared_kinds{
    {{"model", "model"}, {"chart", "chart"}, {"pipe", "pipe"}, {"report", "examination_report"}}};

std::string joined(const std::string& a, const std::string& b) { return a.empty() ? b : a + ", " + b; }

std::string plain(const Json& value, const std::string& field = "")
{
    return value.is_string()           ? value.get<std::string>()
           : value.is_boolean()        ? (value.get<bool>() ? "yes" : "no")
           : value.is_number_integer() ? with_unit(field, value.get<std::int64_t>())
                                       : value.dump();
}

bool holds_plain_values(const Json& value)
{
    for (const Json& each : value)
        if (each.is_structured())
            return false;
    return true;
}

std::string on_one_line(const Json& value)
{
    std::string line;
    for (const auto& [key, each] : value.items())
        line = joined(line, value.is_array() ? plain(each) : key + " " + plain(each, key));
    return line;
}

std::string described(const Json& schema, const std::string& key)
{
    return schema.value("properties", Json::object()).value(key, Json::object()).value("description", key);
}

void add_lines(const Json& schema, const Json& value, const std::string& said, Typed& typed,
               const std::string& key = "")
{
    if (!value.is_structured())
        typed.lines.emplace_back(said, plain(value, key));
    else if (holds_plain_values(value) && (value.is_array() || !said.empty()))
        typed.lines.emplace_back(said, on_one_line(value));
    else if (value.is_array())
        for (std::size_t i = 0; i < value.size(); ++i)
            add_lines(schema.value("items", Json::object()), value[i], said + " " + std::to_string(i + 1), typed);
    else
        for (const auto& [name, each] : value.items())
            add_lines(schema.value("properties", Json::object()).value(name, Json::object()), each,
                      joined(said, described(schema, name)), typed, name);
}

// Only what stands in the record: the fold adds the rest.
Json body_of(const Json& schema, const Json& doc)
{
    const Json properties = schema.value("properties", Json::object());
    Json body = Json::object();
    for (const auto& [key, property] : properties.items())
        if (doc.contains(key) && !doc[key].is_null() && !property.value("x-private", false))
            body[key] = doc[key];
    return body;
}

Typed typed(const Book& book, const char* what, const char* kind, const records::Fact& fact)
{
    const Json& schema = records::find_kind(kind)->schema;
    Typed made{what, fact.key.key, shown_name(book, fact.key.key), fact.doc["changed"].value("by", ""), {}, {}};
    for (const Json& page : doc(book, "page", made.what + " " + made.id).value("pages", Json::array()))
        made.pages.push_back(page["sha256"].get<std::string>());
    const std::string copy = fact.doc.value("copy", Json::object()).value("sha256", "");
    if (!copy.empty())
        made.pages.push_back(copy);
    add_lines(schema, body_of(schema, fact.doc), "", made);
    return made;
}

} // namespace

std::vector<Typed> to_compare(const Book& book)
{
    std::vector<std::pair<std::int64_t, Typed>> found;
    for (const auto& [what, kind] : compared_kinds)
        for (const records::Fact& fact : book.facts(what))
            if (fact.doc.contains("changed") && fact.doc.value("compared", Json::array()).empty())
                found.emplace_back(fact.doc["changed"].value("at", std::int64_t{0}), typed(book, what, kind, fact));
    std::stable_sort(found.begin(), found.end(), [](const auto& a, const auto& b) { return a.first > b.first; });
    std::vector<Typed> all;
    for (auto& each : found)
        all.push_back(std::move(each.second));
    return all;
}

namespace {

// Wherever a fact holds photos.
void add_photos(const Json& doc, std::vector<std::string>& names)
{
    if (!doc.is_structured())
        return;
    if (doc.is_object() && doc.contains("photos") && doc["photos"].is_array())
        for (const Json& each : doc["photos"])
            names.push_back(each.get<std::string>());
    for (const Json& each : doc)
        add_photos(each, names);
}

} // namespace

std::vector<std::string> pages_of(const Book& book)
{
    std::vector<std::string> names;
    for (const records::Fact& fact : book.facts("page"))
        for (const Json& page : fact.doc.value("pages", Json::array()))
            names.push_back(page["sha256"].get<std::string>());
    for (const char* kind : {"event", "check", "defect", "whereabouts"})
        for (const records::Fact& fact : book.facts(kind))
            add_photos(fact.doc, names);
    for (const records::Fact& fact : book.facts("report"))
        if (const std::string copy = fact.doc.value("copy", Json::object()).value("sha256", ""); !copy.empty())
            names.push_back(copy);
    return names;
}

} // namespace cotter::desk
