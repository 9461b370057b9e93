#pragma once

// Every place in a JSON Schema of ours, with a value that is accepted there and values that are not.

#include <nlohmann/json.hpp>

#include <string>
#include <utility>
#include <vector>

namespace cotter::tests {

using Json = nlohmann::json;

struct Place {
    Json::json_pointer pointer;
    std::string name; // as a message names it: "items[0].role"
    Json schema;
};

// Without the "or null" and the "or any word" that our schemas wrap lists and objects in.
inline Json bare(const Json& schema)
{
    if (schema.contains("anyOf"))
        for (const Json& each : schema["anyOf"])
            if (!each.contains("const") && each.value("type", Json{}) != "null")
                return bare(each);
    return schema;
}

inline std::string type_of(const Json& schema)
{
    if (!schema.contains("type"))
        return "";
    const Json& type = schema["type"];
    return type.is_array() ? type[0].get<std::string>() : type.get<std::string>();
}

inline void walk(const Json& wrapped, const Json::json_pointer& pointer, const std::string& name,
                 std::vector<Place>& places)
{
    const Json schema = bare(wrapped);
    if (!name.empty())
        places.push_back({pointer, name, wrapped});
    const Json properties = schema.value("properties", Json::object());
    for (const auto& [key, each] : properties.items())
        walk(each, pointer / key, name.empty() ? key : name + "." + key, places);
    if (type_of(schema) == "array")
        walk(schema.at("items"), pointer / std::size_t{0}, name + "[0]", places);
    if (schema.contains("additionalProperties") && schema["additionalProperties"].is_object())
        walk(schema["additionalProperties"], pointer / "operator", name + ".operator", places);
}

inline std::vector<Place> places_in(const Json& schema)
{
    std::vector<Place> places;
    walk(schema, Json::json_pointer{}, "", places);
    return places;
}

// Something that the schema accepts, with every field in it.
inline Json whole(const Json& wrapped)
{
    const Json schema = bare(wrapped);
    if (schema.contains("enum"))
        return schema["enum"][0];
    if (schema.contains("const"))
        return schema["const"];
    const std::string type = type_of(schema);
    if (type == "integer")
        return schema.value("minimum", 1);
    if (type == "boolean")
        return true;
    if (type == "string")
        return schema.value("format", "") == "date" ? "2026-11-25" : "x";
    if (type == "array")
        return Json::array({whole(schema.at("items"))});
    Json object = Json::object();
    const Json properties = schema.value("properties", Json::object());
    for (const auto& [key, each] : properties.items())
        object[key] = whole(each);
    if (schema.contains("additionalProperties") && schema["additionalProperties"].is_object())
        object["operator"] = whole(schema["additionalProperties"]);
    return object;
}

inline std::vector<Json> wrong_for(const Json& wrapped)
{
    const Json schema = bare(wrapped);
    if (schema.contains("enum"))
        return {"no such word", 7, true, ""};
    if (schema.contains("const"))
        return {"yes", 1, false, Json::array()};
    const std::string type = type_of(schema);
    if (type == "integer") {
        std::vector<Json> wrong{"7", 1.5, 1e3, true, Json::array(), Json::object(), 10'000'000'000'000'000};
        if (schema.contains("minimum"))
            wrong.push_back(schema["minimum"].get<std::int64_t>() - 1);
        if (schema.contains("maximum"))
            wrong.push_back(schema["maximum"].get<std::int64_t>() + 1);
        return wrong;
    }
    if (type == "boolean")
        return {"true", 1, 0, Json::array()};
    if (type == "string" && schema.value("format", "") == "date")
        return {"2026-02-30", "25.11.2026", "", 20261125, true};
    if (type == "string")
        return {7, 1.5, true, Json::array(), Json::object()};
    if (type == "array")
        return {"a", 7, Json::object(), true};
    if (type == "object")
        return {"a", 7, Json::array(), true};
    return {};
}

} // namespace cotter::tests
