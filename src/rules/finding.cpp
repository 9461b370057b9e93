#include "finding.hpp"

#include <algorithm>
#include <array>

namespace cotter::rules {

namespace {

struct CodeFacts {
    Code code;
    std::string_view name;
    Row row;
    Weight weight;
};

constexpr std::array<CodeFacts, code_count> table{{
    {Code::exam_none, "exam-none", Row::exam, Weight::stop},
    {Code::exam_future, "exam-future", Row::exam, Weight::stop},
    {Code::exam_out_of_date, "exam-out-of-date", Row::exam, Weight::stop},
    {Code::exam_unsafe, "exam-unsafe", Row::exam, Weight::stop},
    {Code::exam_incomplete, "exam-incomplete", Row::exam, Weight::stop},
    {Code::exam_config, "exam-config", Row::exam, Weight::stop},
    {Code::exam_event, "exam-event", Row::exam, Weight::stop},
    {Code::exam_due, "exam-due", Row::exam, Weight::caution},
    {Code::exam_particulars, "exam-particulars", Row::exam, Weight::caution},
    {Code::exam_defect_dated, "exam-defect-dated", Row::exam, Weight::caution},
    {Code::exam_long, "exam-long", Row::exam, Weight::caution},
    {Code::event_touch, "event-touch", Row::exam, Weight::caution},
    {Code::evidence_missing, "evidence-missing", Row::evidence, Weight::stop},
    {Code::evidence_own_sites, "evidence-own-sites", Row::evidence, Weight::note},
    {Code::data_unproved, "data-unproved", Row::data, Weight::stop},
    {Code::fact_disputed, "fact-disputed", Row::data, Weight::caution},
    {Code::check_none, "check-none", Row::check, Weight::stop},
    {Code::check_stale, "check-stale", Row::check, Weight::stop},
    {Code::check_stopped, "check-stopped", Row::check, Weight::stop},
    {Code::check_report, "check-report", Row::check, Weight::caution},
    {Code::setting_unknown, "setting-unknown", Row::setting, Weight::stop},
    {Code::setting_disputed, "setting-disputed", Row::setting, Weight::stop},
    {Code::setting_none, "setting-none", Row::setting, Weight::stop},
    {Code::setting_wrong, "setting-wrong", Row::setting, Weight::stop},
    {Code::setting_unseen, "setting-unseen", Row::setting, Weight::stop},
    {Code::pipe_size, "pipe-size", Row::pipe, Weight::stop},
    {Code::pipe_length, "pipe-length", Row::pipe, Weight::stop},
    {Code::pipe_shape, "pipe-shape", Row::pipe, Weight::stop},
    {Code::pipe_mass, "pipe-mass", Row::pipe, Weight::stop},
    {Code::pipe_material, "pipe-material", Row::pipe, Weight::stop},
    {Code::pipe_mass_differs, "pipe-mass-differs", Row::pipe, Weight::caution},
    {Code::attachment_unrated, "attachment-unrated", Row::load, Weight::stop},
    {Code::hook_unrated, "hook-unrated", Row::load, Weight::stop},
    {Code::sling_unrated, "sling-unrated", Row::load, Weight::stop},
    {Code::headplate_unrated, "headplate-unrated", Row::load, Weight::stop},
    {Code::hitch_unrated, "hitch-unrated", Row::load, Weight::stop},
    {Code::load_unknown, "load-unknown", Row::load, Weight::stop},
    {Code::attachment_over_rating, "attachment-over-rating", Row::load, Weight::stop},
    {Code::hook_over_rating, "hook-over-rating", Row::load, Weight::stop},
    {Code::sling_over_rating, "sling-over-rating", Row::load, Weight::stop},
    {Code::headplate_over_rating, "headplate-over-rating", Row::load, Weight::stop},
    {Code::hitch_over_rating, "hitch-over-rating", Row::load, Weight::stop},
    {Code::sling_angle, "sling-angle", Row::load, Weight::stop},
    {Code::attachment_near_rating, "attachment-near-rating", Row::load, Weight::caution},
    {Code::hook_near_rating, "hook-near-rating", Row::load, Weight::caution},
    {Code::sling_near_rating, "sling-near-rating", Row::load, Weight::caution},
    {Code::headplate_near_rating, "headplate-near-rating", Row::load, Weight::caution},
    {Code::hitch_near_rating, "hitch-near-rating", Row::load, Weight::caution},
    {Code::chart_none, "chart-none", Row::reach, Weight::stop},
    {Code::chart_other, "chart-other", Row::reach, Weight::stop},
    {Code::reach_off_chart, "reach-off-chart", Row::reach, Weight::stop},
    {Code::reach_over_rating, "reach-over-rating", Row::reach, Weight::stop},
    {Code::mount_unrated, "mount-unrated", Row::reach, Weight::stop},
    {Code::mount_over_rating, "mount-over-rating", Row::reach, Weight::stop},
    {Code::machine_device, "machine-device", Row::reach, Weight::stop},
    {Code::reach_near_rating, "reach-near-rating", Row::reach, Weight::caution},
    {Code::hitch_headplate, "hitch-headplate", Row::hitch, Weight::stop},
    {Code::hitch_unseen, "hitch-unseen", Row::hitch, Weight::stop},
    {Code::plan_none, "plan-none", Row::plan, Weight::stop},
    {Code::plan_out_of_date, "plan-out-of-date", Row::plan, Weight::stop},
    {Code::plan_outside, "plan-outside", Row::plan, Weight::stop},
    {Code::briefing_none, "briefing-none", Row::plan, Weight::stop},
    {Code::person_none, "person-none", Row::people, Weight::stop},
    {Code::person_not_authorised, "person-not-authorised", Row::people, Weight::stop},
    {Code::card_expired, "card-expired", Row::people, Weight::stop},
    {Code::card_expired_allowed, "card-expired-allowed", Row::people, Weight::caution},
    {Code::card_due, "card-due", Row::people, Weight::caution},
    {Code::place_unconfirmed, "place-unconfirmed", Row::place, Weight::stop},
    {Code::trench_unchecked, "trench-unchecked", Row::trench, Weight::stop},
    {Code::unit_quarantined, "unit-quarantined", Row::unit, Weight::stop},
    {Code::unit_elsewhere, "unit-elsewhere", Row::unit, Weight::stop},
    {Code::unit_off_hire, "unit-off-hire", Row::unit, Weight::stop},
    {Code::unit_scrapped, "unit-scrapped", Row::unit, Weight::stop},
    {Code::thread_unknown, "thread-unknown", Row::thread, Weight::stop},
    {Code::thread_tight, "thread-tight", Row::thread, Weight::stop},
    {Code::loose_parts, "loose-parts", Row::dispatch, Weight::stop},
    {Code::hire_due, "hire-due", Row::dispatch, Weight::caution},
    {Code::order_open, "order-open", Row::dispatch, Weight::caution},
    {Code::clock_back, "clock-back", Row::clock, Weight::stop},
    {Code::clock_jump, "clock-jump", Row::clock, Weight::stop},
    {Code::book_unchecked, "book-unchecked", Row::book, Weight::stop},
    {Code::book_damaged, "book-damaged", Row::book, Weight::stop},
    {Code::book_forked, "book-forked", Row::book, Weight::stop},
}};

constexpr bool table_stands_in_the_order_of_the_codes()
{
    for (int i = 0; i < code_count; ++i)
        if (static_cast<int>(table[static_cast<std::size_t>(i)].code) != i)
            return false;
    return true;
}
static_assert(table_stands_in_the_order_of_the_codes());

const CodeFacts& facts(Code code) { return table[static_cast<std::size_t>(code)]; }

} // namespace

std::string_view name(Code code) { return facts(code).name; }
Row row(Code code) { return facts(code).row; }
Weight weight(Code code) { return facts(code).weight; }

std::string_view name(Unit unit)
{
    switch (unit) {
    case Unit::none: return "";
    case Unit::kilogram: return "kg";
    case Unit::millimetre: return "mm";
    case Unit::millidegree: return "mdeg";
    case Unit::newton_metre: return "N m";
    case Unit::day: return "day";
    case Unit::person: return "people";
    }
    return "";
}

bool Decision::may_lift() const
{
    return std::none_of(findings.begin(), findings.end(),
                        [](const Finding& finding) { return weight(finding.code) == Weight::stop; });
}

} // namespace cotter::rules
