#include "accept.hpp"

#include "entitled.hpp"
#include "local_time.hpp"
#include "references.hpp"

namespace cotter::desk {

using records::Entry;
using records::FormError;

namespace {

// Who says it is on the spot (name only, seen), on the telephone, or the author of a paper that is copied.
void check_signature(const Book& book, const Entry& entry)
{
    if (entry.how == "pin")
        throw FormError{"how: \"pin\" is not accepted yet; \"name only\", \"seen\", \"phone\" or \"copy\" is"};
    if (entry.how != "name only" && entry.how != "seen" && entry.how != "phone" && entry.how != "copy")
        records::refuse("how", entry.how, "\"name only\", \"seen\", \"phone\" or \"copy\"");
    if (entry.by.empty())
        throw FormError{"by: who writes it down is missing; the id of a person is needed"};
    if (entry.who != entry.by && entry.how == "name only")
        throw FormError{"how: \"name only\" is not accepted for what " + entry.who +
                        " says and another writes down; \"seen\", \"phone\" or \"copy\" is"};
    if (entry.kind == "device" || entry.kind == "clock_notice") // the device's own hand
        return;
    if (!book.fact("person", entry.by) && is_staffed(book))
        throw FormError{"by: \"" + entry.by + "\" is not a person in this book; the id of one is accepted"};
}

// Source: DESIGN §5, a shift ends at most 14 h after its start (firm's own rule).
void check_shift(const records::Json& body)
{
    constexpr std::int64_t longest = 14 * 3600;
    const auto start = body.value("start", std::int64_t{0}), end = body.value("end", std::int64_t{0});
    if (end <= start || end - start > longest)
        records::refuse("end", body["end"], "a time after the start, at most 14 hours later");
    const auto ends = rules::utc_day(rules::Instant{end});
    const auto said = *rules::parse_day(body.value("last_day", ""));
    if (said < ends - date::days{1} || said > ends + date::days{1})
        records::refuse("last_day", body["last_day"], "the day on which it ends, " + rules::to_string(ends));
}

// An id that is named once: whoever would say something else of it corrects it.
void check_new(const Book& book, const Entry& entry, const char* fact)
{
    if (book.fact(fact, entry.about))
        throw FormError{"about: \"" + entry.about + "\" is recorded already; a new id is accepted, or a correction"};
}

void check_sense(const Book& book, const Entry& entry)
{
    if (entry.kind == "shift")
        check_shift(entry.body);
    if (entry.kind == "site" && !is_zone(entry.body.value("zone", "")))
        records::refuse("zone", entry.body["zone"], "an IANA zone such as Europe/London");
    if (entry.kind == "event")
        check_new(book, entry, "event");
    if (entry.kind == "lift_asked")
        check_new(book, entry, "lift");
    if (entry.kind == "correction" && !entry.body.value("void", false) && !entry.body.contains("body"))
        throw FormError{"body: what the record should have said is missing; a body, or \"void\": true, is needed"};
}

} // namespace

void check_acceptable(const Book& book, const Entry& entry)
{
    check_signature(book, entry);
    check_references(book, entry);
    check_sense(book, entry);
    check_entitled(book, entry);
}

} // namespace cotter::desk
