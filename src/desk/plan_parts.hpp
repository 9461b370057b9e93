#pragma once

// The parts of a plan that is worked out; each adds its figures to the results, and refuses what passes its limit.

#include "plan_results.hpp"
#include "plan_sheet.hpp"
#include "plan_work.hpp"
#include "trench_path.hpp"

namespace cotter::desk {

inline constexpr const char* geometry = "plane geometry";
inline constexpr const char* firm = "firm's own rule";

std::int64_t up(double value); // whole, away from the favourable side

struct PlannedLoads {
    bool all_measured = true; // no dimension of a pipe type is missing
    double load = 0, all = 0; // kg, greatest on the machine: as the chart has it, and with the hitch
    const rules::Pipe *widest = nullptr, *narrowest = nullptr; // over all, for the move's heights
};

// A chart for a machine with a blade rates its front over the blade. Over the other end neither of its ratings is
// meant, so the lower counts. Source: firm's own rule.
rules::Sector as_charted(const rules::Chart& chart, rules::Sector over, bool blade_ahead);

// Masses, loads and how many.
PlannedLoads plan_pipes(const PlanSheet& plan, Results& out);

void plan_order_of_work(const PlanSheet& plan, Results& out);

// A standing place of the lift plan; its greatest radius, mm, is kept in `radius` if it is greater.
Json plan_place(const PlanSheet& plan, const PlannedLoads& loads, const Json& stand, double& radius, Results& out);

// Edge, slope and pressure of a standing place.
void plan_ground(const PlanSheet& plan, const PlannedLoads& loads, const Json& stand,
                 const std::vector<rules::MovePoint>& points, Results& out);

// The way between the struts, for each pipe type: at one tilt, and as a path past the pipe already laid.
void plan_trench(const PlanSheet& plan, Results& out);

// Nothing where the worksheet has no struts.
std::optional<rules::PathAsked> path_in_trench(const PlanSheet& plan, const rules::Pipe& pipe);

// mm from the slew axis; nothing where the tail swing is not known.
std::optional<std::int64_t> plan_zone(const PlanSheet& plan, double radius, Results& out);

void plan_around(const PlanSheet& plan, Results& out);

// What a lift from each place with each pipe would be answered, by the rows that a plan decides.
std::vector<PlanStop> judge_plan(const PlanSheet& plan, const Json& body);

} // namespace cotter::desk
