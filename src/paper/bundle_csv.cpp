// One table in CSV for each kind of record: who, when, and every field of its schema.

#include "bundle_csv.hpp"

#include "csv_out.hpp"
#include "kinds.hpp"
#include "local_time.hpp"
#include "schedule1.hpp"

namespace cotter::paper {

namespace {

using Texts = std::vector<std::string>;

const char* name(desk::When when)
{
    switch (when) {
    case desk::When::before: return "in force before";
    case desk::When::within: return "in the period";
    case desk::When::outside: return "outside the period";
    }
    return "outside the period";
}

std::string corrected_by(const Readable& readable, const Record& record)
{
    std::string text;
    for (const Record* each : readable.corrections_of(record))
        text += (text.empty() ? "" : " ") + each->hash;
    return text;
}

// Ids and codes as they stand, for a machine; lists of texts with semicolons, anything deeper as JSON.
std::string plain(const Json& value)
{
    if (value.is_null())
        return "";
    if (value.is_boolean())
        return value.get<bool>() ? "yes" : "no";
    if (value.is_string())
        return value.get<std::string>();
    if (!value.is_array())
        return value.dump();
    std::string text;
    for (const Json& each : value) {
        if (!each.is_string())
            return value.dump();
        text += (text.empty() ? "" : "; ") + each.get<std::string>();
    }
    return text;
}

Texts common(const Readable& readable, const desk::PeriodRecord& each)
{
    const Record& record = each.record;
    const auto& e = record.entry;
    return {name(each.when),
            rules::to_string(e.day),
            desk::to_string(e.at),
            e.about,
            e.who,
            readable.name(e.who),
            e.by,
            readable.name(e.by),
            e.how,
            plain(Json(e.roles)),
            record.device,
            std::to_string(record.seq),
            record.hash,
            corrected_by(readable, record)};
}

const Texts common_headings{"when",    "day", "at",    "about",  "who", "who_name", "by",
                            "by_name", "how", "roles", "device", "seq", "hash",     "corrected_by"};

Texts fields_of(const std::string& kind)
{
    Texts fields;
    if (const records::Kind* found = records::find_kind(kind))
        for (const auto& [field, unused] : found->schema["properties"].items())
            fields.push_back(field);
    return fields;
}

std::string file_of(const Readable& readable, const Records& all, const std::string& kind)
{
    const Texts fields = fields_of(kind);
    const bool is_report = kind == "examination_report";
    Texts headings = common_headings;
    headings.insert(headings.end(), fields.begin(), fields.end());
    if (is_report)
        headings.push_back("missing_of_schedule_1");
    std::string text = desk::csv_row(headings);
    for (const auto& each : of_kinds(all, {kind})) {
        const Json body = readable.body(each.record);
        Texts row = common(readable, each);
        for (const std::string& field : fields)
            row.push_back(plain(body.value(field, Json{})));
        if (is_report)
            row.push_back(missing_of(schedule_1(body)));
        text += desk::csv_row(row);
    }
    return text;
}

// A row a finding, a row an answer: lists within records.
std::string inner_rows(const Records& records, const char* list, const Texts& fields, const char* of)
{
    Texts headings{of, "about", "at"};
    headings.insert(headings.end(), fields.begin(), fields.end());
    std::string text = desk::csv_row(headings);
    for (const auto& each : records)
        for (const Json& inner : each.record.entry.body.value(list, Json::array())) {
            Texts row{each.record.hash, each.record.entry.about, desk::to_string(each.record.entry.at)};
            for (const std::string& field : fields)
                row.push_back(plain(inner.value(field, Json{})));
            text += desk::csv_row(row);
        }
    return text;
}

} // namespace

records::Files csv_files(const Readable& readable, const Records& all)
{
    records::Files files;
    for (const std::string& kind : all_kinds())
        files["csv/" + kind + ".csv"] = file_of(readable, all, kind);
    files["csv/lift_findings.csv"] =
        inner_rows(of_kinds(all, {"lift_asked"}), "findings",
                   {"code", "weight", "about", "says", "measured", "limit", "unit", "source", "clears"}, "lift_asked");
    files["csv/check_answers.csv"] =
        inner_rows(of_kinds(all, {"pre_use_check"}), "answers", {"item", "answer", "note"}, "pre_use_check");
    return files;
}

} // namespace cotter::paper
