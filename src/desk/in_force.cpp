// What stood when a period began.

#include "entitled.hpp"
#include "events.hpp"
#include "lift_question.hpp"
#include "local_time.hpp"
#include "papers.hpp"
#include "unit_period.hpp"

#include <algorithm>

namespace cotter::desk {

using records::Fact;

namespace {

using Hashes = std::set<std::string>;

void add_heads(const Book& book, const char* kind, const std::string& key, Hashes& hashes)
{
    if (const auto fact = book.fact(kind, key))
        hashes.insert(fact->heads.begin(), fact->heads.end());
}

void add_records(const Book& book, const std::string& kind, const std::string& about, Hashes& hashes)
{
    for (const auto& each : book.newest(kind, 1'000'000'000))
        if (each.entry.about == about)
            hashes.insert(each.hash);
}

void add_paper(const Book& book, const rules::Id* id, Hashes& hashes)
{
    for (const char* kind : {"examination_report", "interim_statement", "declaration", "compared"})
        if (id)
            add_records(book, kind, *id, hashes);
}

rules::Instant start_of(const Book& book, rules::Day day)
{
    return local_instant(day, 0, zone_of(book, current_site(book)));
}

void add_papers(const Book& book, const std::string& unit, rules::Day from, Hashes& hashes)
{
    const rules::Question question = unit_question(book, unit, start_of(book, from), from);
    const rules::Papers papers = papers_of(question, question.items.front(), from);
    add_paper(book, papers.governing.id, hashes);
    add_paper(book, papers.newest.id, hashes);
    for (const rules::OpenDefect& each : papers.open)
        add_paper(book, each.report->id ? &*each.report->id : nullptr, hashes);
}

// The last change, and everything that was seen since.
void add_setting(const Book& book, const std::string& unit, Hashes& hashes)
{
    add_heads(book, "setting", unit, hashes);
    for (const auto& each : book.newest("setting_changed", 1'000'000'000)) // newest first
        if (each.entry.about == unit) {
            hashes.insert(each.hash);
            return;
        }
}

// Cleared by somebody entitled, and not by the one who gave the answer.
bool is_cleared(const Json& answer, const Fact& check)
{
    const Json cleared = answer.value("cleared", Json::array());
    return std::any_of(cleared.begin(), cleared.end(), [&](const Json& each) {
        return may_clear(written_as(each)) && each.value("by", "") != check.doc.value("by", "");
    });
}

bool has_open_answer(const Fact& check)
{
    const Json answers = check.doc.value("answers", Json::array());
    return std::any_of(answers.begin(), answers.end(), [&](const Json& each) {
        return each.value("answer", "") != "right" && !is_cleared(each, check);
    });
}

// By the rules that a lift is asked with.
void add_open_events(const Book& book, const std::string& unit, rules::Day from, Hashes& hashes)
{
    const rules::Question question = unit_question(book, unit, start_of(book, from), from);
    const rules::Item& item = question.items.front();
    const rules::Papers papers = papers_of(question, item, from);
    for (const rules::Event& each : question.events)
        if (each.id && (rules::stops(papers, item, each, from) || rules::wants_looking_at(each)))
            for (const char* kind : {"event", "event_assessed", "event_looked"})
                add_records(book, kind, *each.id, hashes);
}

void add_open(const Book& book, const std::string& unit, Hashes& hashes)
{
    for (const Fact& each : book.facts_about("stop", unit))
        if (!is_lifted(each.doc))
            hashes.insert(each.key.key);
    for (const Fact& each : book.facts_about("check", unit))
        if (has_open_answer(each))
            hashes.insert(each.key.key);
}

} // namespace

std::set<std::string> in_force(const Book& before, const std::string& unit, rules::Day from)
{
    Hashes hashes;
    if (!before.fact("unit", unit))
        return hashes;
    for (const char* kind : {"unit", "headplate", "coupling", "whereabouts", "set_up", "devices", "rigging"})
        add_heads(before, kind, unit, hashes);
    add_setting(before, unit, hashes);
    add_papers(before, unit, from, hashes);
    add_open(before, unit, hashes);
    add_open_events(before, unit, from, hashes);
    return hashes;
}

} // namespace cotter::desk
