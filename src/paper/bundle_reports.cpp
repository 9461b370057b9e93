// Reports of thorough examination: each with its particulars in the Schedule's order, and those that are missing.

#include "bundle_tables.hpp"
#include "schedule1.hpp"

#include <algorithm>

namespace cotter::paper {

namespace {

std::string names_of(const Readable& readable, const Json& ids)
{
    std::string text;
    for (const Json& each : ids)
        text += (text.empty() ? "" : ", ") + readable.name(each.get<std::string>());
    return text;
}

std::string list_of(const Json& ids)
{
    std::string text;
    for (const Json& each : ids)
        text += (text.empty() ? "" : ", ") + each.get<std::string>();
    return text;
}

std::string copy_of(const Json& body)
{
    const Json copy = body.value("copy", Json::object());
    return std::string{copy.value("here", false) ? "a copy is here" : "no copy is here"} +
           (copy.value("legible", false) ? ", legible" : ", not said to be legible") +
           (copy.contains("sha256") ? ", SHA-256 " + copy.value("sha256", "") : "");
}

std::string compared_by(const Readable& readable, const Records& all, const Record& report)
{
    std::string text;
    for (const auto& each : all)
        if (each.record.entry.kind == "compared" && each.record.entry.about == report.entry.about)
            text += (text.empty() ? "" : "; ") + readable.who(each.record.entry) + ", " + readable.when(each.record);
    return text.empty() ? "nobody in this bundle" : text;
}

Table particulars_of(const Readable& readable, const Records& all, const Record& report, const Json& body,
                     const std::vector<Particular>& schedule)
{
    Table table{{{"PARA.", 0.9}, {"PARTICULAR", 4}, {"AS RECORDED", 6}}, {}};
    for (const Particular& each : schedule)
        table.rows.push_back(
            {{each.paragraph, each.words,
              each.missing.empty() ? each.value : each.value + (each.value.empty() ? "" : "; ") + each.missing},
             std::nullopt});
    table.rows.push_back({{"", "units that it names", names_of(readable, body.value("units", Json::array()))}});
    if (body.contains("full"))
        table.rows.push_back({{"", "says of itself that it is full", body.value("full", false) ? "yes" : "no"}});
    for (const auto& [field, says] :
         {std::pair{"remedies", "defects that it names as remedied"}, {"names_events", "events that it names"}})
        if (body.contains(field))
            table.rows.push_back({{"", says, list_of(body[field])}});
    table.rows.push_back({{"", "copy of the document", copy_of(body)}});
    table.rows.push_back({{"", "typed in by", readable.who(report.entry) + ", " + readable.when(report)}});
    table.rows.push_back({{"", "compared with its page by", compared_by(readable, all, report)}});
    return table;
}

} // namespace

void draw_reports(Document& document, const Readable& readable, const Records& records)
{
    document.heading("Reports of thorough examination (LOLER 1998 regs 9, 10, Schedule 1)");
    const Records reports = of_kinds(records, {"examination_report"});
    if (reports.empty())
        document.paragraph("None.");
    for (const auto& each : reports) {
        const Json body = readable.body(each.record);
        const auto schedule = schedule_1(body);
        const std::string missing = missing_of(schedule), standing = readable.standing(each);
        document.subheading("Report " + each.record.entry.about + ", record " + readable.place(each.record));
        document.paragraph(standing);
        document.paragraph(missing.empty() ? "Missing of Schedule 1: nothing."
                                           : "Missing of Schedule 1: " + missing + ".");
        document.table(particulars_of(readable, records, each.record, body, schedule));
    }
}

} // namespace cotter::paper
