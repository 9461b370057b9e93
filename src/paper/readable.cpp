#include "readable.hpp"

#include "amounts.hpp"
#include "kinds.hpp"
#include "local_time.hpp"
#include "private_data.hpp"

#include <algorithm>

namespace cotter::paper {

namespace {

constexpr std::string_view seconds = " (whole UTC seconds)";

bool ends_with(const std::string& text, std::string_view end)
{
    return text.size() >= end.size() && text.compare(text.size() - end.size(), end.size(), end) == 0;
}

std::string label_of(const Json& property, const std::string& field)
{
    std::string label = property.value("description", field);
    if (ends_with(label, seconds))
        label.erase(label.size() - seconds.size());
    if (label.starts_with("hash of "))
        label.erase(0, std::string_view{"hash of "}.size());
    return label == "id" ? field : label;
}

std::string without_underscores(std::string text)
{
    std::replace(text.begin(), text.end(), '_', ' ');
    return text;
}

std::string unit_of(const std::string& field)
{
    return ends_with(field, "_kg") ? " kg" : ends_with(field, "_mm") ? " mm" : ends_with(field, "_nm") ? " N m" : "";
}

const Json& nothing()
{
    static const Json empty = Json::object();
    return empty;
}

} // namespace

std::string local_time(rules::Instant at, const std::string& zone)
{
    return words::long_day(desk::local_day(at, zone)) + " " + words::clock_time(desk::local_minutes(at, zone));
}

const Json& property_of(const std::string& kind, const std::string& field)
{
    const records::Kind* found = records::find_kind(kind);
    if (!found || !found->schema["properties"].contains(field))
        return nothing();
    return found->schema["properties"][field];
}

std::string title_of(const std::string& kind)
{
    const records::Kind* found = records::find_kind(kind);
    return found ? found->schema.value("title", kind) : kind;
}

Readable::Readable(const records::Book& book, const std::vector<desk::PeriodRecord>& records)
    : book_{book}, zone_{desk::zone_of(book, desk::current_site(book))}
{
    for (const desk::PeriodRecord& each : records)
        by_hash_[each.record.hash] = &each.record;
}

std::string Readable::name(const std::string& id) const { return id.empty() ? "" : desk::shown_name(book_, id); }

std::string Readable::when(rules::Instant at) const { return local_time(at, zone_); }

std::string Readable::who(const records::Entry& entry) const
{
    std::string text = name(entry.who);
    if (entry.by != entry.who)
        text += ", written down by " + name(entry.by);
    if (entry.how == "phone" || entry.how == "copy" || entry.how == "seen")
        text += " (" + entry.how + ")";
    return text;
}

std::string Readable::place(const Record& record) const
{
    return std::to_string(record.seq) + " " + record.hash.substr(0, 8);
}

Json Readable::body(const Record& record) const
{
    Json body = record.entry.body;
    const records::Kind* kind = records::find_kind(record.entry.kind);
    const auto fields = kind ? records::private_fields(*kind) : std::vector<std::string>{};
    for (const std::string& field : fields)
        if (body.contains(field) && body[field].is_string())
            body[field] = is_overwritten(record, field)
                              ? "not kept: corrected since"
                              : book_.private_value(records::private_subject(record.entry), field).value_or("removed");
    return body;
}

// Of a private value only the newest is kept.
bool Readable::is_overwritten(const Record& record, const std::string& field) const
{
    const auto corrections = corrections_of(record);
    return std::any_of(corrections.begin(), corrections.end(), [&](const Record* each) {
        const Json body = each->entry.body.value("body", Json::object());
        return body.contains(field) && body[field] != record.entry.body[field];
    });
}

std::string Readable::value(const Json& property, const std::string& field, const Json& value) const
{
    if (value.is_null())
        return "not known";
    if (value.is_boolean())
        return value.get<bool>() ? "yes" : "no";
    if (value.is_number_integer())
        return ends_with(property.value("description", ""), seconds) ? when(rules::Instant{value.get<std::int64_t>()})
                                                                     : value.dump() + unit_of(field);
    if (value.is_string() && property.value("x-refers", "") == "record") {
        const auto found = book_.find(value.get<std::string>());
        return found ? "record " + place(*found) : value.get<std::string>();
    }
    if (value.is_string())
        return property.contains("enum")       ? without_underscores(value.get<std::string>())
               : property.contains("x-refers") ? name(value.get<std::string>())
                                               : value.get<std::string>();
    std::string text;
    const Json items = property.value("items", Json::object()), fields = property.value("properties", Json::object());
    for (const auto& [key, each] : value.items()) {
        const Json inner = value.is_array() ? items : fields.value(key, Json::object());
        text += text.empty() ? "" : value.is_array() && each.is_structured() ? " / " : ", ";
        if (value.is_object())
            text += label_of(items.contains("properties") ? items["properties"].value(key, inner) : inner, key) + " ";
        text += this->value(inner, key, each);
    }
    return text.empty() ? "none" : text;
}

std::string Readable::particulars(const Record& record) const
{
    const Json body = this->body(record);
    std::string text;
    for (const auto& [field, value] : body.items()) {
        const Json& property = property_of(record.entry.kind, field);
        text += (text.empty() ? "" : "; ") + label_of(property, field) + ": " + this->value(property, field, value);
    }
    return text;
}

std::vector<const Record*> Readable::corrections_of(const Record& record) const
{
    std::vector<const Record*> found;
    for (const auto& [hash, each] : by_hash_)
        if (each->entry.kind == "correction" && each->entry.body.value("corrects", "") == record.hash)
            found.push_back(each);
    std::sort(found.begin(), found.end(), [](const Record* a, const Record* b) { return a->seq < b->seq; });
    return found;
}

const Record* Readable::find(const std::string& hash) const
{
    const auto found = by_hash_.find(hash);
    return found == by_hash_.end() ? nullptr : found->second;
}

std::string Readable::standing(const desk::PeriodRecord& each) const
{
    std::string text = each.when == desk::When::before    ? "In force before the period."
                       : each.when == desk::When::outside ? "Outside the period."
                                                          : "";
    for (const Record* correction : corrections_of(each.record))
        text += (text.empty() ? "" : " ") +
                std::string{correction->entry.body.contains("body") ? "Corrected" : "Declared void"} + " by record " +
                std::to_string(correction->seq) + ".";
    return text;
}

} // namespace cotter::paper
