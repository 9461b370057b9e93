#pragma once

// Looking things up in a book: units by their tag, names, sheets, the shift, the plan in force.

#include "book.hpp"
#include "question_form.hpp"

#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

namespace cotter::desk {

using records::Book;
using records::Json;

// What was asked for is not in the book, or it is not clear which. One line: what, and what is accepted.
class NotFound : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

// A unit by its tag, by OWNER/SERIAL, by its label or by its id. NotFound if there is none, or if two firms use the
// tag.
std::string find_unit(const Book& book, const std::string& tag);

Json doc(const Book& book, const std::string& kind, const std::string& key); // {} if there is none
std::optional<rules::Day> day_in(const Json& doc, const char* field);        // nothing where it is not said
rules::Flag flag(const Json& doc, const char* field);                        // nothing where it is not said
std::string tag_of(const Book& book, const std::string& unit);

// A tag as long as it tells the unit from all others in the book, else "tag (owner)".
std::string label_of(const Book& book, const std::string& unit);

// What a person reads for an id of any kind: a person's name, a unit's label, a pipe's or model's name.
std::string shown_name(const Book& book, const std::string& id);

std::string current_site(const Book& book); // of the newest shift, else the newest site; "" for none
std::string zone_of(const Book& book, const std::string& site); // "UTC" if there is none

inline constexpr std::int64_t longest_shift_seconds = 14 * 3600; // source: firm's own rule

// The newest shift of the site that has not been stood down; {} if there is none.
Json open_shift(const Book& book, const std::string& site);

// The day by which people are named for their work: that on which the open shift began, until its end; else today.
rules::Day working_day(const Book& book, const std::string& site, rules::Instant now);

// The items of a unit's sheet: those of its general sheet, then its model's own.
struct SheetLine {
    std::string id, text, if_not;
    std::vector<std::string> staled_by;
    bool stop_only = false;
};
std::vector<SheetLine> sheet_of(const Book& book, const std::string& unit);

} // namespace cotter::desk
