#pragma once

// What the decision answers with: codes and numbers; the sentences are made in src/words.

#include "day.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace cotter::rules {

enum class Weight { stop, caution, note };

// The rows of the decision table, in its order.
enum class Row {
    exam,
    evidence,
    data,
    check,
    setting,
    pipe,
    load,
    reach,
    hitch,
    plan,
    people,
    place,
    trench,
    unit,
    thread,
    dispatch,
    clock,
    book
};

// Every reason there is, in the order of the table: row by row, stops before cautions before notes.
enum class Code {
    exam_none,
    exam_future,
    exam_out_of_date,
    exam_unsafe,
    exam_incomplete,
    exam_config,
    exam_event,
    exam_due,
    exam_particulars,
    exam_defect_dated,
    exam_long,
    event_touch,
    evidence_missing,
    evidence_own_sites,
    data_unproved,
    fact_disputed,
    check_none,
    check_stale,
    check_stopped,
    check_report,
    setting_unknown,
    setting_disputed,
    setting_none,
    setting_wrong,
    setting_unseen,
    pipe_size,
    pipe_length,
    pipe_shape,
    pipe_mass,
    pipe_material,
    pipe_mass_differs,
    attachment_unrated,
    hook_unrated,
    sling_unrated,
    headplate_unrated,
    hitch_unrated,
    load_unknown,
    attachment_over_rating,
    hook_over_rating,
    sling_over_rating,
    headplate_over_rating,
    hitch_over_rating,
    sling_angle,
    attachment_near_rating,
    hook_near_rating,
    sling_near_rating,
    headplate_near_rating,
    hitch_near_rating,
    chart_none,
    chart_other,
    reach_off_chart,
    reach_over_rating,
    mount_unrated,
    mount_over_rating,
    machine_device,
    reach_near_rating,
    hitch_headplate,
    hitch_unseen,
    plan_none,
    plan_out_of_date,
    plan_outside,
    briefing_none,
    person_none,
    person_not_authorised,
    card_expired,
    card_expired_allowed,
    card_due,
    place_unconfirmed,
    trench_unchecked,
    unit_quarantined,
    unit_elsewhere,
    unit_off_hire,
    unit_scrapped,
    thread_unknown,
    thread_tight,
    loose_parts,
    hire_due,
    order_open,
    clock_back,
    clock_jump,
    book_unchecked,
    book_damaged,
    book_forked
};

constexpr int code_count = static_cast<int>(Code::book_forked) + 1;

std::string_view name(Code code);
Row row(Code code);
Weight weight(Code code); // a code has one weight

// What a measured value and its limit are counted in.
enum class Unit { none, kilogram, millimetre, millidegree, newton_metre, day, person };
std::string_view name(Unit unit); // "" for none

// A number, a day, or not known.
using Figure = std::variant<std::monostate, double, Day>;

// One reason. `about` names the unit, pipe, plan, place, order, person, role or thing compared; "" where there is none.
struct Finding {
    Code code;
    std::string about;
    Figure measured{};
    Figure limit{};
    Unit unit = Unit::none;
};

struct Decision {
    std::vector<Finding> findings; // in the order of the table
    bool may_lift() const;         // no stop among them
};

} // namespace cotter::rules
