#pragma once

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <filesystem>
#include <string>
#include <vector>

namespace cotter::bench {

using Seconds = std::chrono::duration<double>;

// How long `act` takes.
template <class Act> Seconds time_of(Act act)
{
    const auto start = std::chrono::steady_clock::now();
    act();
    return std::chrono::steady_clock::now() - start;
}

inline double median(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    return values.at(values.size() / 2);
}

// Questions decided a second on one core, after all are parsed.
void time_decisions(const std::filesystem::path& questions);

// Signing off a check, against appending and syncing as many bytes as SQLite wrote for it.
void time_signing_off(const std::filesystem::path& folder);

} // namespace cotter::bench
