// Row unit: is each item here, in use and not stopped by anyone?
// Source: firm's own rule (anyone may call a stop; an item taken out of use stays out).

#include "case.hpp"

#include <algorithm>

namespace cotter::rules {

namespace {

bool is_quarantined(const Item& item)
{
    return std::any_of(item.stops.begin(), item.stops.end(),
                       [](const Stop& stop) { return !yes(stop.lifted_by_entitled); });
}

bool is_here(const Question& question, const Item& item)
{
    return item.at_site && question.site && question.site->id && *item.at_site == *question.site->id;
}

void ask(const Question& question, const Item& item, Findings& out)
{
    if (is_quarantined(item))
        out.add(Code::unit_quarantined, item.tag);
    if (!is_here(question, item))
        out.add(Code::unit_elsewhere, item.tag);
    if (yes(item.off_hire))
        out.add(Code::unit_off_hire, item.tag);
    if (yes(item.scrapped))
        out.add(Code::unit_scrapped, item.tag);
}

} // namespace

void unit_row(const Case& asked, Findings& out)
{
    for (const Item& item : asked.question.items)
        ask(asked.question, item, out);
}

} // namespace cotter::rules
