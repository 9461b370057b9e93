// Row check: has each unit's sheet been gone through this shift, and does it still hold?
// Source: common practice, no source (a check each shift); PUWER 1998 reg. 5 and INDG422 for its being needed at all.

#include "case.hpp"
#include "check_lines.hpp"
#include "events.hpp"

#include <algorithm>

namespace cotter::rules {

namespace {

bool has_sheet(const Item& item)
{
    return item.role == Role::machine || item.role == Role::hitch || item.role == Role::attachment ||
           item.role == Role::sling || item.role == Role::hook;
}

using Answers = std::vector<const Answer*>;

Answers answers_about(const Case& asked, const Item& item)
{
    Answers answers;
    for (const Answer& each : asked.question.answers)
        if (same(each.unit, item.tag))
            answers.push_back(&each);
    return answers;
}

Answers of_this_shift(const Case& asked, Answers answers)
{
    std::erase_if(answers, [&](const Answer* each) { return !each->answer || !asked.this_shift(each->at); });
    return answers;
}

// When the line was last answered.
Known<Instant> newest_answer(const Answers& answers, const SheetItem& line)
{
    Known<Instant> newest;
    for (const Answer* each : answers)
        if (line.id && same(each->item, *line.id) && (!newest || *each->at > *newest))
            newest = each->at;
    return newest;
}

bool operator_or_machine_changed(const Case& asked, const Answer& answer)
{
    const Person* on_the_levers = find_person(asked.question, "operator");
    const Item* machine = find_item(asked.question, Role::machine);
    return !on_the_levers || answer.by != on_the_levers->id || !machine || answer.machine != machine->tag;
}

bool coupled_since(const Case& asked, const Answer& answer)
{
    if (asked.question.coupled_at)
        return *answer.at < *asked.question.coupled_at;
    const bool no_hitch = !find_item(asked.question, Role::hitch) && yes(asked.question.no_hitch);
    return !no_hitch;
}

bool set_since(const Case& asked, const Answer& answer)
{
    const auto& records = asked.question.setting_records;
    return std::any_of(records.begin(), records.end(), [&](const SettingRecord& each) {
        return each.kind == SettingKind::changed && (!each.at || *each.at > *answer.at);
    });
}

bool befell_since(const Event& event, const Item& item, const Answer& answer)
{
    return contains(event.units, item.tag) && event.kind != EventKind::touch && is_event(event, item) &&
           (!event.at || *event.at > *answer.at);
}

// The attachment's sheet covers its headplate.
bool befallen_since(const Case& asked, const Item& item, const Answer& answer)
{
    const auto& events = asked.question.events;
    const Item* headplate = item.role == Role::attachment ? find_item(asked.question, Role::headplate) : nullptr;
    return std::any_of(events.begin(), events.end(), [&](const Event& event) {
        return befell_since(event, item, answer) || (headplate && befell_since(event, *headplate, answer));
    });
}

bool is_stale(const Case& asked, const Item& item, const SheetItem& line, const Answer& answer)
{
    return operator_or_machine_changed(asked, answer) ||
           (contains(line.staled_by, StaledBy::coupling) && coupled_since(asked, answer)) ||
           (contains(line.staled_by, StaledBy::setting) && set_since(asked, answer)) ||
           befallen_since(asked, item, answer);
}

// Nobody entitled, other than the one who answered, has cleared it.
bool stands(const Answer& answer, Answered kind)
{
    return answer.answer == kind &&
           std::none_of(answer.cleared.begin(), answer.cleared.end(), [&](const ClearedBy& each) {
               return yes(each.entitled) && each.by && answer.by && *each.by != *answer.by;
           });
}

// Of several answers of the newest instant any stale one counts.
bool line_is_stale(const Case& asked, const Item& item, const Answers& answers, const SheetItem& line, Instant newest)
{
    return std::any_of(answers.begin(), answers.end(), [&](const Answer* each) {
        return same(each->item, *line.id) && *each->at == newest && is_stale(asked, item, line, *each);
    });
}

void ask_sheet(const Case& asked, const Item& item, const Answers& answers, Findings& out)
{
    double answered = 0;
    bool stale = false;
    for (const SheetItem& line : item.sheet)
        if (const auto newest = newest_answer(answers, line)) {
            ++answered;
            stale = stale || line_is_stale(asked, item, answers, line, *newest);
        }
    if (item.sheet.empty() || answered < static_cast<double>(item.sheet.size()))
        out.add(Code::check_none, item.tag, answered, static_cast<double>(item.sheet.size()), Unit::none);
    if (stale)
        out.add(Code::check_stale, item.tag);
}

void ask_defects(const Item& item, const Answers& answers, Findings& out)
{
    for (const Answer* answer : answers) {
        if (stands(*answer, Answered::stop))
            out.add(Code::check_stopped, item.tag);
        if (stands(*answer, Answered::report))
            out.add(Code::check_report, item.tag);
    }
}

} // namespace

std::vector<Id> lines_to_answer(const Question& question, const Item& item)
{
    std::vector<Id> lines;
    if (!has_sheet(item))
        return lines;
    const Case asked{question, question.day};
    const Answers answers = of_this_shift(asked, answers_about(asked, item));
    for (const SheetItem& line : item.sheet) {
        const auto newest = newest_answer(answers, line);
        if (line.id && (!newest || line_is_stale(asked, item, answers, line, *newest)))
            lines.push_back(*line.id);
    }
    return lines;
}

// A defect stops whatever has it; a headplate has no sheet of its own, but may have been found defective.
void check_row(const Case& asked, Findings& out)
{
    for (const Item& item : asked.question.items) {
        const Answers answers = answers_about(asked, item);
        ask_defects(item, answers, out);
        if (has_sheet(item))
            ask_sheet(asked, item, of_this_shift(asked, answers), out);
    }
}

} // namespace cotter::rules
