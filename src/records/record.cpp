#include "record.hpp"

namespace cotter::records {

namespace {

// UTF-8 JSON with sorted keys, no white space, integers only.
std::string encode(const Record& record)
{
    const Entry& e = record.entry;
    const Json json = {{"about", e.about},
                       {"after", e.after},
                       {"at", e.at.count()},
                       {"body", e.body},
                       {"body_version", body_version},
                       {"boot", e.boot},
                       {"boot_seconds", e.boot_seconds},
                       {"by", e.by},
                       {"day", rules::to_string(e.day)},
                       {"device", record.device},
                       {"how", e.how},
                       {"kind", e.kind},
                       {"prev", record.prev},
                       {"roles", e.roles},
                       {"seq", record.seq},
                       {"who", e.who}};
    return json.dump();
}

std::int64_t whole(const Json& json, const char* field)
{
    const Json& value = json.at(field);
    if (!is_whole(value))
        refuse(field, value, "a whole number");
    return value.get<std::int64_t>();
}

Entry entry_of(const Json& json)
{
    Entry e;
    e.about = json.at("about").get<std::string>();
    e.after = json.at("after").get<std::vector<std::string>>();
    e.at = rules::Instant{whole(json, "at")};
    e.body = json.at("body");
    e.boot = json.at("boot").get<std::string>();
    e.boot_seconds = whole(json, "boot_seconds");
    e.by = json.at("by").get<std::string>();
    e.how = json.at("how").get<std::string>();
    e.kind = json.at("kind").get<std::string>();
    e.roles = json.value("roles", std::vector<std::string>{}); // older records have none, and clear nothing
    e.who = json.at("who").get<std::string>();
    const auto day = rules::parse_day(json.at("day").get<std::string>());
    if (!day)
        throw FormError{"day: a day YYYY-MM-DD is accepted"};
    e.day = *day;
    return e;
}

} // namespace

Record sign(const Entry& entry, const DeviceKey& key, const Head& head)
{
    Record record;
    record.device = key.device();
    record.seq = head.seq + 1;
    record.prev = head.hash;
    record.entry = entry;
    record.bytes = encode(record);
    record.hash = record_hash(record.bytes);
    record.sig = key.sign(record.bytes);
    return record;
}

Record parse_record(std::string bytes, std::string sig)
try {
    const Json json = Json::parse(bytes);
    Record record;
    record.device = json.at("device").get<std::string>();
    record.seq = whole(json, "seq");
    record.prev = json.at("prev").get<std::string>();
    record.entry = entry_of(json);
    if (whole(json, "body_version") > body_version)
        throw FormError{"body_version: a newer program wrote this record"};
    record.hash = record_hash(bytes);
    record.bytes = std::move(bytes);
    record.sig = std::move(sig);
    return record;
} catch (const Json::exception&) {
    throw FormError{"its bytes are not a record"};
}

} // namespace cotter::records
