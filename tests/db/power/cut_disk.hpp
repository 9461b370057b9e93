#pragma once

// What is on the disk after a power cut: of each file what was synced, and of what was written since all, nothing, or
// torn pieces.

#include "io_log.hpp"

#include <filesystem>
#include <map>
#include <optional>
#include <random>
#include <string>
#include <vector>

namespace cotter::tests {

enum class Unsynced { kept, dropped, torn };

class CutDisk {
public:
    // One more operation happened before the cut.
    void add(const Io& io);
    std::int64_t acknowledged() const { return acknowledged_; }

    // Writes the files, by their names, into a folder. `torn` draws from `random` which 512-byte pieces got through.
    void write_to(const std::filesystem::path& folder, Unsynced unsynced, std::mt19937_64& random) const;

private:
    struct File {
        std::optional<std::string> synced; // nothing: it was not there
        std::vector<Io> since;
    };
    static std::optional<std::string> content(const File& file, Unsynced unsynced, std::mt19937_64& random);

    std::map<std::string, File> files_; // by path
    std::int64_t acknowledged_ = 0;
};

} // namespace cotter::tests
