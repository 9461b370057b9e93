// POSIX: access rights are asked, and a folder is made that only its owner may read.

#include "private_copy.hpp"

#include "store_error.hpp"

#include <fcntl.h>
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
        for (const char* ending : {"", "-wal"})
            if (const fs::path file = store.string() + ending; *ending == '\0' || fs::exists(file)) {
                fs::copy_file(file, path().string() + ending);
                fs::permissions(path().string() + ending, fs::perms::owner_read | fs::perms::owner_write);
            }
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

void refuse_in_use(const fs::path& store)
{
    const int file = ::open(store.c_str(), O_RDONLY);
    if (file < 0)
        throw StoreError{store.string() + ": cannot be read; a file that you may read is accepted"};
    struct flock asked {};
    asked.l_type = F_WRLCK;
    asked.l_whence = SEEK_SET;
    asked.l_start = 0x40000000; // SQLite's lock bytes. Source: "Database File Format", 1.4
    asked.l_len = 512;
    const bool free = ::fcntl(file, F_GETLK, &asked) == 0 && asked.l_type == F_UNLCK;
    ::close(file);
    if (!free)
        throw StoreError{store.string() + ": open in another program; close it there first"};
}

bool is_writable(const fs::path& store)
{
    return ::access(store.c_str(), W_OK) == 0 && ::access(fs::absolute(store).parent_path().c_str(), W_OK) == 0;
}

} // namespace cotter::db
