#pragma once

#include "signing.hpp"

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace cotter::db {

// Known to whoever has the device's key, and to nobody else.
std::string seal_key(const records::DeviceKey& key);

// Over a sum of the derived tables and the last record of every device, a line each in the devices' order.
std::string head_line(const std::string& device, const std::string& hash);
std::string seal_mark(const std::string& seal_key, const std::string& sum, const std::string& heads);

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
