#pragma once

#include <optional>
#include <string>
#include <vector>

namespace cotter::rules {

// A stretch of equal pipes, laid from its start to its end.
struct Stretch {
    std::string pipe;
    int pipes = 0;
    std::vector<std::size_t> states; // of the attachment's adjustment that serve the pipe; empty: it needs none
    std::vector<std::size_t> after;  // stretches that must be laid before it
};

struct Step {
    std::size_t stretch;
    std::optional<std::size_t> state; // that must stand; nothing: any
};

// An order of work with the fewest pin moves from the state that stands now (nothing: not known, so the first stretch
// that needs one costs a move); among equals the one that keeps nearest to the order given. At most 16 stretches; more,
// or a circle of `after`, is std::invalid_argument.
struct WorkOrder {
    std::vector<Step> steps;
    int moves = 0;
};
WorkOrder order_of_work(const std::vector<Stretch>& stretches, std::optional<std::size_t> stands);

// Where the slew axis stands along a trench so that each pipe's middle is within the radius: distances from the first
// pipe's start in mm, and how many pipes are laid from each. `across` is from the slew axis to the trench's middle.
struct MachineStand {
    double along = 0;
    int pipes = 0;
};
// Empty: not even one pipe is within reach.
std::vector<MachineStand> machine_stands(int pipes, double effective_length, double across, double greatest_radius);

} // namespace cotter::rules
