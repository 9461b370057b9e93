// Row reach: is the load inside what the machine is rated for, all through the move?
// Source: ISO 10567 / EN 474-5 rated lift chart; the chart and the mounting's figures are the maker's.

#include "case.hpp"
#include "chart.hpp"
#include "physics.hpp"
#include "load.hpp"

#include <array>

namespace cotter::rules {

namespace {

bool differs(const Known<Id>& a, const Known<Id>& b) { return !a || !b || *a != *b; }

bool is_for_another_machine(const Chart& chart, const SetUp& now)
{
    return differs(chart.arm, now.arm) || differs(chart.blade, now.blade) ||
           differs(chart.counterweight, now.counterweight);
}

// The greatest radius with the heights of pick, slew and lay; the lowest rating of the three, nothing off the chart.
Known<Kilograms> rating_of_move(const Chart& chart, const Question& question)
{
    const auto radius = greatest_radius(question);
    if (!radius)
        return std::nullopt;
    Known<Kilograms> lowest;
    const Move& move = *question.move;
    for (const auto& height : {move.pick_height, move.slew_height, move.lay_height}) {
        const auto rated = height ? rated_at(chart, move.sector, {*radius, *height}) : std::nullopt;
        if (!rated)
            return std::nullopt;
        lowest = lowest ? std::min(*lowest, *rated) : *rated;
    }
    return lowest;
}

void ask_move(const Case& asked, const std::string& machine, Findings& out)
{
    const auto rated = rating_of_move(*asked.question.chart, asked.question);
    if (!rated) {
        out.add(Code::reach_off_chart, machine, figure(greatest_radius(asked.question)), {}, Unit::millimetre);
        return;
    }
    const auto load = load_on_machine(asked, false);
    if (!load)
        return; // row load says so
    const double limit = static_cast<double>(rated->count());
    if (*load > limit)
        out.add(Code::reach_over_rating, machine, *load, limit, Unit::kilogram);
    else if (is_near(*load, *rated))
        out.add(Code::reach_near_rating, machine, *load, limit, Unit::kilogram);
}

void ask_devices(const Case& asked, const SetUp& now, const std::string& machine, Findings& out)
{
    if (!needs_lifting_devices(*asked.question.chart))
        return;
    if (!asked.this_shift(now.valves_proved_at) || !asked.this_shift(now.overload_warning_proved_at))
        out.add(Code::machine_device, machine);
}

void ask_chart(const Case& asked, const SetUp& now, const std::string& machine, Findings& out)
{
    if (!asked.question.chart) {
        out.add(Code::chart_none, machine);
        return;
    }
    if (is_for_another_machine(*asked.question.chart, now))
        out.add(Code::chart_other, machine);
    ask_move(asked, machine, out);
    ask_devices(asked, now, machine, out);
}

// Load under the mounting x 9.81 x horizontal distance from its pin to the combined centre of gravity.
std::optional<double> moment_nm(const Question& question, std::optional<double> load)
{
    if (!load || !question.move || !question.move->pin_to_centre)
        return std::nullopt;
    return *load * gravity * static_cast<double>(question.move->pin_to_centre->count()) / 1000;
}

void ask_mounting(const Case& asked, const SetUp& now, const std::string& machine, Findings& out)
{
    if (now.mounting == Mounting::free)
        return;
    const auto load = load_on_machine(asked, true);
    const auto moment = moment_nm(asked.question, load);
    if (!now.mount_mass || !now.mount_moment || !moment)
        out.add(Code::mount_unrated, machine);
    else if (*load > static_cast<double>(now.mount_mass->count()))
        out.add(Code::mount_over_rating, machine, *load, figure(now.mount_mass), Unit::kilogram);
    else if (*moment > static_cast<double>(now.mount_moment->count()))
        out.add(Code::mount_over_rating, machine, *moment, figure(now.mount_moment), Unit::newton_metre);
}

} // namespace

void reach_row(const Case& asked, Findings& out)
{
    static const SetUp unknown;
    const SetUp& now = asked.question.set_up ? *asked.question.set_up : unknown;
    const std::string machine = about(find_item(asked.question, Role::machine));
    ask_chart(asked, now, machine, out);
    ask_mounting(asked, now, machine, out);
}

} // namespace cotter::rules
