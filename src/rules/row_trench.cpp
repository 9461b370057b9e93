// Row trench: where somebody goes in, is it inspected?
// Source: CDM 2015 regs 22(4) and 24 (clause numbers from memory): at the start of the shift and after any event.

#include "case.hpp"

namespace cotter::rules {

namespace {

bool is_safe(const Inspection& each) { return yes(each.by_competent) && yes(each.safe); }

// A fall of ground without a time is after everything.
bool is_since_disturbed(const Trench& trench, Instant at)
{
    for (const auto& disturbed : trench.disturbed_at)
        if (!disturbed || at < *disturbed)
            return false;
    return true;
}

bool is_inspected(const Case& asked, const Trench& trench)
{
    const Inspection* newest = nullptr;
    for (const Inspection& each : trench.inspections) {
        if (!asked.this_shift(each.at) || !is_since_disturbed(trench, *each.at))
            continue;
        if (!newest || *each.at > *newest->at || (each.at == newest->at && !is_safe(each)))
            newest = &each;
    }
    return newest && is_safe(*newest);
}

} // namespace

void trench_row(const Case& asked, Findings& out)
{
    static const Trench unknown;
    const Trench& trench = asked.question.trench ? *asked.question.trench : unknown;
    if (yes(trench.none) || no(trench.someone_enters) || is_inspected(asked, trench))
        return;
    out.add(Code::trench_unchecked, asked.question.place ? about(asked.question.place->id) : std::string{});
}

} // namespace cotter::rules
