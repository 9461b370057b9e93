#pragma once

// One description of a type's JSON form serves reading, writing and its JSON Schema: a function
// `describe(visitor, value)` names each field once. Reading is strict: an unknown key or a wrong type is refused with
// the field's place and what is accepted; null or missing is "not known".

#include "quantity.hpp"
#include "question.hpp"

#include <nlohmann/json.hpp>

#include <map>
#include <set>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace cotter::records {

using Json = nlohmann::json;

// What was read is not of the form. The text names the field, its value and what is accepted.
class FormError : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

// A value for a message, cut short.
std::string shown(const Json& value);
[[noreturn]] void refuse(const std::string& place, const Json& value, std::string_view accepted);

// A whole number that 64 bits with a sign hold: nlohmann would read a greater one as another, and cut a fraction off.
bool is_whole(const Json& value);

// The text as one JSON value; a doubled key, trailing text or a number outside 64 bits is a FormError.
Json parse_strictly(std::string_view text);

template <class E> using EnumNames = std::vector<std::pair<std::string_view, E>>;

// Which text stands for which value (question_names.cpp).
template <class E> const EnumNames<E>& names_of();
template <> const EnumNames<rules::Purpose>& names_of<rules::Purpose>();
template <> const EnumNames<rules::Role>& names_of<rules::Role>();
template <> const EnumNames<rules::ItemClass>& names_of<rules::ItemClass>();
template <> const EnumNames<rules::Owner>& names_of<rules::Owner>();
template <> const EnumNames<rules::Basis>& names_of<rules::Basis>();
template <> const EnumNames<rules::Danger>& names_of<rules::Danger>();
template <> const EnumNames<rules::Particular>& names_of<rules::Particular>();
template <> const EnumNames<rules::EventKind>& names_of<rules::EventKind>();
template <> const EnumNames<rules::Answered>& names_of<rules::Answered>();
template <> const EnumNames<rules::SettingKind>& names_of<rules::SettingKind>();
template <> const EnumNames<rules::Shape>& names_of<rules::Shape>();
template <> const EnumNames<rules::Sector>& names_of<rules::Sector>();
template <> const EnumNames<rules::Mounting>& names_of<rules::Mounting>();
template <> const EnumNames<rules::Listed>& names_of<rules::Listed>();
template <> const EnumNames<rules::NoticeKind>& names_of<rules::NoticeKind>();
template <> const EnumNames<rules::How>& names_of<rules::How>();
template <> const EnumNames<rules::StaledBy>& names_of<rules::StaledBy>();

template <class V, class T>
concept Described = requires(V& visitor, T& value)
{
    describe(visitor, value);
};

// Which whole numbers are read: far beyond anything lifted, and small enough that no product of two overflows. What a
// record may say is narrower, and stands in its kind's schema.
struct Bounds {
    std::int64_t least = -1'000'000'000, greatest = 1'000'000'000;
};
template <class Quantity> inline constexpr Bounds bounds_of{};
template <> inline constexpr Bounds bounds_of<rules::Months>{-1200, 1200};
template <> inline constexpr Bounds bounds_of<rules::Instant>{-9'000'000'000'000'000, 9'000'000'000'000'000};

enum class Strictness { strict, lenient }; // lenient: other keys are somebody else's

class Reader {
public:
    Reader(const Json& object, std::string place, Strictness strictness)
        : object_{object}, place_{std::move(place)}, strictness_{strictness}
    {
        if (!object.is_object())
            refuse(place_.empty() ? "the line" : place_, object, "an object");
    }

    template <class T> void operator()(const char* key, T& value)
    {
        known_.insert(key);
        const auto found = object_.find(key);
        if (found != object_.end() && !found->is_null())
            read(*found, place_.empty() ? key : place_ + "." + key, value);
    }

    void finish() const;

private:
    template <class T> void read(const Json& json, const std::string& place, std::optional<T>& value)
    {
        if (json.is_null())
            return;
        T known = blank<T>();
        read(json, place, known);
        value = std::move(known);
    }
    template <class T> void read(const Json& json, const std::string& place, std::vector<T>& values)
    {
        if (!json.is_array())
            refuse(place, json, "a list");
        for (std::size_t i = 0; i < json.size(); ++i) {
            T each = blank<T>();
            read(json[i], place + "[" + std::to_string(i) + "]", each);
            values.push_back(std::move(each));
        }
    }
    template <class T> void read(const Json& json, const std::string& place, std::map<std::string, T>& values)
    {
        if (!json.is_object())
            refuse(place, json, "an object");
        for (const auto& [key, value] : json.items())
            read(value, place + "." + key, values[key]);
    }
    template <class U> void read(const Json& json, const std::string& place, rules::Quantity<U>& value)
    {
        value = rules::Quantity<U>{read_count(json, place, bounds_of<rules::Quantity<U>>)};
    }
    static std::int64_t read_count(const Json& json, const std::string& place, Bounds bounds);
    void read(const Json& json, const std::string& place, std::int64_t& value)
    {
        value = read_count(json, place, bounds_of<std::int64_t>);
    }
    void read(const Json& json, const std::string& place, bool& value);
    void read(const Json& json, const std::string& place, std::string& value);
    void read(const Json& json, const std::string& place, rules::Day& value);
    void read(const Json& json, const std::string& place, rules::Range& value);
    void read(const Json& json, const std::string& place, rules::Purpose& value);

