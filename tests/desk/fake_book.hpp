#pragma once

// A book without a store: facts and records as a test puts them there.

#include "book.hpp"

#include <algorithm>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

namespace cotter::tests {

class FakeBook : public records::Book {
public:
    FakeBook& with(const std::string& kind, const std::string& key, records::Json doc)
    {
        records::Fact fact;
        fact.key = {kind, key};
        fact.doc = std::move(doc);
        facts_.push_back(std::move(fact));
        return *this;
    }
    FakeBook& with(records::Record newest)
    {
        newest_.push_back(std::move(newest));
        return *this;
    }
    FakeBook& as_sample()
    {
        state_.sample = true;
        return *this;
    }

    records::BookState state() const override { return state_; }
    std::vector<records::Record> append(std::vector<records::Entry>) override
    {
        throw std::logic_error{"is only read"};
    }
    std::optional<records::Fact> fact(const std::string& kind, const std::string& key) const override
    {
        for (const records::Fact& each : facts_)
            if (each.key.kind == kind && each.key.key == key)
                return each;
        return std::nullopt;
    }
    std::vector<records::Fact> facts(const std::string& kind) const override
    {
        std::vector<records::Fact> found;
        for (const records::Fact& each : facts_)
            if (each.key.kind == kind)
                found.push_back(each);
        return found;
    }
    std::vector<records::Fact> facts_about(const std::string&, const std::string&) const override { return {}; }
    std::optional<std::string> private_value(const std::string&, const std::string&) const override
    {
        return std::nullopt;
    }
    std::optional<records::Record> find(const std::string& hash) const override
    {
        for (const records::Record& each : newest_)
            if (each.hash == hash)
                return each;
        return std::nullopt;
    }
    std::vector<records::Record> newest(const std::string& kind, std::size_t count) const override
    {
        std::vector<records::Record> found;
        for (const records::Record& each : newest_)
            if (found.size() < count && (kind.empty() || each.entry.kind == kind))
                found.push_back(each);
        return found;
    }

private:
    records::BookState state_;
    std::vector<records::Fact> facts_;
    std::vector<records::Record> newest_;
};

} // namespace cotter::tests
