#include "papers.hpp"

#include <algorithm>
#include <tuple>

namespace cotter::rules {

namespace {

constexpr Months six{6}, twelve{12};

// Source: LOLER reg. 9(3)(a): accessories and lifting of people 6 months, other lifting equipment 12.
Months class_months(const Item& item)
{
    if (item.role == Role::attachment)
        return six;
    return item.item_class == ItemClass::machine ? twelve : six;
}

bool names_machine(const Question& question, const Report& report)
{
    const Item* machine = find_item(question, Role::machine);
    return machine && names(report, *machine);
}

// A hitch is 12 months only by its report: it names the machine too, or has twelve months as its basis.
Months months_for(const Question& question, const Item& item, const Report* report)
{
    if (item.role != Role::hitch)
        return class_months(item);
    if (item.item_class == ItemClass::people || !report)
        return six;
    return names_machine(question, *report) || report->basis == Basis::twelve_months ? twelve : six;
}

Paper paper_of(const Question& question, const Item& item, const Report& report)
{
    Paper paper{PaperKind::report,    &report,         report.id ? &*report.id : nullptr,
                &report.names_events, report.examined, std::nullopt,
                report.swl,           report.safe,     report.copy};
    const auto lawful = lawful_latest(question, item, report);
    if (report.latest && lawful)
        paper.latest = std::min(*report.latest, *lawful);
    return paper;
}

Paper paper_of(const Question& question, const Item& item, const Interim& interim)
{
    const Day end = add_days(*interim.examined, interim_days);
    const Day law = add_months(*interim.examined, months_for(question, item, nullptr));
    return {PaperKind::interim,    nullptr,          interim.id ? &*interim.id : nullptr,
            &interim.names_events, interim.examined, std::min(end, law),
            interim.swl,           interim.safe,     interim.copy};
}

// "Made on or before first service and at most 12 months before it, also where first service lies in the future."
bool is_usable(const Declaration& declaration, const Item& item, Day today)
{
    if (!declaration.made || *declaration.made > today)
        return false;
    if (!item.first_service)
        return true;
    return *declaration.made <= *item.first_service && *item.first_service <= add_months(*declaration.made, twelve);
}

Paper paper_of(const Question& question, const Item& item, const Declaration& declaration, Day today)
{
    const bool in_service = item.first_service && *item.first_service <= today;
    const Day from = in_service ? *item.first_service : *declaration.made;
    return {PaperKind::declaration,
            nullptr,
            declaration.id ? &*declaration.id : nullptr,
            nullptr,
            declaration.made,
            add_months(from, months_for(question, item, nullptr)),
            std::nullopt,
            std::nullopt,
            declaration.copy};
}

// Nothing counts as the lowest: unknown is the safer.
template <class T> bool lower(const Known<T>& a, const Known<T>& b)
{
    return a < b; // std::optional orders nothing first
}

int safe_rank(Flag safe) { return !safe ? 1 : *safe ? 2 : 0; }

// Of one day: not safe, safe unknown, earlier latest date, lower SWL, no copy here, then id.
bool is_safer(const Paper& a, const Paper& b)
{
    const auto copy_rank = [](const Paper& paper) { return is_legible_here(paper.copy) ? 1 : 0; };
    const auto id = [](const Paper& paper) { return paper.id ? *paper.id : Id{}; };
    if (safe_rank(a.safe) != safe_rank(b.safe))
        return safe_rank(a.safe) < safe_rank(b.safe);
    if (a.latest != b.latest)
        return lower(a.latest, b.latest);
    if (a.swl != b.swl)
        return lower(a.swl, b.swl);
    if (copy_rank(a) != copy_rank(b))
        return copy_rank(a) < copy_rank(b);
    return id(a) < id(b);
}

// One without an examination date counts as the newest.
bool takes_over(const Paper& a, const Paper& b)
{
    if (!b)
        return true;
    if (a.examined == b.examined)
        return is_safer(a, b);
    return !a.examined || (b.examined && *a.examined > *b.examined);
}

void offer(Paper& place, const Paper& paper)
{
    if (takes_over(paper, place))
        place = paper;
}

bool is_after(Known<Day> day, Day today) { return day && *day > today; }

bool is_dated_after(const Report& report, Day today)
{
    return is_after(report.examined, today) || is_after(report.report_day, today);
}

// A report that is not full and has no date takes no other's place, but is not left out where it does not say safe.
void look_at(const Paper& paper, Papers& papers)
{
    const bool full = is_full(*paper.report);
    if (full)
        offer(papers.governing, paper);
    if (full || paper.examined)
        offer(papers.newest, paper);
    else if (!yes(paper.safe))
        papers.doubtful.push_back(paper.report);
}

void look_at_reports(const Question& question, const Item& item, Day today, Papers& papers)
{
    for (const Report& report : question.reports) {
        if (!names(report, item))
            continue;
        if (is_dated_after(report, today)) {
            papers.future = true;
            continue;
        }
        papers.reports.push_back(&report);
        look_at(paper_of(question, item, report), papers);
    }
}

void look_at_interims(const Question& question, const Item& item, Day today, Papers& papers)
{
    for (const Interim& interim : item.interims)
        if (is_usable(interim, today))
            offer(papers.governing, paper_of(question, item, interim));
}

void look_at_declarations(const Question& question, const Item& item, Day today, Papers& papers)
{
    const bool wanted = !papers.governing;
    for (const Declaration& declaration : item.declarations) {
        papers.future = papers.future || is_after(declaration.made, today);
        if (wanted && is_usable(declaration, item, today))
            offer(papers.governing, paper_of(question, item, declaration, today));
    }
}

bool is_cleared(const Question& question, const Defect& defect)
{
    return std::any_of(question.clearings.begin(), question.clearings.end(), [&](const Clearing& clearing) {
        return clearing.defect && clearing.defect == defect.id && yes(clearing.by_competent);
    });
}

bool is_remedied(const Papers& papers, const Report& found_by, const Defect& defect)
{
    return std::any_of(papers.reports.begin(), papers.reports.end(),
                       [&](const Report* later) { return remedies(*later, found_by, defect); });
}

void look_at_defects(const Question& question, const Item& item, Papers& papers)
{
    for (const Report* report : papers.reports)
        for (const Defect& defect : report->defects)
            if ((!defect.unit || *defect.unit == item.tag) && !is_cleared(question, defect) &&
                !is_remedied(papers, *report, defect))
                papers.open.push_back({report, &defect});
}

} // namespace

bool is_legible_here(const Copy& copy) { return yes(copy.legible) && yes(copy.here); }

bool names(const Report& report, const Item& item) { return contains(report.units, item.tag); }

bool is_full(const Report& report) { return report.full.value_or(report.basis != Basis::exceptional); }

// Signed by the competent person, with SWL and with safe or not safe stated; else it is none.
bool is_usable(const Interim& interim, Day today)
{
    return yes(interim.signed_) && yes(interim.by_competent) && interim.swl && interim.safe && interim.examined &&
           *interim.examined <= today;
}

Known<Day> lawful_latest(const Question& question, const Item& item, const Report& report)
{
    if (!report.examined)
        return std::nullopt;
    if (report.basis != Basis::scheme)
        return add_months(*report.examined, months_for(question, item, &report));
    return item.scheme_months ? std::optional{add_months(*report.examined, *item.scheme_months)} : std::nullopt;
}

bool remedies(const Report& later, const Report& found_by, const Defect& defect)
{
    return defect.id && later.examined && found_by.examined && *later.examined > *found_by.examined &&
           contains(later.remedies, *defect.id);
}

Papers papers_of(const Question& question, const Item& item, Day today)
{
    Papers papers;
    look_at_reports(question, item, today, papers);
    look_at_interims(question, item, today, papers);
    look_at_declarations(question, item, today, papers);
    look_at_defects(question, item, papers);
    return papers;
}

} // namespace cotter::rules
