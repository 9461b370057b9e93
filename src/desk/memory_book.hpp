#pragma once

// A book in memory, folded from the records that it is given: what a book said on a day that is past.

#include "register.hpp"

#include <functional>
#include <map>
#include <string>
#include <vector>

namespace cotter::desk {

class MemoryBook final : public Book {
public:
    using PrivateValue =
        std::function<std::optional<std::string>(const std::string& subject, const std::string& field)>;

    MemoryBook(std::vector<records::Record> records, records::BookState state, PrivateValue private_value);

    records::BookState state() const override { return state_; }
    std::vector<records::Record> append(std::vector<records::Entry> entries) override; // refused: it is only read
    std::optional<records::Fact> fact(const std::string& kind, const std::string& key) const override;
    std::vector<records::Fact> facts(const std::string& kind) const override;
    std::vector<records::Fact> facts_about(const std::string& kind, const std::string& about) const override;
    std::optional<std::string> private_value(const std::string& subject, const std::string& field) const override;
    std::optional<records::Record> find(const std::string& hash) const override;
    std::vector<records::Record> newest(const std::string& kind, std::size_t count) const override;

private:
    std::map<std::string, records::Record> records_; // by hash
    std::map<records::FactKey, records::Fact> facts_;
    records::BookState state_;
    PrivateValue private_value_;
};

// Of a book only what was recorded up to an instant, or to the end of a day at the site. It reads names from `book`,
// which must outlive it.
MemoryBook book_at(const Book& book, rules::Instant last);
MemoryBook book_on(const Book& book, rules::Day last);

} // namespace cotter::desk
