// Row exam: is each item under an examination that says it is safe?
// Source: LOLER 1998 regs 9 and 10 and Schedule 1.

#include "case.hpp"
#include "configuration.hpp"
#include "events.hpp"

#include <algorithm>
#include <array>

namespace cotter::rules {

namespace {

using Typed = Known<Particular>;

bool lacking(const Typed& state) { return state == Particular::lacking; }
bool untyped(const Typed& state) { return !state || state == Particular::not_typed; }

std::array<Typed, 6> always_due(const Particulars& p)
{
    return {p.employer, p.premises, p.last_examined, p.qualifications, p.employment, p.report_day};
}

std::array<Typed, 5> where_it_applies(const Particulars& p)
{
    return {p.manufactured, p.tests, p.installation, p.defect_parts, p.authenticator};
}

template <class States> bool any_untyped(const States& states)
{
    return std::any_of(states.begin(), states.end(), untyped);
}

// One of the seven items that a report must say before it serves.
bool an_item_is_untyped(const Report& report)
{
    return !report.identity || !report.examiner || !report.basis || !report.examined || !report.latest || !report.swl ||
           !report.safe;
}

bool is_incomplete(const Item& item, const Report& report)
{
    const auto due = always_due(report.particulars);
    if (an_item_is_untyped(report) || std::any_of(due.begin(), due.end(), lacking))
        return true;
    if (any_untyped(due) && !is_legible_here(report.copy))
        return true;
    return report.basis == Basis::scheme && !item.scheme_months;
}

bool has_particulars_to_type(const Report& report)
{
    return is_legible_here(report.copy) &&
           (any_untyped(always_due(report.particulars)) || any_untyped(where_it_applies(report.particulars)));
}

bool defect_stops(const Defect& defect, Day today)
{
    return defect.danger != Danger::could_become || !defect.by_day || *defect.by_day < today;
}

bool any_doubtful(const Papers& papers, Flag safe)
{
    return std::any_of(papers.doubtful.begin(), papers.doubtful.end(),
                       [&](const Report* each) { return each->safe == safe; });
}

bool is_unsafe(const Papers& papers, Day today)
{
    const bool says_not = (papers.newest && no(papers.newest.safe)) || any_doubtful(papers, Flag{false});
    const bool interim_says_not = papers.governing.kind == PaperKind::interim && no(papers.governing.safe);
    return says_not || interim_says_not ||
           std::any_of(papers.open.begin(), papers.open.end(),
                       [&](const OpenDefect& open) { return defect_stops(*open.defect, today); });
}

bool is_another_configuration(const Case& asked, const Item& item, const Report& report)
{
    if (report.configurations.empty())
        return false;
    const auto today = configuration_of(asked, item);
    return !today || std::none_of(report.configurations.begin(), report.configurations.end(),
                                  [&](const Configuration& each) { return each.name == today; });
}

// Is the latest date not after the shift's last day? For a dispatch that is its own day.
bool ends_in_shift(const Case& asked, Day latest)
{
    if (asked.dispatch)
        return asked.question.day && latest <= *asked.question.day;
    const auto& shift = asked.question.shift;
    return shift && shift->last_day && latest <= *shift->last_day;
}

void ask_dates(const Case& asked, const Item& item, const Paper& paper, Findings& out)
{
    if (!paper.latest)
        return;
    if (asked.today > *paper.latest) {
        out.add(Code::exam_out_of_date, item.tag, figure(asked.today), *paper.latest, Unit::day);
        return;
    }
    const Days left = days_between(asked.today, *paper.latest);
    const bool warned = left <= warning_days(asked.question);
    if (warned || ends_in_shift(asked, *paper.latest))
        out.add(Code::exam_due, item.tag, asked.today, *paper.latest, Unit::day);
}

void ask_report(const Case& asked, const Item& item, const Report& report, Findings& out)
{
    if (is_incomplete(item, report))
        out.add(Code::exam_incomplete, item.tag);
    if (is_another_configuration(asked, item, report))
        out.add(Code::exam_config, item.tag);
    if (has_particulars_to_type(report))
        out.add(Code::exam_particulars, item.tag);
    const auto lawful = lawful_latest(asked.question, item, report);
    if (report.latest && lawful && *report.latest > *lawful)
        out.add(Code::exam_long, item.tag, *report.latest, *lawful, Unit::day);
}

void ask_newest_and_defects(const Case& asked, const Item& item, const Papers& papers, Findings& out)
{
    if ((papers.newest && !papers.newest.safe) || any_doubtful(papers, std::nullopt))
        out.add(Code::exam_incomplete, item.tag);
    if (is_unsafe(papers, asked.today))
        out.add(Code::exam_unsafe, item.tag);
    for (const OpenDefect& open : papers.open)
        if (!defect_stops(*open.defect, asked.today))
            out.add(Code::exam_defect_dated, item.tag, figure(asked.today), figure(open.defect->by_day), Unit::day);
}

void ask_events(const Case& asked, const Item& item, const Papers& papers, Findings& out)
{
    for (const Event& event : asked.question.events) {
        if (!contains(event.units, item.tag))
            continue;
        if (stops(papers, item, event, asked.today))
            out.add(Code::exam_event, item.tag, figure(event.day), {}, Unit::day);
        if (wants_looking_at(event))
            out.add(Code::event_touch, item.tag, static_cast<double>(event.looked_by.size()), 2.0, Unit::person);
    }
}

void ask(const Case& asked, const Item& item, const Papers& papers, Findings& out)
{
    if (papers.future)
        out.add(Code::exam_future, item.tag);
    if (!papers.governing)
        out.add(Code::exam_none, item.tag);
    else
        ask_dates(asked, item, papers.governing, out);
    if (papers.governing.report)
        ask_report(asked, item, *papers.governing.report, out);
    ask_newest_and_defects(asked, item, papers, out);
    ask_events(asked, item, papers, out);
}

} // namespace

void exam_row(const Case& asked, Findings& out)
{
    for (std::size_t i = 0; i < asked.papers.size(); ++i)
        ask(asked, asked.question.items[i], asked.papers[i], out);
}

} // namespace cotter::rules
