#include "memory_book.hpp"

#include <algorithm>
#include <limits>
#include <tuple>

namespace cotter::desk {

using records::Fact;
using records::FactKey;
using records::Record;

namespace {

constexpr auto all = std::numeric_limits<std::int32_t>::max();

bool is_newer(const Record& a, const Record& b)
{
    return std::tie(a.entry.at, a.device, a.seq) > std::tie(b.entry.at, b.device, b.seq);
}

MemoryBook part_of(const Book& book, const std::function<bool(const Record&)>& is_kept)
{
    std::vector<Record> records = book.newest("", all);
    std::erase_if(records, [&](const Record& each) { return !is_kept(each); });
    return {std::move(records), book.state(), [&book](const std::string& subject, const std::string& field) {
                return book.private_value(subject, field);
            }};
}

} // namespace

MemoryBook::MemoryBook(std::vector<Record> records, records::BookState state, PrivateValue private_value)
    : state_{std::move(state)}, private_value_{std::move(private_value)}
{
    for (Record& each : records)
        records_.emplace(each.hash, std::move(each));
    std::map<FactKey, std::vector<Record>> touching;
    for (const auto& [hash, record] : records_)
        for (const FactKey& key : touched_by(record, [this](const std::string& old) { return find(old); }))
            touching[key].push_back(record);
    for (auto& [key, of_fact] : touching)
        if (auto fact = fold(key, std::move(of_fact)))
            facts_.emplace(key, std::move(*fact));
}

std::vector<Record> MemoryBook::append(std::vector<records::Entry>)
{
    throw records::FormError{"what a book said on another day is only read; the book itself is written"};
}

std::optional<Fact> MemoryBook::fact(const std::string& kind, const std::string& key) const
{
    const auto found = facts_.find({kind, key});
    return found == facts_.end() ? std::nullopt : std::optional{found->second};
}

std::vector<Fact> MemoryBook::facts(const std::string& kind) const
{
    std::vector<Fact> found;
    for (const auto& [key, fact] : facts_)
        if (key.kind == kind)
            found.push_back(fact);
    return found;
}

std::vector<Fact> MemoryBook::facts_about(const std::string& kind, const std::string& about) const
{
    std::vector<Fact> found;
    for (const auto& [key, fact] : facts_)
        if (key.kind == kind && std::find(fact.about.begin(), fact.about.end(), about) != fact.about.end())
            found.push_back(fact);
    return found;
}

std::optional<std::string> MemoryBook::private_value(const std::string& subject, const std::string& field) const
{
    return private_value_(subject, field);
}

std::optional<Record> MemoryBook::find(const std::string& hash) const
{
    const auto found = records_.find(hash);
    return found == records_.end() ? std::nullopt : std::optional{found->second};
}

std::vector<Record> MemoryBook::newest(const std::string& kind, std::size_t count) const
{
    std::vector<Record> found;
    for (const auto& [hash, record] : records_)
        if (kind.empty() || record.entry.kind == kind)
            found.push_back(record);
    std::sort(found.begin(), found.end(), is_newer);
    if (found.size() > count)
        found.erase(found.begin() + static_cast<std::ptrdiff_t>(count), found.end());
    return found;
}

MemoryBook book_at(const Book& book, rules::Instant last)
{
    return part_of(book, [&](const Record& each) { return each.entry.at <= last; });
}

MemoryBook book_on(const Book& book, rules::Day last)
{
    return part_of(book, [&](const Record& each) { return each.entry.day <= last; });
}

} // namespace cotter::desk
