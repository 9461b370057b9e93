#pragma once

// The abstract book: what people's work needs of it. db/ has the one on SQLite.

#include "fact.hpp"
#include "record.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::records {

struct BookState {
    bool sample = false;
    bool checked = false; // the opening check is done
    bool damaged = false;
    bool forked = false;
    std::string device;
    Head head;
    rules::Instant newest_record_at{0}; // high-water of time
};

// Its author may not write it.
class NotEntitled : public FormError {
public:
    using FormError::FormError;
};

// Of several entries one is not accepted.
class EntryError : public FormError {
public:
    EntryError(std::size_t number, const FormError& why)
        : FormError{why}, index{number}, not_entitled{dynamic_cast<const NotEntitled*>(&why) != nullptr}
    {
    }
    std::size_t index; // in the list that was given, from 0
    bool not_entitled;
};

class Book {
public:
    Book() = default;
    Book(const Book&) = delete;
    Book& operator=(const Book&) = delete;
    virtual ~Book() = default;

    virtual BookState state() const = 0;

    // Checks every entry, then writes all of them and what they mean in one transaction, or nothing.
    // EntryError names the first entry that is not accepted; private values stand plainly in the entries' bodies.
    virtual std::vector<Record> append(std::vector<Entry> entries) = 0;

    virtual std::optional<Fact> fact(const std::string& kind, const std::string& key) const = 0;
    virtual std::vector<Fact> facts(const std::string& kind) const = 0;
    virtual std::vector<Fact> facts_about(const std::string& kind, const std::string& about) const = 0;

    // Those still asked for after their day; those whose newest record is not older than an instant.
    virtual std::vector<Fact> open_facts(const std::string& kind) const;
    virtual std::vector<Fact> facts_since(const std::string& kind, rules::Instant first) const;

    // Keys of a kind's facts in order, without reading them; and how many units have a tag.
    virtual std::vector<std::string> keys(const std::string& kind) const;
    virtual std::size_t units_with_tag(const std::string& tag) const;

    // A private value; nothing if it was removed or never given.
    virtual std::optional<std::string> private_value(const std::string& subject, const std::string& field) const = 0;

    virtual std::optional<Record> find(const std::string& hash) const = 0;

    // The newest records, newest first; all kinds if `kind` is empty.
    virtual std::vector<Record> newest(const std::string& kind, std::size_t count) const = 0;
};

} // namespace cotter::records
