// POSIX: a file is created with its permissions, and synced. The one file of db/ that needs more than standard C++.

#include "key_file.hpp"

#include "store_error.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <fstream>

namespace cotter::db {

namespace {

class File {
public:
    File(const std::filesystem::path& path, int flags, mode_t mode) : descriptor_{::open(path.c_str(), flags, mode)}
    {
        if (descriptor_ < 0)
            throw StoreError{path.string() + ": cannot be written; a folder that you may write is accepted"};
    }
    File(const File&) = delete;
    File& operator=(const File&) = delete;
    ~File() { ::close(descriptor_); }
    int descriptor() const { return descriptor_; }

private:
    int descriptor_;
};

} // namespace

std::filesystem::path key_path(const std::filesystem::path& store) { return store.string() + ".key"; }

void write_key(const std::filesystem::path& store, const records::DeviceKey& key)
{
    const auto path = key_path(store);
    const std::string text = key.seed_hex() + "\n";
    const File file{path, O_WRONLY | O_CREAT | O_EXCL, S_IRUSR | S_IWUSR};
    if (::write(file.descriptor(), text.data(), text.size()) != static_cast<ssize_t>(text.size()) ||
        ::fsync(file.descriptor()) != 0)
        throw StoreError{path.string() + ": cannot be written; is the disk full?"};
}

std::optional<records::DeviceKey> read_key(const std::filesystem::path& store)
{
    std::ifstream in{key_path(store)};
    std::string seed;
    if (!in || !std::getline(in, seed))
        return std::nullopt;
    struct stat facts {};
    if (::stat(key_path(store).c_str(), &facts) != 0 || (facts.st_mode & (S_IRWXG | S_IRWXO)) != 0)
        throw StoreError{key_path(store).string() + ": others may read it; only its owner may (chmod 600)"};
    try {
        return records::DeviceKey::from_seed(seed);
    } catch (const std::invalid_argument&) {
        throw StoreError{key_path(store).string() + ": not a device key"};
    }
}

void sync_path(const std::filesystem::path& path)
{
    const File file{path, O_RDONLY, 0};
    if (::fsync(file.descriptor()) != 0)
        throw StoreError{path.string() + ": the disk does not take it"};
}

} // namespace cotter::db
