#include "form.hpp"

#include <algorithm>
#include <limits>

namespace cotter::records {

namespace {

constexpr std::size_t shown_length = 60;
constexpr int deepest = 64;

// Refuses an object that names a key twice; nlohmann's own parser would keep the last.
class DoubledKeys {
public:
    bool operator()(int depth, Json::parse_event_t event, Json& parsed)
    {
        if (depth > deepest)
            throw FormError{"nested too deep; up to " + std::to_string(deepest) + " levels are accepted"};
        if (event == Json::parse_event_t::object_start)
            open_.emplace_back();
        else if (event == Json::parse_event_t::object_end)
            open_.pop_back();
        else if (event == Json::parse_event_t::key && !open_.back().insert(parsed.get<std::string>()).second)
            throw FormError{parsed.get<std::string>() + " stands twice in one object; each key once is accepted"};
        return true;
    }

private:
    std::vector<std::set<std::string>> open_;
};

} // namespace

std::string shown(const Json& value)
{
    std::string text = value.dump(-1, ' ', false, Json::error_handler_t::replace);
    if (text.size() > shown_length)
        text = text.substr(0, shown_length) + "...";
    return text;
}

void refuse(const std::string& place, const Json& value, std::string_view accepted)
{
    throw FormError{place + ": " + shown(value) + " is not accepted; " + std::string{accepted} + " is"};
}

bool is_whole(const Json& value)
{
    return value.is_number_integer() &&
           !(value.is_number_unsigned() &&
             value.get<std::uint64_t>() > static_cast<std::uint64_t>(std::numeric_limits<std::int64_t>::max()));
}

Json parse_strictly(std::string_view text)
{
    DoubledKeys doubled;
    try {
        return Json::parse(
            text, [&](int depth, Json::parse_event_t event, Json& parsed) { return doubled(depth, event, parsed); });
    } catch (const Json::parse_error& e) {
        throw FormError{"not JSON in UTF-8 at character " + std::to_string(e.byte)};
    } catch (const Json::exception&) {
        throw FormError{"not JSON; a number in it is too great"};
    }
}

void Reader::finish() const
{
    if (strictness_ == Strictness::lenient)
        return;
    for (const auto& [key, value] : object_.items()) {
        if (known_.count(key) > 0)
            continue;
        std::string accepted;
        for (const std::string_view each : known_)
            accepted += (accepted.empty() ? "" : ", ") + std::string{each};
        throw FormError{(place_.empty() ? key : place_ + "." + key) + " is not a field; accepted are " + accepted};
    }
}

std::int64_t Reader::read_count(const Json& json, const std::string& place, Bounds bounds)
{
    const bool fits = is_whole(json) && json >= bounds.least && json <= bounds.greatest;
    if (!fits)
        refuse(place, json,
               "a whole number from " + std::to_string(bounds.least) + " to " + std::to_string(bounds.greatest));
    return json.get<std::int64_t>();
}

void Reader::read(const Json& json, const std::string& place, bool& value)
{
    if (!json.is_boolean())
        refuse(place, json, "true, false or null");
    value = json.get<bool>();
}

void Reader::read(const Json& json, const std::string& place, std::string& value)
{
    if (!json.is_string())
        refuse(place, json, "a text");
    value = json.get<std::string>();
}

void Reader::read(const Json& json, const std::string& place, rules::Day& value)
{
    const auto day = json.is_string() ? rules::parse_day(json.get_ref<const std::string&>()) : std::nullopt;
    if (!day)
        refuse(place, json, "a day YYYY-MM-DD");
    value = *day;
}

void Reader::read(const Json& json, const std::string& place, rules::Range& value)
{
    if (json == "any") {
        value.any = true;
        return;
    }
    if (!json.is_object())
        refuse(place, json, "\"any\" or an object with least and greatest");
    Reader inner{json, place, strictness_};
    inner("least", value.least);
    inner("greatest", value.greatest);
    inner.finish();
}

// "Anything else: use."
void Reader::read(const Json& json, const std::string&, rules::Purpose& value)
{
    value = rules::Purpose::use;
    for (const auto& [name, each] : names_of<rules::Purpose>())
        if (json.is_string() && json.get_ref<const std::string&>() == name)
            value = each;
}

Json Writer::written(const rules::Range& value)
{
    if (value.any)
        return "any";
    Writer inner;
    auto copy = value;
    inner("least", copy.least);
    inner("greatest", copy.greatest);
    return std::move(inner).object();
}

Json SchemaMaker::schema(Is<rules::Range>)
{
    const Json end = or_null(integer(bounds_of<rules::Millimetres>));
    const Json ends = {{"least", end}, {"greatest", end}};
    return {{"anyOf", Json::array({{{"const", "any"}},
                                   {{"type", "object"}, {"additionalProperties", false}, {"properties", ends}}})}};
}

Json SchemaMaker::schema(Is<rules::Purpose>)
{
    return {{"description", "lift, use, repair, examination, return or scrap; anything else: use"}};
}

} // namespace cotter::records
