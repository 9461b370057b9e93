#pragma once

// Tables that are imported into a book without a store, with an invented site in it.

#include "fake_book.hpp"
#include "import.hpp"
#include "pins.hpp"

#include <doctest/doctest.h>

namespace cotter::tests {

using namespace cotter::desk;

inline Hand hand_of(const std::string& by)
{
    Hand hand;
    hand.by = by;
    hand.at = rules::Instant{1'795'600'000};
    hand.day = rules::utc_day(hand.at);
    return signed_by(hand);
}

// A site, its manager and an operator; whatever else a test needs.
inline FakeBook& begin(FakeBook& book)
{
    records::Record admitted;
    admitted.entry.kind = "admission";
    return book.with(admitted)
        .with("site", "carr", {{"name", "Carr (invented)"}, {"zone", "Europe/London"}})
        .with("person", "quill",
              {{"admission", {{"site", "carr"}, {"card_seen", true}, {"roles", {"manager", "appointed"}}}}})
        .with("person", "farrow", {{"admission", {{"site", "carr"}, {"card_seen", true}, {"roles", {"operator"}}}}});
}

inline Json sk_450()
{
    return {{"id", "sk-450"},           {"name", "DN 450 (invented)"},
            {"shape", "straight"},      {"bore_mm", 450},
            {"barrel_mm", 584},         {"socket_mm", 720},
            {"overall_mm", 2600},       {"stated_kg", 690},
            {"compared", Json::array()}};
}

inline Import import(const FakeBook& book, What what, const std::string& table)
{
    return prepare_import(book, hand_of("quill"), what, table, [](std::size_t, std::size_t) { return true; });
}

// Into a book with one pipe.
inline Import pipes(const std::string& table)
{
    FakeBook book;
    begin(book).with("pipe", "sk-450", sk_450());
    return import(book, What::pipes, table);
}

inline std::string problems_of(const Import& import)
{
    std::string text;
    for (const Problem& each : import.problems)
        text += to_string(each) + "\n";
    return text;
}

inline Json only_body(const Import& import)
{
    CHECK(problems_of(import) == "");
    CHECK(import.entries.size() == 1);
    return import.entries.empty() ? Json{} : import.entries.front().body;
}

inline bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

// A table of one pipe with one column more is refused, and the one line says these parts.
inline std::string not_refused(const std::string& heading, const std::string& cell,
                               const std::vector<std::string>& parts)
{
    const Import read = pipes("id,name," + heading + "\nnew,N," + cell + "\n");
    std::string wrong = read.entries.empty() && read.problems.size() == 1 ? "" : "not one problem: ";
    for (const std::string& part : parts)
        if (!has(problems_of(read), part))
            wrong += "no " + part + " in " + problems_of(read);
    return wrong;
}

} // namespace cotter::tests
