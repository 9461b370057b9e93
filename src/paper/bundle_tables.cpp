#include "bundle_tables.hpp"

#include <algorithm>

namespace cotter::paper {

namespace {

std::string with(const std::string& text, const std::string& more)
{
    return text.empty() ? more : more.empty() ? text : text + "\n" + more;
}

// "right: tag; pins" or, each on a line with what was seen, what is not right.
std::string answers_of(const Readable& readable, const Record& check)
{
    std::string right, wrong;
    for (const Json& each : check.entry.body.value("answers", Json::array())) {
        const std::string text = item_text(readable, check, each.value("item", "")), answer = each.value("answer", ""),
                          note = each.value("note", "");
        if (answer == "right" && note.empty())
            right += (right.empty() ? "Right: " : "; ") + text;
        else
            wrong += (wrong.empty() ? "" : "\n") +
                     (answer == "stop"     ? std::string{"Stop: "}
                      : answer == "report" ? std::string{"Report: "}
                                           : std::string{"Right: "}) +
                     text + (note.empty() ? "" : " (" + note + ")");
    }
    return with(wrong, right);
}

std::optional<figures::Sign> worst_of(const Record& check)
{
    std::optional<figures::Sign> sign;
    for (const Json& each : check.entry.body.value("answers", Json::array())) {
        if (each.value("answer", "") == "stop")
            return figures::Sign::stop;
        if (each.value("answer", "") == "report")
            sign = figures::Sign::warning;
    }
    return sign;
}

// The first who saw it after that change, other than who made it.
std::string second_look(const Readable& readable, const Records& records, std::size_t change)
{
    const std::string mover = records[change].record.entry.who;
    for (std::size_t i = change + 1; i < records.size(); ++i) {
        const auto& entry = records[i].record.entry;
        if (entry.kind == "setting_changed")
            break;
        if (entry.kind == "setting_seen" && entry.who != mover)
            return readable.name(entry.who) + ", " + readable.when(entry.at) + ", saw " + entry.body.value("state", "");
    }
    return "nobody else before the next change";
}

void add_fields(const Readable& readable, const Record& old, const Json& before, const Json& after, Row row,
                Table& table)
{
    Json all = before;
    all.update(after);
    for (const auto& [field, unused] : all.items()) {
        const Json mine = before.value(field, Json{}), theirs = after.value(field, Json{});
        if (mine == theirs)
            continue;
        const Json& property = property_of(old.entry.kind, field);
        row.cells[2] = property.value("description", field);
        row.cells[3] = readable.value(property, field, mine);
        row.cells[4] = readable.value(property, field, theirs);
        table.rows.push_back(row);
        row.cells[0] = row.cells[1] = "";
    }
}

} // namespace

std::string item_text(const Readable& readable, const Record& check, const std::string& item)
{
    const auto& body = check.entry.body;
    const auto text_in = [&](const Json& items) {
        for (const Json& each : items)
            if (each.value("id", "") == item)
                return each.value("text", item);
        return std::string{};
    };
    for (const Record& sheet : readable.book().newest("check_sheet", 1'000'000))
        if (sheet.entry.about == body.value("sheet", "") &&
            sheet.entry.body.value("edition", Json{}) == body.value("edition", Json{}))
            if (const std::string text = text_in(sheet.entry.body.value("items", Json::array())); !text.empty())
                return text;
    for (const auto& line : desk::sheet_of(readable.book(), check.entry.about))
        if (line.id == item)
            return line.text;
    return item;
}

Table as_they_stand(const Readable& readable, const Records& records)
{
    Table table{{{"WHEN", 2.1}, {"WHAT", 2.4}, {"BY WHOM", 2.2}, {"RECORD", 1.3}, {"PARTICULARS", 5.2}}, {}};
    for (const auto& each : records)
        table.rows.push_back(
            {{readable.when(each.record), title_of(each.record.entry.kind), readable.who(each.record.entry),
              readable.place(each.record), with(readable.particulars(each.record), readable.standing(each))}});
    return table;
}

Table checks(const Readable& readable, const Records& records)
{
    Table table{{{"WHEN", 1.6}, {"BY WHOM, ON WHAT, SHEET", 2.4}, {"RECORD", 1.2}, {"ANSWERS", 8}}, {}};
    for (const auto& each : records) {
        const Json& body = each.record.entry.body;
        const std::string sheet = body.contains("sheet") ? "sheet " + body.value("sheet", "") + ", edition " +
                                                               body.value("edition", Json{}).dump()
                                                         : "";
        table.rows.push_back(
            {{readable.when(each.record),
              with(with(readable.who(each.record.entry), readable.name(body.value("machine", ""))), sheet),
              readable.place(each.record), with(answers_of(readable, each.record), readable.standing(each))},
             worst_of(each.record)});
    }
    return table;
}

Table settings(const Readable& readable, const Records& records)
{
    Table table{{{"WHEN", 2.1}, {"BY WHOM", 2.3}, {"WHAT", 3.2}, {"RECORD", 1.3}, {"SEEN AFTER BY ANOTHER", 4.3}}, {}};
    for (std::size_t i = 0; i < records.size(); ++i) {
        const Record& record = records[i].record;
        const Json& body = record.entry.body;
        const bool moved = record.entry.kind == "setting_changed";
        const std::string what = (moved ? "Moved to " : "Seen: ") + body.value("state", "") +
                                 (body.value("by_eye", false) ? ", by eye" : "") +
                                 (body.value("at_unit", false) ? ", at the unit" : "");
        table.rows.push_back(
            {{readable.when(record), readable.who(record.entry), with(what, readable.standing(records[i])),
              readable.place(record), moved ? second_look(readable, records, i) : ""}});
    }
    return table;
}

Table corrections(const Readable& readable, const Records& records)
{
    Table table{{{"WHEN", 2.1}, {"BY WHOM, WHY", 3.2}, {"FIELD", 2}, {"OLD", 3}, {"NEW", 3}}, {}};
    for (const auto& each : records) {
        const Record& record = each.record;
        const Json& body = record.entry.body;
        const Record* old = readable.find(body.value("corrects", ""));
        Row row{{readable.when(record),
                 readable.who(record.entry) + ": " + body.value("why", "") + "\nRecord " + readable.place(record) +
                     (old ? " corrects " + readable.place(*old) + ", " + title_of(old->entry.kind) : ""),
                 "", "", ""}};
        if (!old || !body.contains("body")) {
            row.cells[2] = "the whole record";
            row.cells[3] = old ? readable.particulars(*old) : "";
            row.cells[4] = "void: it says nothing any more";
            table.rows.push_back(std::move(row));
            continue;
        }
        Record anew = *old; // private values in the new body stand under the old record's subject
        anew.entry.body = body["body"];
        add_fields(readable, *old, readable.body(*old), readable.body(anew), std::move(row), table);
    }
    return table;
}

Records of_kinds(const Records& records, const std::vector<std::string>& kinds)
{
    Records found;
    for (const auto& each : records)
        if (std::find(kinds.begin(), kinds.end(), each.record.entry.kind) != kinds.end())
            found.push_back(each);
    return found;
}

const std::vector<Part>& parts()
{
    static const std::vector<Part> all{
        {"Declarations of conformity and interim statements", {"declaration", "interim_statement"}, as_they_stand},
        {"Pre-use checks with their answers", {"pre_use_check"}, checks},
        {"How it was set, and who saw it", {"setting_changed", "setting_seen"}, settings},
        {"Headplate, coupling, lock, rigging and set-up",
         {"headplate_fitted", "coupled", "uncoupled", "lock_seen", "rigging", "machine_set_up", "devices_proved"},
         as_they_stand},
        {"Defects found and cleared", {"defect_found", "defect_cleared"}, as_they_stand},
        {"Stops called and lifted", {"stop_called", "stop_lifted"}, as_they_stand},
        {"What befell it, and who looked and assessed", {"event", "event_looked", "event_assessed"}, as_they_stand},
        {"Lifts asked for, with every finding", {"lift_asked"}, lifts},
        {"Lifts made", {"picked_up", "set_down", "lift_done"}, as_they_stand},
        {"Lifts without an answer", {"lift_without_answer"}, as_they_stand},
        {"Orders, dispatched, received, returned",
         {"order", "dispatched", "received", "returned", "off_hire"},
         as_they_stand},
        {"The unit as it was entered", {"unit"}, as_they_stand},
        {"Corrections, old and new", {"correction"}, corrections}};
    return all;
}

std::vector<std::string> all_kinds()
{
    std::vector<std::string> kinds{"examination_report", "compared"};
    for (const Part& each : parts())
        kinds.insert(kinds.end(), each.kinds.begin(), each.kinds.end());
    return kinds;
}

} // namespace cotter::paper
