// Hashes and signatures, against the examples of their standards.

#include "signing.hpp"

#include <doctest/doctest.h>
#include <sodium.h>

namespace records = cotter::records;

namespace {

const unsigned char* raw(const std::string& bytes) { return reinterpret_cast<const unsigned char*>(bytes.data()); }

// libsodium itself, on raw bytes.
bool verifies(const std::string& signature_hex, const std::string& message, const std::string& public_hex)
{
    const std::string signature = records::from_hex(signature_hex), key = records::from_hex(public_hex);
    return signature.size() == crypto_sign_BYTES && key.size() == crypto_sign_PUBLICKEYBYTES &&
           crypto_sign_verify_detached(raw(signature), raw(message), message.size(), raw(key)) == 0;
}

struct Vector {
    std::string name, secret, key, message, signature;
};

// Source: RFC 8032, section 7.1, TEST 1, 2, 3 and SHA(abc); the one of 1,023 octets is left out.
const Vector vectors[] = {{"TEST 1", "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
                           "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a", "",
                           "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e06522490155"
                           "5fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b"},
                          {"TEST 2", "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
                           "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c", "72",
                           "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da"
                           "085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00"},
                          {"TEST 3", "c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7",
                           "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025", "af82",
                           "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac"
                           "18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a"},
                          {"TEST SHA(abc)", "833fe62409237b9d62ec77587520911e9a759cec1d19755b7da901b96dca3d42",
                           "ec172b93ad5e563bf4932c70e1245034c35467ef2efd4d64ebf819683467e2bf",
                           "ddaf35a193617abacc417349ae20413112e6fa4e89a97ea20a9eeee64b55d39a"
                           "2192992a274fc1a836ba3c23a3feebbd454d4423643ce80e2a9ac94fa54ca49f",
                           "dc2a4459e7369633a52b1bf277839a00201009a3efbf3ecb69bea2186c26b589"
                           "09351fc9ac90b3ecfdfbc7c66431e0303dca179c138ac17ad9bef1177331a704"}};

} // namespace

// Source: FIPS 180-4 and the worked examples published with it by NIST.
TEST_CASE("SHA-256 gives the published digests")
{
    CHECK(records::sha256("abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    CHECK(records::sha256("") == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    CHECK(records::sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq") ==
          "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    CHECK(records::sha256(std::string(1'000'000, 'a')) ==
          "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

// Source: the same function over prefix and bytes, joined by hand. The nought at the end of the prefix counts.
TEST_CASE("A record's hash is the digest of prefix and bytes")
{
    const std::string prefix{"cotter-record-1\0", 16};
    CHECK(std::string{records::record_prefix} == prefix);
    CHECK(records::record_hash("abc") == records::sha256(prefix + "abc"));
    CHECK(records::record_hash("abc") != records::sha256("cotter-record-1abc"));
}

// Source: RFC 8032, section 7.1.
TEST_CASE("A device's public key is the one that the standard derives from its seed")
{
    for (const Vector& each : vectors) {
        INFO(each.name);
        const auto key = records::DeviceKey::from_seed(each.secret);
        CHECK(key.public_hex() == each.key);
        CHECK(key.seed_hex() == each.secret);
        CHECK(key.device() == records::sha256(records::from_hex(each.key)));
    }
}

// Source: the same: the library that is used gives and takes the standard's signatures under a device's public key.
TEST_CASE("The standard's signatures hold under the device's public key and no other")
{
    for (const Vector& each : vectors) {
        INFO(each.name);
        const auto key = records::DeviceKey::from_seed(each.secret);
        const std::string message = records::from_hex(each.message);
        CHECK(verifies(each.signature, message, key.public_hex()));
        CHECK_FALSE(verifies(each.signature, message + "x", key.public_hex()));
        CHECK_FALSE(records::is_signed_by(key.public_hex(), message, each.signature)); // it lacks the prefix
    }
    CHECK_FALSE(verifies(vectors[0].signature, "", vectors[1].key));
}

// Source: libsodium's crypto_sign_verify_detached over prefix and bytes.
TEST_CASE("A device's signature covers the prefix and every byte of the record")
{
    for (const Vector& each : vectors) {
        INFO(each.name);
        const auto key = records::DeviceKey::from_seed(each.secret);
        const std::string message = records::from_hex(each.message) + "record";
        const std::string signature = key.sign(message);
        CHECK(verifies(signature, std::string{records::record_prefix} + message, each.key));
        CHECK_FALSE(verifies(signature, message, each.key));
        CHECK(records::is_signed_by(each.key, message, signature));
        CHECK_FALSE(records::is_signed_by(each.key, message + " ", signature));
    }
}

// Source: RFC 8032, section 5.1.7: S must be in range, so that no second signature is made from a first.
TEST_CASE("A signature whose second half is raised by the group order is refused")
{
    const std::string order = records::from_hex("edd3f55c1a631258d69cf7a2def9de1400000000000000000000000000000010");
    const auto key = records::DeviceKey::from_seed(vectors[1].secret);
    std::string signature = records::from_hex(key.sign("abc"));
    unsigned carry = 0;
    for (std::size_t i = 0; i < order.size(); ++i) {
        const unsigned sum =
            carry + static_cast<unsigned char>(signature[32 + i]) + static_cast<unsigned char>(order[i]);
        signature[32 + i] = static_cast<char>(sum & 255U);
        carry = sum >> 8U;
    }
    CHECK(records::is_signed_by(key.public_hex(), "abc", key.sign("abc")));
    CHECK_FALSE(records::is_signed_by(key.public_hex(), "abc", records::to_hex(signature)));
}
