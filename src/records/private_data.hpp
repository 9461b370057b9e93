#pragma once

// Names and other particulars of people stand beside the records, one row a subject and field; the record holds only
// SHA-256(salt || value). An erased row is shown as "removed" and stops nothing.

#include "kinds.hpp"
#include "record.hpp"

#include <string>
#include <vector>

namespace cotter::records {

struct PrivateRow {
    std::string subject; // kind and what it is about: "person hallam"
    std::string field;
    std::string salt; // hex
    std::string value;
    std::string hash() const { return private_hash(salt, value); }
};

std::string private_subject(const Entry& entry);

// Takes the private values out of the entry's body, leaves their hashes there, and gives the rows to keep.
std::vector<PrivateRow> set_apart(Entry& entry, const Kind& kind);

} // namespace cotter::records
