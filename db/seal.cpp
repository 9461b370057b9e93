#include "seal.hpp"

#include "signing.hpp"

#include <cstdio>
#include <stdexcept>

namespace cotter::db {

std::string seal_key(const records::DeviceKey& key) { return records::sha256(key.sign("derived tables")); }

std::string head_line(const std::string& device, const std::string& hash) { return '\n' + device + ' ' + hash; }

std::string seal_mark(const std::string& seal_key, const std::string& sum, const std::string& heads)
{
    return records::sha256(seal_key + sum + heads);
}

namespace {

constexpr std::size_t digits = 16; // of a lane

std::uint64_t lane(const std::string& hex, std::size_t i)
{
    return std::stoull(hex.substr(i * digits, digits), nullptr, 16);
}

} // namespace

Seal::Lanes Seal::lanes_of(std::string_view row) const
{
    const std::string hash = records::sha256(key_ + std::string{row});
    return {lane(hash, 0), lane(hash, 1), lane(hash, 2), lane(hash, 3)};
}

void Seal::add(std::string_view row)
{
    const Lanes lanes = lanes_of(row);
    for (std::size_t i = 0; i < lanes.size(); ++i)
        sum_[i] += lanes[i];
}

void Seal::take(std::string_view row)
{
    const Lanes lanes = lanes_of(row);
    for (std::size_t i = 0; i < lanes.size(); ++i)
        sum_[i] -= lanes[i];
}

std::string Seal::text() const
{
    std::string text;
    for (const std::uint64_t each : sum_) {
        char hex[digits + 1];
        std::snprintf(hex, sizeof hex, "%016llx", static_cast<unsigned long long>(each));
        text += hex;
    }
    return text;
}

void Seal::read(const std::string& text)
{
    if (text.size() != sum_.size() * digits || text.find_first_not_of("0123456789abcdef") != std::string::npos)
        throw std::runtime_error{"the seal of the derived tables is not one"};
    for (std::size_t i = 0; i < sum_.size(); ++i)
        sum_[i] = lane(text, i);
}

} // namespace cotter::db
