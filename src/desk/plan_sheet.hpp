#pragma once

// What a lift plan's worksheet (record lift_plan, "worksheet") and the book say, in the rules' own terms.

#include "ground.hpp"
#include "move.hpp"
#include "register.hpp"
#include "threading.hpp"
#include "work_order.hpp"
#include "zone.hpp"

#include <string>
#include <vector>

namespace cotter::desk {

struct PlannedPipe {
    std::string id;
    rules::Pipe pipe;
    int pipes = 0;
    std::vector<std::size_t> after; // stretches, from 0
};

struct PlanSheet {
    std::string machine, attachment;
    std::vector<std::string> path; // units, machine first
    rules::Question gear;          // items of the load path, what else hangs, set-up, chart; without a pipe
    std::vector<PlannedPipe> runs;
    rules::Base base;
    rules::Weights standing; // without a load
    rules::Footprint footprint;
    std::optional<double> tail_swing;
    std::string coupled_hitch;                     // on the machine, by the record; "" for none
    std::string fitted_headplate;                // on the attachment, by the record; "" for none
    std::string chart_chosen;                      // by the machine's set-up
    std::optional<std::int64_t> entry_tilt_mdeg;   // that the attachment's model asks for
    std::optional<std::int64_t> envelope_width_mm; // of the attachment, across the pipe
    std::int64_t slope_mdeg = 0;                   // that the chart allows
    std::optional<std::int64_t> travel_kg;         // the chart's rating for moving with the load on
    Json sheet;                                    // as written

    const rules::Item& item(rules::Role role) const; // machine or attachment
};

// Reads the worksheet. NotFound names what the book does not know.
PlanSheet read_plan_sheet(const Book& book, const Json& sheet, rules::Instant now);

double number(const Json& from, const char* field); // 0 where it is not said
double outside(const rules::Pipe& pipe);            // of the socket where there is one, else of the barrel; mm

// The move at one of the worksheet's stands with that pipe; the passage between the struts.
rules::MoveAsked move_at(const PlanSheet& plan, const Json& stand, const rules::Pipe& pipe);
rules::Passage passage_of(const PlanSheet& plan, const rules::Pipe& pipe);

} // namespace cotter::desk
