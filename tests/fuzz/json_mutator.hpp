#pragma once

#include <cstddef>
#include <cstdint>

namespace cotter::tests {

// Changes a value of a JSON text, a line each, and keeps it JSON; every fourth time, or if it is none, its bytes. For
// LLVMFuzzerCustomMutator.
std::size_t mutate_json(std::uint8_t* data, std::size_t size, std::size_t most, unsigned seed);

} // namespace cotter::tests
