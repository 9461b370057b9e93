// Row evidence: does the paper travel with the unit?
// Source: LOLER 1998 reg. 9(4): physical evidence accompanies equipment that leaves an undertaking or comes from
// another.

#include "case.hpp"

namespace cotter::rules {

namespace {

void ask(const Item& item, const Paper& governing, Findings& out)
{
    if (!governing || is_legible_here(governing.copy))
        return;
    if (item.owner != Owner::own)
        out.add(Code::evidence_missing, item.tag);
    else if (yes(item.between_own_sites))
        out.add(Code::evidence_own_sites, item.tag);
}

} // namespace

void evidence_row(const Case& asked, Findings& out)
{
    for (std::size_t i = 0; i < asked.papers.size(); ++i)
        ask(asked.question.items[i], asked.papers[i].governing, out);
}

} // namespace cotter::rules
