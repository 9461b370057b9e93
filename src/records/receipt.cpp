#include "receipt.hpp"

#include <sstream>

namespace cotter::records {

namespace {

constexpr const char* heading = "COTTER-RECEIPT";

std::string signed_text(const Receipt& receipt)
{
    return std::string{heading} + " 1 " + receipt.device + ' ' + std::to_string(receipt.head.seq) + ' ' +
           receipt.head.hash + ' ' + std::to_string(receipt.at.count());
}

bool is_hex(const std::string& text, std::size_t length)
{
    return text.size() == length && text.find_first_not_of("0123456789abcdef") == std::string::npos;
}

} // namespace

Receipt make_receipt(const DeviceKey& key, const Head& head, rules::Instant at)
{
    Receipt receipt{key.device(), head, at, ""};
    receipt.sig = key.sign(signed_text(receipt));
    return receipt;
}

std::string to_text(const Receipt& receipt) { return signed_text(receipt) + ' ' + receipt.sig; }

Receipt read_receipt(std::string_view text)
{
    std::istringstream in{std::string{text}};
    std::string word, version, more;
    Receipt receipt;
    std::int64_t at = 0;
    in >> word >> version >> receipt.device >> receipt.head.seq >> receipt.head.hash >> at >> receipt.sig;
    receipt.at = rules::Instant{at};
    const bool whole = in && !(in >> more) && word == heading && version == "1" && receipt.head.seq > 0;
    if (!whole || !is_hex(receipt.device, 64) || !is_hex(receipt.head.hash, 64) || !is_hex(receipt.sig, 128))
        throw FormError{"not a receipt; the line that begins with " + std::string{heading} + " is accepted, whole"};
    return receipt;
}

bool is_signed_by(std::string_view public_hex, const Receipt& receipt)
{
    return is_signed_by(public_hex, signed_text(receipt), receipt.sig);
}

} // namespace cotter::records
