#include "signing.hpp"

#include <sodium.h>

#include <stdexcept>

namespace cotter::records {

namespace {

void start_sodium()
{
    if (sodium_init() < 0)
        throw std::runtime_error{"libsodium cannot start"};
}

const unsigned char* raw(std::string_view bytes) { return reinterpret_cast<const unsigned char*>(bytes.data()); }

unsigned char* raw(std::string& bytes) { return reinterpret_cast<unsigned char*>(bytes.data()); }

std::string prefixed(std::string_view bytes) { return std::string{record_prefix} + std::string{bytes}; }

} // namespace

std::string to_hex(std::string_view bytes)
{
    std::string hex(bytes.size() * 2 + 1, '\0');
    sodium_bin2hex(hex.data(), hex.size(), raw(bytes), bytes.size());
    hex.pop_back();
    return hex;
}

std::string from_hex(std::string_view hex)
{
    std::string bytes(hex.size() / 2, '\0');
    std::size_t length = 0;
    if (sodium_hex2bin(raw(bytes), bytes.size(), hex.data(), hex.size(), nullptr, &length, nullptr) != 0 ||
        length * 2 != hex.size())
        throw std::invalid_argument{"not hexadecimal"};
    return bytes;
}

std::string sha256(std::string_view bytes)
{
    std::string digest(crypto_hash_sha256_BYTES, '\0');
    crypto_hash_sha256(raw(digest), raw(bytes), bytes.size());
    return to_hex(digest);
}

std::string record_hash(std::string_view bytes) { return sha256(prefixed(bytes)); }

DeviceKey::DeviceKey(std::string seed)
    : secret_(crypto_sign_SECRETKEYBYTES, '\0'), public_(crypto_sign_PUBLICKEYBYTES, '\0')
{
    crypto_sign_seed_keypair(raw(public_), raw(secret_), raw(std::string_view{seed}));
    sodium_memzero(seed.data(), seed.size());
}

DeviceKey DeviceKey::make()
{
    start_sodium();
    std::string seed(crypto_sign_SEEDBYTES, '\0');
    randombytes_buf(seed.data(), seed.size());
    return DeviceKey{std::move(seed)};
}

DeviceKey DeviceKey::from_seed(std::string_view seed_hex)
{
    start_sodium();
    std::string seed = from_hex(seed_hex);
    if (seed.size() != crypto_sign_SEEDBYTES)
        throw std::invalid_argument{"a device key has 32 bytes"};
    return DeviceKey{std::move(seed)};
}

std::string DeviceKey::seed_hex() const { return to_hex(std::string_view{secret_}.substr(0, crypto_sign_SEEDBYTES)); }
std::string DeviceKey::public_hex() const { return to_hex(public_); }
std::string DeviceKey::device() const { return sha256(public_); }

std::string DeviceKey::sign(std::string_view bytes) const
{
    const std::string text = prefixed(bytes);
    std::string signature(crypto_sign_BYTES, '\0');
    crypto_sign_detached(raw(signature), nullptr, raw(std::string_view{text}), text.size(),
                         raw(std::string_view{secret_}));
    return to_hex(signature);
}

bool is_signed_by(std::string_view public_hex, std::string_view bytes, std::string_view signature_hex)
try {
    const std::string key = from_hex(public_hex), signature = from_hex(signature_hex), text = prefixed(bytes);
    return to_hex(signature) == signature_hex && key.size() == crypto_sign_PUBLICKEYBYTES &&
           signature.size() == crypto_sign_BYTES &&
           crypto_sign_verify_detached(raw(std::string_view{signature}), raw(std::string_view{text}), text.size(),
                                       raw(std::string_view{key})) == 0;
} catch (const std::invalid_argument&) {
    return false;
}

std::string private_hash(std::string_view salt_hex, std::string_view value)
{
    return sha256(from_hex(salt_hex) + std::string{value});
}

std::string new_salt()
{
    start_sodium();
    std::string salt(16, '\0');
    randombytes_buf(salt.data(), salt.size());
    return to_hex(salt);
}

} // namespace cotter::records
