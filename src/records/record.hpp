#pragma once

// One signed entry of a book. The bytes that are hashed and signed are stored as they are and never written anew.

#include "form.hpp"
#include "signing.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace cotter::records {

// The version of record bodies that this program writes.
inline constexpr std::int64_t body_version = 1;

// A record before it has its place in a book.
struct Entry {
    std::string kind, about;
    std::string who;                // whose fact it is
    std::string by;                 // who wrote it down
    std::string how;                // "pin", "name only", "seen", "phone", "copy"
    std::vector<std::string> roles; // of `who` when it was written
    Json body = Json::object();
    rules::Instant at{0};
    rules::Day day{}; // at the site
    std::string boot; // id of the boot, and seconds since it
    std::int64_t boot_seconds = 0;
    std::vector<std::string> after; // hashes of all heads of the fact that it replaces
    bool with_pin = false;          // has `by` given the PIN? Asked on the way in, not part of the record
};

struct Record {
    std::string device;
    std::int64_t seq = 0;
    std::string prev; // hash of the device's previous record, "" for the first
    std::string hash;
    std::string bytes; // exactly what was hashed and signed
    std::string sig;
    Entry entry;
};

struct Head {
    std::int64_t seq = 0;
    std::string hash;
};

// Gives the entry its place after `head`, encodes, hashes and signs it.
Record sign(const Entry& entry, const DeviceKey& key, const Head& head);

// Reads stored bytes; FormError if they are not a record. Hash and signature are not checked.
Record parse_record(std::string bytes, std::string sig);

} // namespace cotter::records
