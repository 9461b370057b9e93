#pragma once

// The records of a unit's period as tables for a person.

#include "document.hpp"
#include "readable.hpp"

#include <string>
#include <vector>

namespace cotter::paper {

using Records = std::vector<desk::PeriodRecord>;

// A part of the bundle: which kinds of record are in it, in one table.
struct Part {
    std::string heading;
    std::vector<std::string> kinds;
    Table (*table)(const Readable& readable, const Records& records);
};

// All but the reports, which are drawn each on its own; in the order of the document.
const std::vector<Part>& parts();

Records of_kinds(const Records& records, const std::vector<std::string>& kinds);
std::vector<std::string> all_kinds(); // that a bundle has, also the reports

Table as_they_stand(const Readable& readable, const Records& records); // any kind, its fields by their descriptions
Table checks(const Readable& readable, const Records& records);
Table settings(const Readable& readable, const Records& records);
Table lifts(const Readable& readable, const Records& records);
Table corrections(const Readable& readable, const Records& records);

// What a check's item asks, by the edition of the sheet that was answered; its id if that is not in the book.
std::string item_text(const Readable& readable, const Record& check, const std::string& item);

void draw_reports(Document& document, const Readable& readable, const Records& records);

} // namespace cotter::paper
