#include "events.hpp"

#include <algorithm>
#include <set>

namespace cotter::rules {

namespace {

bool has_begun(const Event& event, Day today) { return !event.day || *event.day <= today; }

bool is_knock(const Event& event)
{
    return event.kind == EventKind::knock || event.kind == EventKind::slip || event.kind == EventKind::drop;
}

// Says safe to operate, is not before the event's day and names it; its day unknown: any that names it.
bool names_and_passes(const Event& event, Known<Day> examined, Flag safe, const std::vector<Id>& names_events)
{
    if (!event.id || !yes(safe) || !contains(names_events, *event.id))
        return false;
    return !event.day || (examined && *examined >= *event.day);
}

bool passes(const Assessment& each) { return yes(each.by_competent) && yes(each.fit); }

// Of one instant the safer counts. One without an instant may be the newest: it serves only where it does not pass.
bool is_assessed_fit(const Event& event)
{
    const Assessment* newest = nullptr;
    for (const Assessment& each : event.assessments) {
        if (!each.at && !passes(each))
            return false;
        if (each.at && (!newest || *each.at > *newest->at || (each.at == newest->at && !passes(each))))
            newest = &each;
    }
    return newest && passes(*newest);
}

bool is_examined(const Papers& papers, const Item& item, const Event& event, Day today)
{
    const bool by_report = std::any_of(papers.reports.begin(), papers.reports.end(),
                                       [&](const Report* report) { return clears(*report, event); });
    return by_report || std::any_of(item.interims.begin(), item.interims.end(), [&](const Interim& interim) {
               return is_usable(interim, today) &&
                      names_and_passes(event, interim.examined, interim.safe, interim.names_events);
           });
}

} // namespace

bool is_event(const Event& event, const Item& item)
{
    if (event.kind == EventKind::lay_up)
        return false;
    if (event.kind == EventKind::like_for_like)
        return !event.part || !item.model || !contains(item.model->like_for_like, *event.part);
    return true;
}

bool can_stop(const Event& event, const Item& item)
{
    const bool small_repair = event.kind == EventKind::repair && no(event.structural);
    return event.kind != EventKind::touch && !small_repair && is_event(event, item);
}

bool clears(const Report& report, const Event& event)
{
    const bool full_and_later = is_full(report) && event.day && report.examined && *report.examined > *event.day;
    return full_and_later || names_and_passes(event, report.examined, report.safe, report.names_events);
}

bool stops(const Papers& papers, const Item& item, const Event& event, Day today)
{
    if (!can_stop(event, item) || !has_begun(event, today))
        return false;
    return !is_examined(papers, item, event, today) && !(is_knock(event) && is_assessed_fit(event));
}

bool wants_looking_at(const Event& event)
{
    return event.kind == EventKind::touch && std::set<Id>(event.looked_by.begin(), event.looked_by.end()).size() < 2;
}

} // namespace cotter::rules
