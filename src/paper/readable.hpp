#pragma once

// A record as a person reads it: names for ids, local time, the fields by their descriptions.

#include "register.hpp"
#include "unit_period.hpp"

#include <map>
#include <string>
#include <vector>

namespace cotter::paper {

using records::Json;
using records::Record;

class Readable {
public:
    // `records` are those beside which this one is read: which of them corrects which.
    Readable(const records::Book& book, const std::vector<desk::PeriodRecord>& records);

    const records::Book& book() const { return book_; }
    std::string name(const std::string& id) const; // "" stays ""
    std::string when(rules::Instant at) const;     // "Wed 25 Nov 2026 07:42"
    std::string when(const Record& record) const { return when(record.entry.at); }
    std::string who(const records::Entry& entry) const; // and who wrote it down, and how it is known
    std::string place(const Record& record) const;      // its number and the head of its hash: "12 1a2b3c4d"

    Json body(const Record& record) const; // private values as they read, or "removed"
    std::string value(const Json& property, const std::string& field, const Json& value) const;
    std::string particulars(const Record& record) const; // "description: value; ..."

    // What makes a record's standing different: in force before the period, outside it, corrected. "" for nothing.
    std::string standing(const desk::PeriodRecord& each) const;
    std::vector<const Record*> corrections_of(const Record& record) const;
    const Record* find(const std::string& hash) const; // among these records

private:
    bool is_overwritten(const Record& record, const std::string& field) const;

    const records::Book& book_;
    std::string zone_;
    std::map<std::string, const Record*> by_hash_;
};

const Json& property_of(const std::string& kind, const std::string& field);
std::string title_of(const std::string& kind); // of the kind, as its schema has it

// An instant at the site: "Wed 25 Nov 2026 07:42".
std::string local_time(rules::Instant at, const std::string& zone);

} // namespace cotter::paper
