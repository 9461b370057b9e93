// An inspector's bundle from a stranger's stick: hashes.txt, a zero byte, records.jsonl. Whatever it holds is told in
// one line, and none but the folder that was signed is whole.

#include "bundle_seed.hpp"
#include "fuzzing.hpp"

using namespace cotter;
using namespace cotter::tests;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    static const records::Files good = bundle_seed(records::DeviceKey::from_seed(std::string(64, '7')));
    const std::string text = text_of(data, size);
    const auto middle = text.find('\0');
    if (middle == std::string::npos)
        return 0;
    const records::Files files{{records::list_file, text.substr(0, middle)},
                               {records::records_file, text.substr(middle + 1)}};
    const auto check = records::check_bundle(files, nullptr);
    if (check.wrong.empty())
        must(files == good, "only the device's key signs a list");
    else
        must_be_a_line(check.wrong);
    return 0;
}
