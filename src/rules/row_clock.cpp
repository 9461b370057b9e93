// Row clock: is the device's time believed?
// Source: firm's own rule.

#include "case.hpp"
#include "confirmed.hpp"

#include <set>

namespace cotter::rules {

bool is_confirmed(const Clock& clock, const ClockNotice& notice)
{
    std::set<Id> by_phone;
    for (const ClockConfirmation& each : notice.confirmed) {
        if (!each.by || !each.to || !clock.newest_record_at || *each.to < *clock.newest_record_at)
            continue;
        if (yes(each.supervisor))
            return true;
        if (each.how == How::phone)
            by_phone.insert(*each.by);
    }
    return by_phone.size() >= 2;
}

void clock_row(const Case& asked, Findings& out)
{
    if (!asked.question.clock)
        return;
    for (const ClockNotice& notice : asked.question.clock->notices)
        if (!is_confirmed(*asked.question.clock, notice))
            out.add(notice.kind == NoticeKind::jump ? Code::clock_jump : Code::clock_back);
}

} // namespace cotter::rules
