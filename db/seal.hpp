#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace cotter::db {

// A sum over rows in any order: each row counts as SHA-256 of key and row, added in four lanes modulo 2^64. Without the
// key nobody can make another set of rows fit it on purpose.
class Seal {
public:
    explicit Seal(std::string key) : key_{std::move(key)} {}

    void add(std::string_view row);
    void take(std::string_view row); // one that was added

    std::string text() const;           // 64 hex digits
    void read(const std::string& text); // as written by text()

private:
    using Lanes = std::array<std::uint64_t, 4>;
    Lanes lanes_of(std::string_view row) const;

    std::string key_;
    Lanes sum_{};
};

} // namespace cotter::db
