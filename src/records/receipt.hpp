#pragma once

// A short proof of how long a book was and what its last record was. Whoever keeps it, on paper or elsewhere, can show
// later that nothing was cut off or written anew: the strength of a chain is the last head that somebody else saw.

#include "record.hpp"

#include <string>
#include <string_view>

namespace cotter::records {

struct Receipt {
    std::string device;
    Head head;
    rules::Instant at{0};
    std::string sig; // Ed25519 by the device, over the text before it
};

Receipt make_receipt(const DeviceKey& key, const Head& head, rules::Instant at);

// One line of letters and digits, which a QR code and a keyboard can carry:
// "COTTER-RECEIPT 1 device records head at sig".
std::string to_text(const Receipt& receipt);

// FormError if the text is not a receipt. The signature is not checked.
Receipt read_receipt(std::string_view text);

bool is_signed_by(std::string_view public_hex, const Receipt& receipt);

} // namespace cotter::records
