#pragma once

// Hashes and signatures over stored bytes, as lower-case hex. Source: FIPS 180-4 (SHA-256), RFC 8032 (Ed25519).

#include <string>
#include <string_view>

namespace cotter::records {

// SHA-256 of any bytes, without a prefix.
std::string sha256(std::string_view bytes);

// A record's hash covers this prefix and its stored bytes.
inline constexpr std::string_view record_prefix{"cotter-record-1\0", 16};
std::string record_hash(std::string_view bytes);

std::string to_hex(std::string_view bytes);
std::string from_hex(std::string_view hex); // throws std::invalid_argument if it is not hex

// A device's own key. Whoever has it can write as that device.
class DeviceKey {
public:
    static DeviceKey make();
    static DeviceKey from_seed(std::string_view seed_hex); // 32 bytes; throws std::invalid_argument

    std::string seed_hex() const;
    std::string public_hex() const;
    std::string device() const;                     // SHA-256 of the public key: the device's name in every record
    std::string sign(std::string_view bytes) const; // over prefix and bytes, hex

private:
    explicit DeviceKey(std::string seed);
    std::string secret_, public_;
};

bool is_signed_by(std::string_view public_hex, std::string_view bytes, std::string_view signature_hex);

// A salted hash for a private value: SHA-256(salt || value), salt as bytes.
std::string private_hash(std::string_view salt_hex, std::string_view value);
std::string new_salt(); // 16 random bytes, hex

} // namespace cotter::records
