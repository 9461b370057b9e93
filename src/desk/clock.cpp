#include "clock.hpp"

#include "confirmed.hpp"
#include "entitled.hpp"
#include "question_form.hpp"

#include <algorithm>

namespace cotter::desk {

namespace {

// The time that was confirmed runs on with the clock.
rules::ClockNotice notice_of(const records::Fact& fact, rules::Instant now)
{
    Json doc = fact.doc;
    for (Json& each : doc["confirmed"]) {
        each["supervisor"] = is_supervisor(each);
        each["to"] = each["to"].get<std::int64_t>() + (now.count() - each["at"].get<std::int64_t>());
    }
    return records::read_clock_notice(doc);
}

} // namespace

rules::Clock clock_of(const Book& book, rules::Instant now)
{
    rules::Clock clock{{}, book.state().newest_record_at};
    if (!book.state().sample)
        for (const auto& fact : book.facts("clock"))
            clock.notices.push_back(notice_of(fact, now));
    return clock;
}

bool is_confirmed(const Book& book, const records::Fact& notice, rules::Instant now)
{
    return rules::is_confirmed({{}, book.state().newest_record_at}, notice_of(notice, now));
}

Entry confirm_clock(const Hand& hand, const Book& book, const std::string& notice)
{
    return entry(hand, "clock_confirmed", book.state().device, {{"notice", notice}, {"to", hand.at.count()}});
}

namespace {

// One that is not confirmed still says it.
bool is_said_already(const Book& book, const char* kind, rules::Instant now)
{
    const auto notices = book.facts("clock");
    return std::any_of(notices.begin(), notices.end(), [&](const records::Fact& each) {
        return each.doc.value("kind", "") == kind && !is_confirmed(book, each, now);
    });
}

} // namespace

std::vector<Entry> watch_the_clock(const Hand& hand, const Book& book, const ClockFacts& facts)
{
    const auto newest = book.newest("", 1);
    if (newest.empty() || book.state().sample)
        return {};
    const records::Entry& last = newest.front().entry;
    const bool same_boot = !facts.boot.empty() && last.boot == facts.boot;
    const std::int64_t drift = (facts.wall - last.at).count() - (facts.boot_seconds - last.boot_seconds);
    const bool back = facts.wall < std::max(last.at, facts.built) || (same_boot && drift < -clock_drift_seconds);
    if (!back && !(same_boot && drift > clock_drift_seconds))
        return {};
    const char* kind = back ? "back" : "jump";
    if (is_said_already(book, kind, hand.at))
        return {};
    return {entry(hand, "clock_notice", book.state().device, {{"kind", kind}, {"wall", facts.wall.count()}})};
}

} // namespace cotter::desk
