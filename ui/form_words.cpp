#include "form_words.hpp"

#include "looks.hpp"

#include "amounts.hpp"
#include "field_unit.hpp"
#include "register.hpp"

#include <algorithm>

namespace cotter::ui {

using records::Json;

std::string name_of(const Json& schema, const std::string& field)
{
    std::string name = words::in_language(schema.value("description", field));
    if (!name.empty() && 'a' <= name[0] && name[0] <= 'z')
        name[0] = static_cast<char>(name[0] - 'a' + 'A');
    return name;
}

namespace {

std::string kind_in_words(std::string kind)
{
    std::replace(kind.begin(), kind.end(), '_', ' ');
    return kind;
}

std::string text_in_words(const records::Book& book, const Json& schema, const std::string& text)
{
    if (schema.contains("x-refers"))
        return id_in_words(book, schema, text);
    const auto day = schema.value("format", "") == "date" ? rules::parse_day(text) : std::nullopt;
    return day ? words::long_day(*day) : schema.contains("enum") ? words::in_language(kind_in_words(text)) : text;
}

std::string list_in_words(const records::Book& book, const Json& schema, const Json& list)
{
    std::string line;
    for (const Json& each : list)
        if (each.is_structured())
            return say_many(list.size(), "{} line", "{} lines");
        else
            line += (line.empty() ? "" : ", ") + value_in_words(book, schema.value("items", Json::object()), "", each);
    return line;
}

// The first few of its values: enough to tell one line of a list from the next.
std::string object_in_words(const records::Book& book, const Json& schema, const Json& object)
{
    constexpr std::size_t enough = 60;
    std::string line;
    for (const auto& [key, each] : object.items()) {
        const Json inner = schema.value("properties", Json::object()).value(key, Json::object());
        const std::string said = each.is_structured() ? "" : value_in_words(book, inner, key, each);
        if (said.empty() || line.size() + said.size() > enough)
            continue;
        line += (line.empty() ? "" : " \u00b7 ") + (each.is_boolean() ? name_of(inner, key) + ": " : "") + said;
    }
    return line;
}

} // namespace

std::string value_in_words(const records::Book& book, const Json& schema, const std::string& field, const Json& value)
{
    if (value.is_boolean())
        return value.get<bool>() ? say("yes") : say("no");
    if (value.is_number_integer())
        return words::decimal(desk::with_unit(field, value.get<std::int64_t>()));
    if (value.is_string())
        return text_in_words(book, schema, value.get<std::string>());
    if (value.is_array())
        return list_in_words(book, schema, value);
    return value.is_object() ? object_in_words(book, schema, value) : "";
}

std::string id_in_words(const records::Book& book, const Json& schema, const std::string& id)
{
    if (schema.value("x-refers", "") != "record")
        return desk::shown_name(book, id);
    const auto record = book.find(id);
    return record ? kind_in_words(record->entry.kind) + ", " + desk::shown_name(book, record->entry.about) + ", " +
                        words::short_day(record->entry.day)
                  : id;
}

std::vector<std::string> ids_for(const records::Book& book, const Json& schema)
{
    constexpr std::size_t newest = 20;
    std::vector<std::string> ids;
    const std::string what = schema.at("x-refers").get<std::string>();
    for (const Json& kind : schema.value("x-kinds", Json::array()))
        for (const auto& each : book.newest(kind, newest))
            ids.push_back(each.hash);
    const Json roles = schema.value("x-role", Json::array());
    if (what != "record")
        for (const auto& fact : book.facts(what))
            if (roles.empty() || std::find(roles.begin(), roles.end(), fact.doc.value("role", "")) != roles.end())
                ids.push_back(fact.key.key);
    return ids;
}

std::string days_in_words(const Json& body)
{
    const auto day = [&](const char* field) {
        const auto parsed = rules::parse_day(body.value(field, ""));
        return parsed ? words::short_day(*parsed) : std::string{"?"};
    };
    return say("{} to {}", day("first_day"), day("last_day"));
}

Json fields_of(const Json& schema, const Json& body)
{
    Json kept = Json::object();
    for (const auto& [field, value] : body.items())
        if (schema.at("properties").contains(field))
            kept[field] = value;
    return kept;
}

} // namespace cotter::ui
