#pragma once

// This site, this day: what somebody who comes in at the gate asks to see.

#include "board.hpp"
#include "reason.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::desk {

enum class CheckState {
    not_asked, // it hangs on no machine here, or has no sheet of its own
    none,      // not gone through this shift, or not in full
    stale,     // gone through, and something has changed since
    stands
};

struct DayUnit {
    BoardRow row;
    std::string newest_report; // id of the governing paper, "" for none
    std::optional<rules::Day> examined;
    CheckState check = CheckState::not_asked;
    std::string checked_by; // of the newest check of this day, "" for none
    std::optional<rules::Instant> checked_at;
    bool is_asked() const { return check != CheckState::not_asked; }
    bool is_whole() const { return check == CheckState::stale || check == CheckState::stands; }
};

struct DayPlan {
    Json doc;
    bool in_force = false;
    std::vector<Reason> changes; // since it was issued: outside of it now
};

struct DayPerson {
    std::string role, person;
    bool briefed = false; // on the issue of every plan that is shown
};

struct DayTrench {
    std::string place;
    bool needed = false; // there is a trench, by the plan; what is not known is needed
    std::string inspected_by;
    std::optional<rules::Instant> inspected_at; // newest; nothing: never
    bool safe = false;
    bool holds = false; // this shift, by a competent person, safe, and nothing has fallen since
};

struct DayStop {
    std::string unit, why, by;
    rules::Instant at{0};
};

struct SiteDay {
    std::string site;
    rules::Instant at{0};
    rules::Day day{};
    std::vector<DayUnit> units;    // at the site and not scrapped, or hanging on a machine that is
    std::vector<DayPlan> plans;    // in force there, the newest first; else the newest alone
    std::vector<DayPerson> people; // as named for the day
    std::vector<DayTrench> trenches;
    std::vector<DayStop> stops; // open, of the units here or nobody knows where
};

SiteDay site_day(const Book& book, const std::string& site, rules::Instant at);

Json to_json(const SiteDay& day, const Book& book);

} // namespace cotter::desk
