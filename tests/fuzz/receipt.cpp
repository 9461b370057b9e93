// A receipt: what is read and written again reads the same, and none fits the key but those that it signed.

#include "receipt.hpp"
#include "fuzzing.hpp"

using namespace cotter;
using namespace cotter::tests;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
try {
    static const auto key = records::DeviceKey::from_seed(std::string(64, '7'));
    const records::Receipt receipt = records::read_receipt(text_of(data, size));
    const std::string text = to_text(receipt);
    must(to_text(records::read_receipt(text)) == text, "what is written reads the same");
    must(text.find_first_of("\r\n\t") == std::string::npos, "it is one line");
    if (is_signed_by(key.public_hex(), receipt))
        must(to_text(make_receipt(key, receipt.head, receipt.at)) == text, "only the key signs");
    return 0;
} catch (const records::FormError& e) {
    must_be_a_line(e.what());
    return 0;
}
