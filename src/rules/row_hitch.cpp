// Row hitch: does the headplate match, and was the lock seen with own eyes?
// Source: HSE safety alert on quick hitches, 17 December 2007; EN 474-1 (positive lock, from memory).

#include "case.hpp"

namespace cotter::rules {

namespace {

bool is_locked(const LockSeen& look) { return yes(look.own_eyes) && yes(look.locked); }

// The newest look this shift and since coupling, by anyone; of one instant the safer counts.
bool lock_seen(const Case& asked, const Item& hitch)
{
    const LockSeen* newest = nullptr;
    for (const LockSeen& each : hitch.lock_seen) {
        if (!asked.this_shift(each.at) || !asked.question.coupled_at || *each.at < *asked.question.coupled_at)
            continue;
        if (!newest || *each.at > *newest->at || (each.at == newest->at && !is_locked(each)))
            newest = &each;
    }
    return newest && is_locked(*newest);
}

} // namespace

void hitch_row(const Case& asked, Findings& out)
{
    const Item* hitch = find_item(asked.question, Role::hitch);
    if (!hitch) {
        if (!yes(asked.question.no_hitch))
            out.add(Code::hitch_unseen);
        return;
    }
    const Item* headplate = find_item(asked.question, Role::headplate);
    if (!headplate || !hitch->pattern || hitch->pattern != headplate->pattern)
        out.add(Code::hitch_headplate, hitch->tag);
    if (!lock_seen(asked, *hitch))
        out.add(Code::hitch_unseen, hitch->tag);
}

} // namespace cotter::rules
