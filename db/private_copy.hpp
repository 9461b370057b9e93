#pragma once

#include <filesystem>
#include <memory>

namespace cotter::db {

// A store that cannot be written (a read-only disk or folder) is read from a copy in a private folder, which goes away
// with this. Never one in use: only a file that nobody here can write is copied.
class PrivateCopy {
public:
    explicit PrivateCopy(const std::filesystem::path& store); // with its log; StoreError if it cannot be copied
    PrivateCopy(const PrivateCopy&) = delete;
    PrivateCopy& operator=(const PrivateCopy&) = delete;
    ~PrivateCopy();
    std::filesystem::path path() const { return folder_ / "book.db"; }

private:
    std::filesystem::path folder_;
};

// StoreError if another program has the store open. Asks for a lock and takes none.
void refuse_in_use(const std::filesystem::path& store);

// May this process write the store and beside it?
bool is_writable(const std::filesystem::path& store);

} // namespace cotter::db
