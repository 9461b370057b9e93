// POSIX: access rights are asked, and a folder is made that only its owner may read.

#include "private_copy.hpp"

#include "store_error.hpp"

#include <stdlib.h>
#include <unistd.h>

#include <string>

namespace cotter::db {

namespace fs = std::filesystem;

PrivateCopy::PrivateCopy(const fs::path& store)
{
    std::string name = (fs::temp_directory_path() / "cotter-reading-XXXXXX").string();
    if (!::mkdtemp(name.data()))
        throw StoreError{name + ": cannot be made; a folder for temporary files that you may write is accepted"};
    folder_ = name;
    try {
        fs::copy_file(store, path());
        if (fs::exists(store.string() + "-wal"))
            fs::copy_file(store.string() + "-wal", path().string() + "-wal");
        fs::permissions(path(), fs::perms::owner_read | fs::perms::owner_write);
    } catch (const fs::filesystem_error&) {
        std::error_code ignored;
        fs::remove_all(folder_, ignored);
        throw StoreError{store.string() + ": cannot be read; a file that you may read is accepted"};
    }
}

PrivateCopy::~PrivateCopy()
{
    std::error_code ignored;
    fs::remove_all(folder_, ignored);
}

bool is_writable(const fs::path& store)
{
    return ::access(store.c_str(), W_OK) == 0 && ::access(fs::absolute(store).parent_path().c_str(), W_OK) == 0;
}

} // namespace cotter::db
