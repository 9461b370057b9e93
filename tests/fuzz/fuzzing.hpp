#pragma once

// What every fuzzer shares: a check that ends the run, and a folder of its own.

#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <string_view>

namespace cotter::tests {

// libFuzzer keeps the input of a run that aborts.
inline void must(bool holds, std::string_view what)
{
    if (holds)
        return;
    std::fprintf(stderr, "does not hold: %.*s\n", static_cast<int>(what.size()), what.data());
    std::abort();
}

inline std::string text_of(const std::uint8_t* data, std::size_t size)
{
    return {reinterpret_cast<const char*>(data), size};
}

// A refusal says something; whoever prints it makes it one line (cli/print.cpp).
inline void must_be_a_line(const std::string& refusal) { must(!refusal.empty(), "a refusal says what is wrong"); }

inline std::string bytes_in(const std::filesystem::path& path)
{
    std::ifstream in{path, std::ios::binary};
    return {std::istreambuf_iterator<char>{in}, {}};
}

inline void write_to(const std::filesystem::path& path, std::string_view bytes)
{
    std::ofstream{path, std::ios::binary}.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
}

} // namespace cotter::tests
