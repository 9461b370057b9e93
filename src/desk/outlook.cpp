#include "outlook.hpp"

#include "board.hpp"
#include "entitled.hpp"
#include "local_time.hpp"
#include "site_day.hpp"

#include <algorithm>

namespace cotter::desk {

using namespace rules;

namespace {

// Gathers what falls on a day within the span.
class Changes {
public:
    Changes(Day from, int days) : from_{from}, until_{from + date::days{days}} {}

    void add(const std::optional<Day>& day, const std::string& of, const char* what)
    {
        if (day && from_ <= *day && *day <= until_)
            found_.push_back({*day, of, what});
    }
    std::vector<Change> take()
    {
        std::stable_sort(found_.begin(), found_.end(), [](const Change& a, const Change& b) { return a.day < b.day; });
        return std::move(found_);
    }

private:
    Day from_, until_;
    std::vector<Change> found_;
};

// As the rules ask: cleared by somebody entitled who did not give the answer.
bool is_open(const Json& answer, const std::string& found_by)
{
    const Json cleared = answer.value("cleared", Json::array());
    return answer.value("answer", "") != "right" && std::none_of(cleared.begin(), cleared.end(), [&](const Json& each) {
               return may_clear(written_as(each)) && each.value("by", "") != found_by;
           });
}

std::string item_of(const Book& book, const Json& check, const std::string& item)
{
    for (const SheetLine& line : sheet_of(book, check.value("unit", "")))
        if (line.id == item)
            return line.text;
    return item;
}

// What was noted; else the item that is not right.
OpenDefect answered(const Book& book, const records::Fact& check, const Json& answer, int days_old)
{
    const std::string item = answer.value("item", ""), note = answer.value("note", "");
    return {check.doc.value("unit", ""),
            note.empty() ? item_of(book, check.doc, item) : note,
            days_old,
            check.key.key,
            item,
            "",
            check.doc.value("by", ""),
            note.empty()};
}

void add_answers(const Book& book, Day today, const std::string& zone, std::vector<OpenDefect>& open)
{
    for (const auto& check : book.open_facts("check")) {
        const Day day = local_day(Instant{check.doc.value("at", std::int64_t{0})}, zone);
        const Json answers = check.doc.value("answers", Json::array());
        for (const Json& each : answers)
            if (is_open(each, check.doc.value("by", "")))
                open.push_back(answered(book, check, each, static_cast<int>((today - day).count())));
    }
}

// Of every report, until a competent person cleared it for that unit.
void add_reported(const Book& book, Day today, std::vector<OpenDefect>& open)
{
    for (const auto& report : book.facts("report")) {
        const Day day = day_in(report.doc, "examined").value_or(today);
        const Json defects = report.doc.value("defects", Json::array()),
                   units = report.doc.value("units", Json::array());
        for (const Json& each : defects)
            for (const std::string unit : units) {
                const std::string own = each.value("unit", "");
                const Json cleared =
                    doc(book, "defect", unit + " " + each.value("id", "")).value("cleared", Json::array());
                if ((own.empty() || own == unit) && std::none_of(cleared.begin(), cleared.end(), is_competent))
                    open.push_back({unit, each.value("part", each.value("id", "")),
                                    static_cast<int>((today - day).count()), "", "", each.value("id", "")});
            }
    }
}

std::vector<std::string> units_at(const Book& book, const std::string& site)
{
    std::vector<std::string> units = book.keys("unit");
    units.erase(std::remove_if(units.begin(), units.end(),
                               [&](const std::string& each) {
                                   return doc(book, "whereabouts", each).value("at_site", "") != site;
                               }),
                units.end());
    return units;
}

} // namespace

std::vector<Change> changes_ahead(const Book& book, const std::string& site, Instant now, Day today, int days)
{
    Changes changes{today, days};
    for (const BoardRow& row : board_of(book, units_at(book, site), now, today))
        if (!row.scrapped())
            changes.add(row.latest, row.label, "last day of use");
    for (const auto& person : book.facts("person"))
        if (person.doc.value("admission", Json::object()).value("site", "") == site)
            changes.add(day_in(person.doc, "card_last_day"), shown_name(book, person.key.key), "last day of the card");
    for (const auto& plan : book.facts("plan"))
        if (plan.doc.value("site", "") == site && plan.doc.value("issued", false))
            changes.add(day_in(plan.doc, "last_day"), plan.key.key, "last day of the lift plan");
    for (const auto& order : book.facts("order"))
        if (order.doc.value("site", "") == site)
            changes.add(day_in(order.doc, "first_use_day"), order.key.key, "first day of use");
    return changes.take();
}

std::vector<std::string> checks_missing(const Book& book, const std::string& site, Instant now)
{
    std::vector<std::string> missing;
    for (const DayUnit& unit : site_day(book, site, now).units)
        if (unit.is_asked() && unit.check != CheckState::stands)
            missing.push_back(unit.row.label);
    return missing;
}

std::vector<OpenDefect> open_defects(const Book& book, Day today)
{
    std::vector<OpenDefect> open;
    add_answers(book, today, zone_of(book, current_site(book)), open);
    add_reported(book, today, open);
    std::stable_sort(open.begin(), open.end(),
                     [](const OpenDefect& a, const OpenDefect& b) { return a.days_old > b.days_old; });
    return open;
}

DayCount lifts_this_shift(const Book& book)
{
    const Json shift = open_shift(book, current_site(book));
    DayCount count{day_in(shift, "day").value_or(Day{}), 0, 0};
    if (shift.empty())
        return count;
    const auto start = shift.value("start", std::int64_t{0});
    for (const auto& lift : book.facts_since("lift", Instant{start})) {
        count.lifts += lift.doc.value("lift_done_at", std::int64_t{-1}) >= start ? 1 : 0;
        count.stops +=
            lift.doc.value("outcome", "") == "do_not_lift" && lift.doc.value("asked_at", std::int64_t{-1}) >= start ? 1
                                                                                                                    : 0;
    }
    for (const auto& stop : book.facts_since("stop", Instant{start}))
        count.stops += stop.doc.value("at", std::int64_t{-1}) >= start ? 1 : 0;
    return count;
}

std::vector<DayCount> lifts_per_day(const Book& book, Day today, int days)
{
    std::vector<DayCount> counts;
    for (int i = days - 1; i >= 0; --i)
        counts.push_back({today - date::days{i}, 0, 0});
    const auto of = [&](std::optional<Day> day) -> DayCount* {
        const auto found =
            std::find_if(counts.begin(), counts.end(), [&](const DayCount& each) { return each.day == day; });
        return found == counts.end() ? nullptr : &*found;
    };
    const std::string zone = zone_of(book, current_site(book));
    const Instant first = local_instant(today - date::days{days - 1}, 0, zone);
    for (const auto& lift : book.facts_since("lift", first)) {
        DayCount* found = of(day_in(lift.doc, "day"));
        if (!found)
            continue;
        found->lifts += lift.doc.contains("lift_done_at") ? 1 : 0;
        found->stops += lift.doc.value("outcome", "") == "do_not_lift" ? 1 : 0;
    }
    for (const auto& stop : book.facts_since("stop", first))
        if (DayCount* found = of(local_day(Instant{stop.doc.value("at", std::int64_t{0})}, zone)))
            ++found->stops;
    return counts;
}

} // namespace cotter::desk
