#pragma once

// Records of changes and looks for the tests of the setting.

#include "good_question.hpp"

#include <algorithm>
#include <utility>
#include <vector>

namespace cotter::rules {

inline SettingRecord changed(const Id& id, const Id& state, int at, std::vector<Id> after = {})
{
    SettingRecord made;
    made.id = id;
    made.kind = SettingKind::changed;
    made.state = state;
    made.at = minute(at);
    made.by = "by " + id;
    made.after = std::move(after);
    return made;
}

inline SettingRecord seen(const Id& id, const Id& state, int at, std::vector<Id> after = {})
{
    SettingRecord made = changed(id, state, at, std::move(after));
    made.kind = SettingKind::seen;
    made.by_eye = made.at_unit = made.own_pin = made.authorised = true;
    return made;
}

inline Question with_records(std::vector<SettingRecord> records)
{
    Question question = good_lift();
    question.setting_records = std::move(records);
    return question;
}

// What only row setting says.
inline std::string setting_codes(const Question& question)
{
    std::string text;
    for (const Finding& each : decide(question).findings)
        if (row(each.code) == Row::setting)
            text += std::string{name(each.code)} + "(" + each.about + ")";
    return text;
}

// Calls it with the records in every order.
template <class Call> void in_every_order(const std::vector<SettingRecord>& records, const Call& call)
{
    std::vector<std::size_t> order(records.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    do {
        std::vector<SettingRecord> turned;
        for (const std::size_t i : order)
            turned.push_back(records[i]);
        call(turned);
    } while (std::next_permutation(order.begin(), order.end()));
}

} // namespace cotter::rules
