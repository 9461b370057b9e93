#include "board_files.hpp"

#include "csv_out.hpp"
#include "local_time.hpp"

#include <algorithm>
#include <string>

namespace cotter::cli {

namespace {

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

// A line of at most 75 octets, the rest on lines of their own that begin with a blank; never within a character.
// Source: RFC 5545, 3.1.
std::string folded(const std::string& line)
{
    constexpr std::size_t most = 75;
    std::string out;
    std::size_t used = 0;
    for (std::size_t i = 0; i < line.size();) {
        std::size_t length = 1;
        while (i + length < line.size() && (static_cast<unsigned char>(line[i + length]) & 0xC0) == 0x80)
            ++length;
        if (used + length > most) {
            out += "\r\n ";
            used = 1;
        }
        out += line.substr(i, length);
        used += length;
        i += length;
    }
    return out + "\r\n";
}

} // namespace

void write_csv(const std::vector<desk::BoardRow>& rows, std::ostream& out)
{
    out << "unit,owner,kind,model,setting,place,latest,days_left,stops,cautions\r\n";
    for (const desk::BoardRow& row : rows) {
        const records::Json json = to_json(row);
        for (const auto& text : {row.label, row.owner, row.kind, row.model, row.setting, row.place})
            out << desk::csv_cell(text) << ',';
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
            for (const std::string& line :
                 {std::string{"BEGIN:VEVENT"}, "UID:" + escaped(row.unit) + "@cotter", "DTSTAMP:" + basic_instant(made),
                  "DTSTART;VALUE=DATE:" + basic(rules::to_string(*row.latest)),
                  "SUMMARY:" + escaped(row.label) + " last day of use", std::string{"END:VEVENT"}})
                out << folded(line);
    out << "END:VCALENDAR\r\n";
}

} // namespace cotter::cli
