// Row setting: does the adjustment stand as this barrel wants it, and have two people seen it?
// Source: maker's ranges (model data); the second look is common practice, no source.

#include "case.hpp"
#include "setting.hpp"
#include "standing.hpp"

#include <algorithm>

namespace cotter::rules {

namespace {

bool is_range_known(const State& state) { return state.least && state.greatest; }

// A look that does not come before the last change: neither by its time, nor known to the change.
bool is_since_change(const Standing& standing, const SettingRecord& look)
{
    return look.at && standing.changed_at && *look.at >= *standing.changed_at && look.id &&
           !contains(standing.known_to_changes, *look.id);
}

// By eye, this shift; of what stands, since the last change. While records differ any look serves.
bool seen_by_eye_this_shift(const Case& asked, const Standing& standing)
{
    const auto& records = asked.question.setting_records;
    return std::any_of(records.begin(), records.end(), [&](const SettingRecord& each) {
        const bool tells = standing.disputed || (each.state == standing.state && is_since_change(standing, each));
        return each.kind == SettingKind::seen && each.state && yes(each.by_eye) && asked.this_shift(each.at) && tells;
    });
}

// A second person, authorised for the model, at the unit, with own PIN, since the last change.
bool is_second_look(const Standing& standing, const SettingRecord& each)
{
    return each.kind == SettingKind::seen && each.state == standing.state && is_since_change(standing, each) &&
           each.by && !contains(standing.changers, *each.by) && yes(each.authorised) && yes(each.at_unit) &&
           yes(each.own_pin);
}

bool is_unseen(const Case& asked, const Standing& standing)
{
    const auto& records = asked.question.setting_records;
    return standing.changer_unknown || std::none_of(records.begin(), records.end(), [&](const SettingRecord& each) {
               return is_second_look(standing, each);
           });
}

// The barrels that are known: of the pipe, or for a dispatch of each size ordered.
std::vector<Millimetres> barrels(const Question& question)
{
    std::vector<Millimetres> known;
    if (question.purpose == Purpose::lift) {
        if (question.pipe && question.pipe->barrel)
            known.push_back(*question.pipe->barrel);
    } else if (question.order) {
        for (const Pipe& pipe : question.order->pipes)
            if (pipe.barrel)
                known.push_back(*pipe.barrel);
    }
    return known;
}

Figure nearest_end(const State& state, Millimetres barrel)
{
    return barrel < *state.least ? figure(state.least) : figure(state.greatest);
}

bool add_if_none_serves(const Item& item, const std::vector<Millimetres>& barrels, Findings& out)
{
    for (const Millimetres barrel : barrels)
        if (std::none_of(item.model->states.begin(), item.model->states.end(),
                         [&](const State& state) { return serves(state, barrel); })) {
            out.add(Code::setting_none, item.tag, static_cast<double>(barrel.count()), {}, Unit::millimetre);
            return true;
        }
    return false;
}

bool add_if_wrong(const Item& item, const State& state, const std::vector<Millimetres>& barrels, Findings& out)
{
    if (barrels.empty() ||
        std::any_of(barrels.begin(), barrels.end(), [&](Millimetres barrel) { return serves(state, barrel); }))
        return false;
    out.add(Code::setting_wrong, item.tag, static_cast<double>(barrels[0].count()), nearest_end(state, barrels[0]),
            Unit::millimetre);
    return true;
}

// In this order; the first that holds silences the rest.
void ask_adjusted(const Case& asked, const Item& item, Findings& out)
{
    const Standing standing = standing_of(asked.question.setting_records);
    const State* state = state_named(*item.model, standing.state);
    const auto known = barrels(asked.question);
    if (!standing.ever_changed || (!standing.disputed && !state) || !seen_by_eye_this_shift(asked, standing))
        out.add(Code::setting_unknown, item.tag);
    else if (standing.disputed)
        out.add(Code::setting_disputed, item.tag);
    else if (!add_if_none_serves(item, known, out) && !add_if_wrong(item, *state, known, out) &&
             is_unseen(asked, standing))
        out.add(Code::setting_unseen, item.tag);
}

} // namespace

bool was_ever_set(const Question& question)
{
    return std::any_of(question.setting_records.begin(), question.setting_records.end(),
                       [](const SettingRecord& each) { return each.kind == SettingKind::changed; });
}

bool serves(const State& state, Millimetres barrel)
{
    return is_range_known(state) && *state.least <= barrel && barrel <= *state.greatest;
}

const State* state_named(const Model& model, const Known<Id>& name)
{
    for (const State& state : model.states)
        if (name && state.name == name)
            return &state;
    return nullptr;
}

void setting_row(const Case& asked, Findings& out)
{
    const Item* attachment = find_item(asked.question, Role::attachment);
    if (!attachment || (attachment->model && no(attachment->model->adjusts)))
        return;
    if (asked.dispatch && barrels(asked.question).empty())
        return; // a dispatch asks for each size that is known
    if (!attachment->model || !attachment->model->adjusts)
        out.add(Code::setting_unknown, attachment->tag);
    else
        ask_adjusted(asked, *attachment, out);
}

} // namespace cotter::rules
