#include "pin.hpp"

#include "form.hpp"

#include <sodium.h>

#include <algorithm>
#include <array>
#include <new>

namespace cotter::records {

namespace {

constexpr unsigned long long passes = 2;
constexpr std::size_t memory_bytes = 64U * 1024U * 1024U;
constexpr std::string_view hash_begins = "$argon2id$v=19$m=65536,t=2,p=1$";

bool steps_by(std::string_view pin, int step)
{
    for (std::size_t i = 1; i < pin.size(); ++i)
        if (pin[i] - pin[i - 1] != step)
            return false;
    return true;
}

} // namespace

void check_pin(std::string_view pin)
{
    const bool digits = std::all_of(pin.begin(), pin.end(), [](char c) { return c >= '0' && c <= '9'; });
    if (pin.size() != pin_digits || !digits)
        throw FormError{"PIN: six digits are accepted"};
    if (steps_by(pin, 0) || steps_by(pin, 1) || steps_by(pin, -1))
        throw FormError{"PIN: six equal digits, or digits that count up or down, are not accepted; others are"};
}

std::string hash_pin(std::string_view pin)
{
    std::array<char, crypto_pwhash_STRBYTES> hash{};
    if (sodium_init() < 0 || crypto_pwhash_str_alg(hash.data(), pin.data(), pin.size(), passes, memory_bytes,
                                                   crypto_pwhash_ALG_ARGON2ID13) != 0)
        throw std::bad_alloc{};
    return hash.data();
}

bool is_pin(const std::string& hash, std::string_view pin)
{
    return sodium_init() >= 0 && is_pin_hash(hash) &&
           crypto_pwhash_str_verify(hash.c_str(), pin.data(), pin.size()) == 0;
}

bool is_pin_hash(std::string_view text)
{
    return text.starts_with(hash_begins) && text.size() < crypto_pwhash_STRBYTES;
}

} // namespace cotter::records
