#include "sense.hpp"

#include "local_time.hpp"
#include "plan_in_force.hpp"
#include "plan_work.hpp"
#include "question_form.hpp"
#include "register.hpp"
#include "unloading.hpp"

#include <array>
#include <cstdlib>

namespace cotter::desk {

using records::Entry;
using records::FormError;

namespace {

// At most 14 hours, and opened when it begins. Source: firm's own rule.
void check_shift(const Entry& entry)
{
    constexpr std::int64_t near = 3600;
    const auto start = entry.body["start"].get<std::int64_t>(), end = entry.body["end"].get<std::int64_t>();
    if (std::abs(start - entry.at.count()) > near)
        records::refuse("start", entry.body["start"], "a time within an hour of now");
    if (end <= start || end - start > longest_shift_seconds)
        records::refuse("end", entry.body["end"], "a time after the start, at most 14 hours later");
    const auto ends = rules::utc_day(rules::Instant{end});
    const auto said = *rules::parse_day(entry.body.value("last_day", ""));
    if (said < ends - date::days{1} || said > ends + date::days{1})
        records::refuse("last_day", entry.body["last_day"], "the day on which it ends, " + rules::to_string(ends));
}

void check_site(const Book& book, const Entry& entry)
{
    const std::string zone = entry.body.value("zone", "");
    if (!is_zone(zone))
        records::refuse("zone", zone, "an IANA zone such as Europe/London");
    const std::string stands = doc(book, "site", entry.about).value("zone", zone);
    if (stands != zone)
        throw FormError{"zone: a site does not move; \"" + stands + "\" is accepted"};
}

// It has happened.
void check_event(const Entry& entry)
{
    const auto day = rules::parse_day(entry.body.value("day", ""));
    if (day && *day > entry.day)
        records::refuse("day", entry.body["day"], "a day up to " + rules::to_string(entry.day));
    if (entry.body.value("at", std::int64_t{0}) > entry.at.count())
        records::refuse("at", entry.body["at"], "a time up to now");
}

void check_clock(const Book& book, const Entry& entry)
{
    const auto newest = book.state().newest_record_at;
    if (entry.body.value("to", std::int64_t{0}) < newest.count())
        records::refuse("to", entry.body["to"],
                        "a time not before the newest record, " + std::to_string(newest.count()));
}

void check_page(const Entry& entry)
{
    const std::string name = entry.body.value("sha256", "");
    if (name.size() != 64 || name.find_first_not_of("0123456789abcdef") != std::string::npos)
        records::refuse("sha256", name, "a SHA-256 in 64 hex digits, as `cotter page` gives it");
}

void check_lift(const Entry& entry)
try {
    records::read_question(entry.body["question"].dump());
} catch (const FormError& e) {
    throw FormError{std::string{"question: "} + e.what()};
}

void check_correction(const Entry& entry)
{
    if (!entry.body.value("void", false) && !entry.body.contains("body"))
        throw FormError{"body: what the record should have said is missing; a body, or \"void\": true, is needed"};
}

// People are briefed on an issue as it stands.
void check_briefing(const Book& book, const Entry& entry)
{
    const Json plan = doc(book, "plan", entry.about);
    const auto issue = plan.value("issue", std::int64_t{0});
    if (!plan.value("issued", false))
        throw FormError{"about: issue " + std::to_string(issue) +
                        " of this plan is not issued; an issued one is accepted"};
    if (entry.body.value("issue", std::int64_t{0}) != issue)
        records::refuse("issue", entry.body["issue"], "the plan's issue, " + std::to_string(issue));
}

void check_correction_of_plan(const Book& book, const Entry& entry)
{
    const auto old = book.find(entry.body.value("corrects", ""));
    if (!old || old->entry.kind != "lift_plan")
        return;
    if (old->entry.body.value("issued", false) && entry.body.value("void", false))
        throw FormError{"void: an issued plan is not withdrawn so, the issue before it would be in force again; a new "
                        "issue of it with \"issued\": false is accepted"};
    if (old->entry.body.value("issued", false) ||
        entry.body.value("body", records::Json::object()).value("issued", false))
        throw FormError{"corrects: a plan is not corrected once it is issued, nor issued by a correction; a new issue "
                        "of it is accepted"};
}

void check_clearing(const Entry& entry)
{
    if (!entry.body.contains("check") && !entry.body.contains("defect"))
        throw FormError{"check: what is cleared is missing; the hash of a check or of a defect's record, or defect, "
                        "the id of a report's defect, is needed"};
}

// What is lifted or cleared is what was said of that unit.
void check_same_unit(const Book& book, const Entry& entry, const char* field)
{
    const auto of = book.find(entry.body.value(field, ""));
    if (of && of->entry.about != entry.about)
        throw FormError{std::string{field} + ": that is about " + records::shown(of->entry.about) + ", this about " +
                        records::shown(entry.about) + "; a record about the same unit is accepted"};
}

} // namespace

void check_sense(const Book& book, const Entry& entry)
{
    if (entry.kind == "device")
        throw FormError{"kind: \"device\" is a book's first record; `cotter restore` carries on from a backup"};
    if (entry.kind == "shift")
        check_shift(entry);
    if (entry.kind == "site")
        check_site(book, entry);
    if (entry.kind == "event")
        check_event(entry);
    if (entry.kind == "clock_confirmed")
        check_clock(book, entry);
    if (entry.kind == "lift_asked")
        check_lift(entry);
    if (entry.kind == "source_page")
        check_page(entry);
    if (entry.kind == "correction") {
        check_correction(entry);
        check_correction_of_plan(book, entry);
    }
    if (entry.kind == "lift_plan")
        check_worked_out(book, entry.about, entry.body, entry.at);
    if (entry.kind == "unloading_plan")
        check_unloading(book, entry.about, entry.body, entry.at);
    if (entry.kind == "stop_lifted")
        check_same_unit(book, entry, "stop");
    if (entry.kind == "defect_cleared") {
        check_clearing(entry);
        check_same_unit(book, entry, "check");
    }
}

namespace {

// People are briefed on an issue: another plan of the same issue would count as read.
void check_new_issue(const Book& book, const Entry& entry)
{
    const auto plan = book.fact("plan", entry.about);
    if (!plan)
        return;
    const auto old = plan->doc.value("issue", std::int64_t{0}), issue = entry.body.value("issue", std::int64_t{0});
    const bool issued = plan->doc.value("issued", false);
    if (plan->doc.contains("worksheet") && !entry.body.contains("worksheet"))
        throw FormError{
            "worksheet: this plan is worked out, so its next issue is too; a worksheet, or another plan, is accepted"};
    if (issue < old || (issue == old && issued))
        throw FormError{
            "issue: " + records::shown(entry.body.value("issue", records::Json{})) + " is not accepted; issue " +
            std::to_string(old) +
            (issued ? " is issued, a greater one is accepted" : " is in the book, that or a greater one is accepted")};
}

// Whoever says "mark B" means one place.
void check_marks(const Book& book, const Entry& entry)
{
    if (!entry.body.value("issued", false))
        return;
    for (const TakenMark& each : taken_marks(book, entry.about, entry.body))
        throw FormError{"places: mark " + records::shown(each.mark) + " is one of " + each.plan +
                        " in those days; another mark is accepted"};
}

} // namespace

void check_new(const Book& book, const Entry& entry)
{
    if (entry.kind == "lift_plan")
        check_new_issue(book, entry);
    if (entry.kind == "lift_plan")
        check_marks(book, entry);
    if (entry.kind == "briefing")
        check_briefing(book, entry);
    constexpr std::array<std::pair<const char*, const char*>, 5> once{{{"event", "event"},
                                                                       {"lift_asked", "lift"},
                                                                       {"examination_report", "report"},
                                                                       {"interim_statement", "interim"},
                                                                       {"declaration", "declaration"}}};
    for (const auto& [kind, fact] : once)
        if (entry.kind == kind && book.fact(fact, entry.about))
            throw FormError{"about: " + records::shown(entry.about) +
                            " is recorded already; a new id is accepted, or a correction"};
}

} // namespace cotter::desk
