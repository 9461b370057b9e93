#include "form_body.hpp"

#include "form_words.hpp"

#include "language.hpp"
#include "reason.hpp"

#include <algorithm>

namespace cotter::ui {

using records::Json;

bool is_part(const Json& schema)
{
    return schema.contains("properties") || schema.value("additionalProperties", Json{}).is_object();
}

bool is_list(const Json& schema) { return schema.value("type", "") == "array"; }

namespace {

const Json& inner_of(const Json& schema, const std::string& key)
{
    if (is_list(schema))
        return schema.at("items");
    const auto properties = schema.find("properties");
    return properties != schema.end() && properties->contains(key) ? properties->at(key)
                                                                   : schema.at("additionalProperties");
}

// Is a field of it that must be there not filled in?
bool lacks_something(const Json& schema, const Json& value)
{
    if (value.is_array())
        return std::any_of(value.begin(), value.end(),
                           [&](const Json& each) { return lacks_something(schema.at("items"), each); });
    if (!value.is_object() || !schema.contains("properties"))
        return false;
    const Json needed = schema.value("required", Json::array());
    return std::any_of(needed.begin(), needed.end(), [&](const Json& each) { return !value.contains(each); }) ||
           std::any_of(value.items().begin(), value.items().end(), [&](const auto& each) {
               return lacks_something(schema.at("properties").value(each.key(), Json::object()), each.value());
           });
}

} // namespace

const Json& FormBody::schema_here() const
{
    const Json* schema = &schema_;
    for (const std::string& key : path_)
        schema = &inner_of(*schema, key);
    return *schema;
}

Json FormBody::here() const
{
    const Json* at = &body_;
    for (const std::string& key : path_) {
        if (at->is_array() ? std::stoul(key) >= at->size() : !at->contains(key))
            return is_list(schema_here()) ? Json::array() : Json::object();
        at = at->is_array() ? &at->at(std::stoul(key)) : &at->at(key);
    }
    return *at;
}

// Roles are the one part whose keys are free: those that a plan asks about.
std::vector<FormBody::Line> FormBody::lines(const records::Book& book) const
{
    std::vector<Line> all;
    const Json& schema = schema_here();
    const Json now = here();
    const auto add = [&](const std::string& key, const std::string& name, const Json& inner, bool needed) {
        const Json value = now.is_array() ? now.at(std::stoul(key)) : now.value(key, Json{});
        const bool filled = is_part(inner) && !now.is_array() && !value.is_null();
        all.push_back({key, name,
                       filled ? words::say("{} filled in", value.size()) : value_in_words(book, inner, key, value),
                       &inner, (needed && value.is_null()) || (!value.is_null() && lacks_something(inner, value))});
    };
    if (is_list(schema))
        for (std::size_t i = 0; i < now.size(); ++i)
            add(std::to_string(i), std::to_string(i + 1), schema.at("items"), false);
    const Json needed = schema.value("required", Json::array());
    if (schema.contains("properties")) {
        for (const std::string key : schema.at("x-order"))
            if (const auto inner = schema.at("properties").find(key);
                inner != schema.at("properties").end() && key != "photos" && key != "copy")
                add(key, name_of(*inner, key), *inner, std::find(needed.begin(), needed.end(), key) != needed.end());
    } else if (!is_list(schema))
        for (const char* role : {desk::key("operator"), desk::key("supervisor"), desk::key("signaller")})
            add(role, role, schema.at("additionalProperties"), false);
    return all;
}

// The part that is open, with its place where it is one of a list.
std::string FormBody::place(const std::string& title) const
{
    std::string text = title, list;
    const Json* schema = &schema_;
    for (const std::string& key : path_) {
        text =
            is_list(*schema) ? list + " " + std::to_string(std::stoul(key) + 1) : name_of(inner_of(*schema, key), key);
        list = text;
        schema = &inner_of(*schema, key);
    }
    return text;
}

void FormBody::put(const std::string& key, Json value)
{
    Json* at = &body_;
    const Json* schema = &schema_;
    for (const std::string& step : path_) {
        schema = &inner_of(*schema, step);
        at = at->is_array() ? &at->at(std::stoul(step)) : &(*at)[step];
        if (at->is_null())
            *at = is_list(*schema) ? Json::array() : Json::object();
    }
    if (at->is_array() && std::stoul(key) < at->size()) {
        if (value.is_null())
            at->erase(std::stoul(key));
        else
            at->at(std::stoul(key)) = std::move(value);
    } else if (at->is_array()) {
        if (!value.is_null())
            at->push_back(std::move(value));
    } else if (value.is_null())
        at->erase(key);
    else
        (*at)[key] = std::move(value);
}

Json FormBody::value(const std::string& key) const
{
    const Json now = here();
    const bool known = now.is_array() ? std::stoul(key) < now.size() : now.contains(key);
    return !known ? Json{} : now.is_array() ? now.at(std::stoul(key)) : now.at(key);
}

bool FormBody::is_of_a_list() const
{
    return !path_.empty() && !is_list(schema_here()) &&
           std::all_of(path_.back().begin(), path_.back().end(), [](char c) { return '0' <= c && c <= '9'; });
}

void FormBody::take_out()
{
    const std::string key = path_.back();
    go_up();
    put(key, Json{});
}

} // namespace cotter::ui
