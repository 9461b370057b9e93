#include "work_order.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <stdexcept>

namespace cotter::rules {

namespace {

constexpr std::size_t most_stretches = 16;
constexpr int never = std::numeric_limits<int>::max();

using Set = unsigned; // of stretches, a bit each
using State = std::optional<std::size_t>;

struct Choice {
    int moves = never;
    std::size_t stretch = 0;
    State state;
};

// The least moves for what is left, by what is done and which state stands.
class OrderSearch {
public:
    explicit OrderSearch(const std::vector<Stretch>& stretches) : stretches_{stretches} {}

    const Choice& best(Set done, State stands)
    {
        const auto key = std::pair{done, stands};
        if (const auto known = known_.find(key); known != known_.end())
            return known->second;
        Choice best;
        if (done == all())
            best.moves = 0;
        for (std::size_t i = 0; i < stretches_.size(); ++i)
            if (is_open(done, i))
                try_it(best, done, stands, i);
        return known_[key] = best;
    }

    Set all() const { return (Set{1} << stretches_.size()) - 1; }

private:
    bool is_open(Set done, std::size_t i) const
    {
        const auto& after = stretches_[i].after;
        return (done >> i & 1U) == 0 &&
               std::all_of(after.begin(), after.end(), [&](std::size_t before) { return (done >> before & 1U) != 0; });
    }

    void try_it(Choice& best, Set done, State stands, std::size_t i)
    {
        const Set then = done | Set{1} << i;
        if (stretches_[i].states.empty())
            return keep(best, best_of(then, stands), i, stands, 0);
        for (const std::size_t state : stretches_[i].states)
            keep(best, best_of(then, state), i, state, stands == State{state} ? 0 : 1);
    }

    int best_of(Set done, State stands) { return best(done, stands).moves; }

    static void keep(Choice& best, int rest, std::size_t i, State state, int cost)
    {
        if (rest != never && rest + cost < best.moves)
            best = {rest + cost, i, state};
    }

    const std::vector<Stretch>& stretches_;
    std::map<std::pair<Set, State>, Choice> known_;
};

void check(const std::vector<Stretch>& stretches)
{
    if (stretches.size() > most_stretches)
        throw std::invalid_argument{"more than 16 stretches; up to 16 are accepted"};
    for (const Stretch& each : stretches)
        if (std::any_of(each.after.begin(), each.after.end(), [&](std::size_t i) { return i >= stretches.size(); }))
            throw std::invalid_argument{"a stretch comes after one that is not there"};
}

} // namespace

WorkOrder order_of_work(const std::vector<Stretch>& stretches, std::optional<std::size_t> stands)
{
    check(stretches);
    OrderSearch search{stretches};
    WorkOrder order;
    order.moves = search.best(0, stands).moves;
    if (order.moves == never)
        throw std::invalid_argument{"the stretches come after each other in a circle"};
    Set done = 0;
    while (done != search.all()) {
        const Choice next = search.best(done, stands);
        const bool needs = !stretches[next.stretch].states.empty();
        order.steps.push_back({next.stretch, needs ? next.state : std::nullopt});
        done |= Set{1} << next.stretch;
        stands = next.state;
    }
    return order;
}

std::vector<MachineStand> machine_stands(int pipes, double effective_length, double across, double greatest_radius)
{
    if (effective_length <= 0 || greatest_radius < across)
        return {};
    const double half = std::sqrt(greatest_radius * greatest_radius - across * across);
    const int from_one = 1 + static_cast<int>(std::floor(2 * half / effective_length + 1e-9));
    std::vector<MachineStand> stands;
    for (int laid = 0; laid < pipes; laid += from_one) {
        const int here = std::min(from_one, pipes - laid);
        stands.push_back({(laid + here / 2.0) * effective_length, here});
    }
    return stands;
}

} // namespace cotter::rules
