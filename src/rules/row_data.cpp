// Row data: was what decides this lift compared with its source page by a second person?
// Source: firm's own rule (a transcribed figure is proved by a second reader); no published source.

#include "case.hpp"
#include "events.hpp"

#include <algorithm>

namespace cotter::rules {

namespace {

bool is_proved(const Proof& proof)
{
    if (!proof.changed || !proof.changed->at || !proof.changed->by)
        return false;
    return std::any_of(proof.compared.begin(), proof.compared.end(), [&](const Change& each) {
        return each.at && each.by && *each.at >= *proof.changed->at && *each.by != *proof.changed->by;
    });
}

// Proved and not disputed? Said of a model, chart, pipe or report.
template <class Data> void ask(const Data& data, Findings& out)
{
    if (!is_proved(data.proof))
        out.add(Code::data_unproved, about(data.id));
    if (!data.disputed.empty())
        out.add(Code::fact_disputed, about(data.id));
}

bool clears_an_event(const Case& asked, const Item& item, const Report& report)
{
    return std::any_of(asked.question.events.begin(), asked.question.events.end(), [&](const Event& event) {
        return contains(event.units, item.tag) && can_stop(event, item) && clears(report, event);
    });
}

bool clears_a_defect(const Papers& papers, const Item& item, const Report& report)
{
    return !report.remedies.empty() &&
           std::any_of(papers.reports.begin(), papers.reports.end(), [&](const Report* found_by) {
               return std::any_of(found_by->defects.begin(), found_by->defects.end(), [&](const Defect& defect) {
                   return (!defect.unit || *defect.unit == item.tag) && remedies(report, *found_by, defect);
               });
           });
}

bool is_used(const Case& asked, std::size_t i, const Report& report)
{
    const Item& item = asked.question.items[i];
    const Papers& papers = asked.papers[i];
    const bool open = std::any_of(papers.open.begin(), papers.open.end(),
                                  [&](const OpenDefect& each) { return each.report == &report; });
    return &report == papers.governing.report || &report == papers.newest.report ||
           contains(papers.doubtful, &report) || open || clears_an_event(asked, item, report) ||
           clears_a_defect(papers, item, report);
}

void ask_reports(const Case& asked, Findings& out)
{
    for (std::size_t i = 0; i < asked.papers.size(); ++i)
        for (const Report* report : asked.papers[i].reports)
            if (is_used(asked, i, *report))
                ask(*report, out);
}

void ask_items(const Case& asked, Findings& out)
{
    for (const Item& item : asked.question.items) {
        if (item.model)
            ask(*item.model, out);
        if (!item.disputed.empty())
            out.add(Code::fact_disputed, item.tag);
    }
}

template <class Fact> void ask_disputed(const Known<Fact>& fact, Findings& out)
{
    if (fact && !fact->disputed.empty())
        out.add(Code::fact_disputed, about(fact->id));
}

void ask_lift(const Case& asked, Findings& out)
{
    const Question& question = asked.question;
    if (question.pipe)
        ask(*question.pipe, out);
    if (question.chart)
        ask(*question.chart, out);
    ask_disputed(question.plan, out);
    ask_disputed(question.place, out);
    for (const auto& [role, person] : question.people)
        ask_disputed(person, out);
}

} // namespace

void data_row(const Case& asked, Findings& out)
{
    ask_items(asked, out);
    ask_reports(asked, out);
    if (!asked.dispatch)
        ask_lift(asked, out);
    else if (asked.question.order && find_item(asked.question, Role::attachment))
        for (const Pipe& pipe : asked.question.order->pipes)
            if (pipe.barrel)
                ask(pipe, out);
}

} // namespace cotter::rules
