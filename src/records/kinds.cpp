#include "kinds.hpp"

#include "embedded_kinds.hpp"

#include <algorithm>

namespace cotter::records {

namespace {

std::string list_of(const Json& names)
{
    std::string text;
    for (const Json& each : names)
        text += (text.empty() ? "" : ", ") + each.dump();
    return text;
}

void check(const Json& schema, const Json& value, const std::string& place);

std::string under(const std::string& place, const std::string& key) { return place.empty() ? key : place + "." + key; }

void check_object(const Json& schema, const Json& value, const std::string& place)
{
    if (!value.is_object())
        refuse(place.empty() ? "the body" : place, value, "an object");
    const Json properties = schema.value("properties", Json::object());
    const Json more = schema.value("additionalProperties", Json(true));
    for (const auto& [key, each] : value.items()) {
        if (properties.contains(key))
            check(properties[key], each, under(place, key));
        else if (more.is_object())
            check(more, each, under(place, key));
        else if (more == false) {
            Json names = Json::array();
            for (const auto& [name, unused] : properties.items())
                names.push_back(name);
            throw FormError{under(place, key) + " is not a field; accepted are " + list_of(names)};
        }
    }
    for (const Json& name : schema.value("required", Json::array()))
        if (!value.contains(name.get<std::string>()) || value[name.get<std::string>()].is_null())
            throw FormError{under(place, name.get<std::string>()) + " is missing; " +
                            properties[name.get<std::string>()].value("description", "a value") + " is needed"};
}

void check_string(const Json& schema, const Json& value, const std::string& place)
{
    if (!value.is_string())
        refuse(place, value, "a text");
    if (schema.value("format", "") == "date" && !rules::parse_day(value.get<std::string>()))
        refuse(place, value, "a day YYYY-MM-DD");
}

void check_integer(const Json& schema, const Json& value, const std::string& place)
{
    constexpr std::int64_t most = 9'000'000'000'000'000;
    if (!value.is_number_integer() ||
        (value.is_number_unsigned() && value.get<std::uint64_t>() > static_cast<std::uint64_t>(most)))
        refuse(place, value, "a whole number");
    const auto least = schema.value("minimum", -most), greatest = schema.value("maximum", most);
    if (value.get<std::int64_t>() < least)
        refuse(place, value, "at least " + std::to_string(least));
    if (value.get<std::int64_t>() > greatest)
        refuse(place, value, "at most " + std::to_string(greatest));
}

void check_array(const Json& schema, const Json& value, const std::string& place)
{
    if (!value.is_array())
        refuse(place, value, "a list");
    for (std::size_t i = 0; i < value.size(); ++i) {
        const std::string at = place + "[" + std::to_string(i) + "]";
        if (value[i].is_null())
            refuse(at, value[i], "a value; what is not known is left out");
        check(schema.at("items"), value[i], at);
    }
}

bool accepts(const Json& schema, const Json& value, const std::string& place)
try {
    check(schema, value, place);
    return true;
} catch (const FormError&) {
    return false;
}

void check_type(const Json& schema, const std::string& type, const Json& value, const std::string& place)
{
    if (type == "object")
        check_object(schema, value, place);
    else if (type == "array")
        check_array(schema, value, place);
    else if (type == "integer")
        check_integer(schema, value, place);
    else if (type == "string")
        check_string(schema, value, place);
    else if (type == "boolean" && !value.is_boolean())
        refuse(place, value, "true, false or null");
}

// Null is "not known" and accepted wherever it is not required to be there.
void check(const Json& schema, const Json& value, const std::string& place)
{
    if (value.is_null() && !place.empty())
        return;
    if (schema.contains("enum") &&
        std::find(schema["enum"].begin(), schema["enum"].end(), value) == schema["enum"].end())
        refuse(place, value, list_of(schema["enum"]));
    if (schema.contains("const") && value != schema["const"])
        refuse(place, value, schema["const"].dump());
    if (schema.contains("anyOf") && std::none_of(schema["anyOf"].begin(), schema["anyOf"].end(),
                                                 [&](const Json& each) { return accepts(each, value, place); }))
        refuse(place, value, schema.value("description", "another form"));
    if (!schema.contains("type"))
        return;
    const Json& type = schema["type"];
    check_type(schema, type.is_array() ? type[0].get<std::string>() : type.get<std::string>(), value, place);
}

// Json sorts its keys; the order in which a schema was written is how a form asks.
void keep_order(Json& schema, const nlohmann::ordered_json& as_written)
{
    if (!as_written.is_object())
        return;
    for (const auto& [key, inner] : as_written.items())
        if (inner.is_object())
            keep_order(schema[key], inner);
    if (!as_written.contains("properties") || !as_written["properties"].is_object())
        return;
    schema["x-order"] = Json::array();
    for (const auto& [key, unused] : as_written["properties"].items())
        schema["x-order"].push_back(key);
}

std::vector<Kind> read_kinds()
{
    std::vector<Kind> all;
    for (const auto& [name, text] : embedded_kinds()) {
        all.push_back({name, Json::parse(text)});
        keep_order(all.back().schema, nlohmann::ordered_json::parse(text));
    }
    return all;
}

} // namespace

const std::vector<Kind>& kinds()
{
    static const std::vector<Kind> all = read_kinds();
    return all;
}

const Kind* find_kind(std::string_view name)
{
    for (const Kind& each : kinds())
        if (each.name == name)
            return &each;
    return nullptr;
}

namespace {

// Also where the schema leaves open what stands there.
void refuse_fractions(const Json& value, const std::string& place)
{
    if (value.is_number_float())
        refuse(place, value, "a whole number");
    if (value.is_structured())
        for (const auto& [key, each] : value.items())
            refuse_fractions(each, value.is_array() ? place + "[" + key + "]" : under(place, key));
}

} // namespace

void check_body(const Kind& kind, const Json& body)
{
    check(kind.schema, body, "");
    refuse_fractions(body, "");
}

std::vector<std::string> private_fields(const Kind& kind)
{
    std::vector<std::string> names;
    for (const auto& [name, property] : kind.schema.at("properties").items())
        if (property.value("x-private", false))
            names.push_back(name);
    return names;
}

} // namespace cotter::records