    template <class T>
    requires std::is_enum_v<T>
    void read(const Json& json, const std::string& place, T& value)
    {
        std::string accepted;
        for (const auto& [name, each] : names_of<T>()) {
            if (json.is_string() && json.get_ref<const std::string&>() == name) {
                value = each;
                return;
            }
            accepted += (accepted.empty() ? "\"" : ", \"") + std::string{name} + "\"";
        }
        refuse(place, json, accepted);
    }
    template <class T>
    requires Described<Reader, T>
    void read(const Json& json, const std::string& place, T& value)
    {
        Reader inner{json, place, strictness_};
        describe(inner, value);
        inner.finish();
    }

    template <class T> static T blank()
    {
        if constexpr (std::is_default_constructible_v<T>)
            return T{};
        else
            return T{0};
    }

    const Json& object_;
    std::string place_;
    Strictness strictness_;
    std::set<std::string_view> known_;
};

// Writes what is known; absent is left out.
class Writer {
public:
    template <class T> void operator()(const char* key, T& value)
    {
        Json json = written(value);
        if (!json.is_null())
            object_[key] = std::move(json);
    }
    Json object() && { return std::move(object_); }

private:
    template <class T> static Json written(const std::optional<T>& value) { return value ? written(*value) : Json{}; }
    template <class T> static Json written(const std::vector<T>& values)
    {
        Json list = Json::array();
        for (const auto& each : values)
            list.push_back(written(each));
        return list.empty() ? Json{} : list;
    }
    template <class T> static Json written(const std::map<std::string, T>& values)
    {
        Json object = Json::object();
        for (const auto& [key, each] : values)
            object[key] = written(each);
        return object.empty() ? Json{} : object;
    }
    template <class U> static Json written(const rules::Quantity<U>& value) { return value.count(); }
    static Json written(std::int64_t value) { return value; }
    static Json written(bool value) { return value; }
    static Json written(const std::string& value) { return value; }
    static Json written(rules::Day value) { return rules::to_string(value); }
    static Json written(const rules::Range& value);

    template <class T>
    requires std::is_enum_v<T>
    static Json written(T value)
    {
        for (const auto& [name, each] : names_of<T>())
            if (each == value)
                return std::string{name};
        return {};
    }
    template <class T>
    requires Described<Writer, T>
    static Json written(const T& value)
    {
        Writer inner;
        describe(inner, const_cast<T&>(value)); // a description takes one form of reference; writing changes nothing
        return std::move(inner).object();
    }

    Json object_ = Json::object();
};

class SchemaMaker {
public:
    template <class T> void operator()(const char* key, T&) { properties_[key] = schema<T>(); }

    template <class T> static Json object_schema()
    {
        SchemaMaker maker;
        T value{};
        describe(maker, value);
        return {{"type", "object"}, {"additionalProperties", false}, {"properties", maker.properties_}};
    }

private:
    template <class T> struct Is {
        using type = T;
    };

    static Json integer(Bounds bounds)
    {
        return {{"type", "integer"}, {"minimum", bounds.least}, {"maximum", bounds.greatest}};
    }
    template <class T> static Json schema() { return schema(Is<T>{}); }
    template <class T> static Json schema(Is<std::optional<T>>) { return or_null(schema<T>()); }
    template <class T> static Json schema(Is<std::vector<T>>)
    {
        return or_null({{"type", "array"}, {"items", schema<T>()}});
    }
    template <class T> static Json schema(Is<std::map<std::string, T>>)
    {
        return or_null({{"type", "object"}, {"additionalProperties", schema<T>()}});
    }
    template <class U> static Json schema(Is<rules::Quantity<U>>) { return integer(bounds_of<rules::Quantity<U>>); }
    static Json schema(Is<std::int64_t>) { return integer(bounds_of<std::int64_t>); }
    static Json schema(Is<bool>) { return {{"type", "boolean"}}; }
    static Json schema(Is<std::string>) { return {{"type", "string"}}; }
    static Json schema(Is<rules::Day>) { return {{"type", "string"}, {"format", "date"}}; }
    static Json schema(Is<rules::Range>);
    static Json schema(Is<rules::Purpose>);
    static Json or_null(Json schema) { return {{"anyOf", Json::array({std::move(schema), {{"type", "null"}}})}}; }

    template <class T>
    requires std::is_enum_v<T>
    static Json schema(Is<T>)
    {
        Json names = Json::array();
        for (const auto& each : names_of<T>())
            names.push_back(std::string{each.first});
        return {{"enum", names}};
    }
    template <class T>
    requires Described<SchemaMaker, T>
    static Json schema(Is<T>) { return or_null(object_schema<T>()); }

    Json properties_ = Json::object();
};

// Reads a described value from JSON; FormError if it is not of the form.
template <class T> T read_form(const Json& json, Strictness strictness)
{
    T value{};
    Reader reader{json, "", strictness};
    describe(reader, value);
    reader.finish();
    return value;
}

template <class T> Json write_form(const T& value)
{
    Writer writer;
    describe(writer, const_cast<T&>(value));
    return std::move(writer).object();
}

} // namespace cotter::records
