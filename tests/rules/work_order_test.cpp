#include "work_order.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>
#include <stdexcept>

using namespace cotter::rules;

namespace {

int moves_of(const std::vector<Step>& steps, std::optional<std::size_t> stands)
{
    int moves = 0;
    for (const Step& each : steps)
        if (each.state && stands != each.state) {
            ++moves;
            stands = each.state;
        }
    return moves;
}

bool keeps(const std::vector<Stretch>& stretches, const std::vector<std::size_t>& order)
{
    for (std::size_t i = 0; i < order.size(); ++i)
        for (const std::size_t before : stretches[order[i]].after)
            if (std::find(order.begin(), order.begin() + static_cast<std::ptrdiff_t>(i), before) ==
                order.begin() + static_cast<std::ptrdiff_t>(i))
                return false;
    return true;
}

// Moves of one order where each stretch may choose its state: by trying all.
int least_of(const std::vector<Stretch>& stretches, const std::vector<std::size_t>& order, std::size_t i,
             std::optional<std::size_t> stands)
{
    if (i == order.size())
        return 0;
    const auto& states = stretches[order[i]].states;
    if (states.empty())
        return least_of(stretches, order, i + 1, stands);
    int least = 1000;
    for (const std::size_t state : states)
        least = std::min(least, (stands == std::optional{state} ? 0 : 1) + least_of(stretches, order, i + 1, state));
    return least;
}

int least_by_trying(const std::vector<Stretch>& stretches, std::optional<std::size_t> stands)
{
    std::vector<std::size_t> order(stretches.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    int least = 1000;
    do {
        if (keeps(stretches, order))
            least = std::min(least, least_of(stretches, order, 0, stands));
    } while (std::next_permutation(order.begin(), order.end()));
    return least;
}

} // namespace

TEST_CASE("sizes that alternate are gathered: two holes, one move each")
{
    const std::vector<Stretch> run{{"a", 4, {0}, {}}, {"b", 2, {2}, {}}, {"a", 6, {0}, {}}, {"b", 1, {2}, {}}};
    const WorkOrder order = order_of_work(run, std::nullopt);
    CHECK(order.moves == 2);
    CHECK(order.steps.size() == 4);
    CHECK(order.steps[0].stretch == 0);
    CHECK(order.steps[1].stretch == 2);
    CHECK(order_of_work(run, 2).moves == 1);
    CHECK(order_of_work(run, 2).steps[0].stretch == 1);
}

TEST_CASE("what must come before is before, though it costs moves; a circle is refused")
{
    std::vector<Stretch> run{{"a", 1, {0}, {}}, {"b", 1, {1}, {0}}, {"a", 1, {0}, {1}}};
    CHECK(order_of_work(run, 0).moves == 2);
    run[0].after = {2};
    CHECK_THROWS_AS(order_of_work(run, 0), std::invalid_argument);
    run[0].after = {9};
    CHECK_THROWS_AS(order_of_work(run, 0), std::invalid_argument);
    CHECK_THROWS_AS(order_of_work(std::vector<Stretch>(17), 0), std::invalid_argument);
}

TEST_CASE("never more moves than any other order, by trying them all")
{
    std::mt19937 dice{5};
    for (int i = 0; i < 300; ++i) {
        std::vector<Stretch> run(1 + dice() % 6);
        for (std::size_t k = 0; k < run.size(); ++k) {
            for (std::size_t state = 0; state < 4; ++state)
                if (dice() % 3 == 0)
                    run[k].states.push_back(state);
            if (k > 0 && dice() % 3 == 0)
                run[k].after.push_back(dice() % k);
        }
        const std::optional<std::size_t> stands =
            dice() % 2 == 0 ? std::nullopt : std::optional<std::size_t>{dice() % 4};
        const WorkOrder order = order_of_work(run, stands);
        CHECK(order.moves == least_by_trying(run, stands));
        CHECK(order.moves == moves_of(order.steps, stands));
        std::vector<std::size_t> stretches;
        for (const Step& each : order.steps)
            stretches.push_back(each.stretch);
        CHECK(keeps(run, stretches));
        std::sort(stretches.begin(), stretches.end());
        std::vector<std::size_t> all(run.size());
        std::iota(all.begin(), all.end(), std::size_t{0});
        CHECK(stretches == all);
    }
}

TEST_CASE("from every stand its pipes are within the radius, and no stand could be spared")
{
    const double across = 3'600, radius = 5'800, length = 2'500;
    const auto stands = machine_stands(17, length, across, radius);
    int laid = 0;
    for (const MachineStand& each : stands) {
        for (int i = 0; i < each.pipes; ++i)
            CHECK(std::hypot((laid + i + 0.5) * length - each.along, across) <= radius + 1e-6);
        laid += each.pipes;
    }
    CHECK(laid == 17);
    const double half = std::sqrt(radius * radius - across * across);
    CHECK(stands.size() == static_cast<std::size_t>(std::ceil(17 / std::floor(1 + 2 * half / length))));
    CHECK(machine_stands(3, length, 6'000, radius).empty());
    CHECK(machine_stands(1, length, radius, radius).size() == 1);
}
