// A receipt goes through text and back, and nothing else passes for one.

#include "receipt.hpp"

#include <doctest/doctest.h>

using namespace cotter;
using namespace cotter::records;

TEST_SUITE_BEGIN("receipt");

namespace {

const DeviceKey key = DeviceKey::from_seed(sha256("cab"));
const Receipt receipt = make_receipt(key, {1204, sha256("head")}, rules::Instant{1795590000});

bool is_refused(const std::string& text)
try {
    read_receipt(text);
    return false;
} catch (const FormError&) {
    return true;
}

} // namespace

TEST_CASE("a receipt is one line of plain characters and reads as it was written")
{
    const std::string text = to_text(receipt);
    CHECK(text.find('\n') == std::string::npos);
    CHECK(text.size() < 400); // a QR code of a phone's camera
    const Receipt read = read_receipt(text);
    CHECK(read.device == key.device());
    CHECK(read.head.seq == 1204);
    CHECK(read.head.hash == sha256("head"));
    CHECK(read.at == receipt.at);
    CHECK(is_signed_by(key.public_hex(), read));
}

TEST_CASE("another number, head, time or device is not what was signed")
{
    for (auto change : {+[](Receipt& it) { ++it.head.seq; }, +[](Receipt& it) { it.head.hash = sha256("other"); },
                        +[](Receipt& it) { it.at = rules::Instant{1795590001}; },
                        +[](Receipt& it) { it.device = sha256("other"); }}) {
        Receipt changed = receipt;
        change(changed);
        CHECK_FALSE(is_signed_by(key.public_hex(), changed));
    }
    CHECK_FALSE(is_signed_by(DeviceKey::from_seed(sha256("site")).public_hex(), receipt));
}

TEST_CASE("anything else is no receipt")
{
    const std::string text = to_text(receipt);
    CHECK_FALSE(is_refused("  " + text + " \r\n"));
    for (const std::string& other : {std::string{}, std::string{"COTTER-RECEIPT"}, text.substr(0, text.size() - 1),
                                     text + " more", "X" + text, std::string{"COTTER-RECEIPT 2"} + text.substr(16)}) {
        CAPTURE(other);
        CHECK(is_refused(other));
    }
}

TEST_SUITE_END();
