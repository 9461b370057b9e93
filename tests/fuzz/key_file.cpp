// The key beside a store: a key that is read, written and read again is the same device; anything else is refused in
// one line.

#include "key_file.hpp"
#include "db/power/folder.hpp"
#include "fuzzing.hpp"
#include "store_error.hpp"

using namespace cotter;
using namespace cotter::tests;
namespace fs = std::filesystem;

namespace {

std::optional<records::DeviceKey> read(const Folder& folder, std::string_view text)
{
    const fs::path path = db::key_path(folder.book());
    write_to(path, text);
    fs::permissions(path, fs::perms::owner_read | fs::perms::owner_write);
    return db::read_key(folder.book());
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
try {
    static const Folder folder{"key"};
    const auto key = read(folder, text_of(data, size));
    if (!key)
        return 0;
    folder.clear();
    db::write_key(folder.book(), *key);
    must(db::read_key(folder.book())->device() == key->device(), "what is written reads the same");
    must(records::DeviceKey::from_seed(key->seed_hex()).public_hex() == key->public_hex(), "its seed makes it");
    return 0;
} catch (const db::StoreError& e) {
    must_be_a_line(e.what());
    return 0;
}
