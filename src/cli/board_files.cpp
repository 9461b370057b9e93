#include "board_files.hpp"

#include "local_time.hpp"

#include <algorithm>
#include <string>

namespace cotter::cli {

namespace {

std::string cell(std::string text)
{
    if (!text.empty() && std::string{"=+-@\t\r"}.find(text[0]) != std::string::npos)
        text.insert(0, "'");
    if (text.find_first_of(",\"\r\n") == std::string::npos)
        return text;
    std::string quoted = "\"";
    for (const char c : text)
        quoted += c == '"' ? std::string{"\"\""} : std::string{c};
    return quoted + '"';
}

std::string codes(const records::Json& list)
{
    std::string text;
    for (const auto& each : list)
        text += (text.empty() ? "" : " ") + each.get<std::string>();
    return text;
}

std::string basic(std::string day) // 2026-12-04 as 20261204
{
    day.erase(std::remove(day.begin(), day.end(), '-'), day.end());
    return day;
}

std::string basic_instant(rules::Instant at)
{
    std::string text = basic(desk::to_string(at));
    text.erase(std::remove(text.begin(), text.end(), ':'), text.end());
    return text;
}

std::string escaped(const std::string& text)
{
    std::string out;
    for (const char c : text)
        if (static_cast<unsigned char>(c) >= 0x20)
            out += (c == ',' || c == ';' || c == '\\') ? std::string{'\\', c} : std::string{c};
    return out;
}

} // namespace

void write_csv(const std::vector<desk::BoardRow>& rows, std::ostream& out)
{
    out << "unit,owner,kind,model,setting,place,latest,days_left,stops,cautions\r\n";
    for (const desk::BoardRow& row : rows) {
        const records::Json json = to_json(row);
        for (const auto& text : {row.label, row.owner, row.kind, row.model, row.setting, row.place})
            out << cell(text) << ',';
        out << (row.latest ? rules::to_string(*row.latest) : "") << ','
            << (row.days_left ? std::to_string(*row.days_left) : "") << ',' << codes(json["stops"]) << ','
            << codes(json["cautions"]) << "\r\n";
    }
}

void write_calendar(const std::vector<desk::BoardRow>& rows, rules::Instant made, std::ostream& out)
{
    out << "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Cotter//due board//EN\r\n";
    for (const desk::BoardRow& row : rows)
        if (row.latest)
            out << "BEGIN:VEVENT\r\nUID:" << escaped(row.unit) << "@cotter\r\nDTSTAMP:" << basic_instant(made)
                << "\r\nDTSTART;VALUE=DATE:" << basic(rules::to_string(*row.latest))
                << "\r\nSUMMARY:" << escaped(row.label) << " last day of use\r\nEND:VEVENT\r\n";
    out << "END:VCALENDAR\r\n";
}

} // namespace cotter::cli
