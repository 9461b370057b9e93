#pragma once

// A book as it will be once the people of a list are in it: an admission names a person who stands in the same list.

#include "book.hpp"

#include <map>
#include <string>

namespace cotter::desk {

class Foreseen final : public records::Book {
public:
    explicit Foreseen(const records::Book& book) : book_{book} {}

    void add(const records::Entry& entry); // a person, an admission; any other kind is passed over

    records::BookState state() const override { return book_.state(); }
    std::vector<records::Record> append(std::vector<records::Entry> entries) override; // never: it is only looked at
    std::optional<records::Fact> fact(const std::string& kind, const std::string& key) const override;
    std::vector<records::Fact> facts(const std::string& kind) const override { return book_.facts(kind); }
    std::vector<records::Fact> facts_about(const std::string& kind, const std::string& about) const override
    {
        return book_.facts_about(kind, about);
    }
    std::optional<std::string> private_value(const std::string& subject, const std::string& field) const override
    {
        return book_.private_value(subject, field);
    }
    std::optional<records::Record> find(const std::string& hash) const override { return book_.find(hash); }
    std::vector<records::Record> newest(const std::string& kind, std::size_t count) const override;

private:
    const records::Book& book_;
    std::map<std::string, records::Fact> people_;
    bool admitted_ = false;
};

} // namespace cotter::desk
