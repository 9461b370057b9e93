// Row place: has today's supervisor confirmed the standing place this shift?
// Source: LOLER 1998 regs 6 and 8; CDM 2015 reg. 22 (ground near an excavation not overloaded).

#include "case.hpp"

namespace cotter::rules {

namespace {

bool is_all_right(const Confirmation& each)
{
    return yes(each.level) && yes(each.ground_and_edge) && yes(each.services) && yes(each.zone_closed);
}

const Confirmation* newest_by(const Case& asked, const Place& place, const Id& person)
{
    const Confirmation* newest = nullptr;
    for (const Confirmation& each : place.confirmed) {
        if (each.by != person || !asked.this_shift(each.at))
            continue;
        if (!newest || *each.at > *newest->at || (each.at == newest->at && !is_all_right(each)))
            newest = &each;
    }
    return newest;
}

} // namespace

void place_row(const Case& asked, Findings& out)
{
    const auto& place = asked.question.place;
    const Person* who =
        find_person(asked.question, needs_role(asked.question, "supervisor") ? "supervisor" : "operator");
    const Confirmation* newest = place && who ? newest_by(asked, *place, *who->id) : nullptr;
    if (!newest || !is_all_right(*newest))
        out.add(Code::place_unconfirmed, place ? about(place->id) : std::string{});
}

} // namespace cotter::rules
