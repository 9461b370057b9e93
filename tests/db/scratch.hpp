#pragma once

// A folder of its own for a test, gone afterwards; and what stands in its files, byte for byte.

#include <stdlib.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <stdexcept>
#include <string>

namespace cotter::tests {

namespace fs = std::filesystem;

inline std::string bytes_of(const fs::path& path)
{
    std::ifstream in{path, std::ios::binary};
    return {std::istreambuf_iterator<char>{in}, {}};
}

inline void write_bytes(const fs::path& path, const std::string& bytes)
{
    std::ofstream out{path, std::ios::binary};
    out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    if (!out)
        throw std::runtime_error{path.string() + " cannot be written"};
}

class Scratch {
public:
    Scratch()
    {
        std::string name = (fs::temp_directory_path() / "cotter-test-XXXXXX").string();
        if (!::mkdtemp(name.data()))
            throw std::runtime_error{name + " cannot be made"};
        folder_ = name;
    }
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;
    ~Scratch()
    {
        std::error_code ignored;
        fs::remove_all(folder_, ignored);
    }

    const fs::path& folder() const { return folder_; }
    fs::path book() const { return folder_ / "book.db"; }

    // Name and bytes of every file in it.
    std::map<std::string, std::string> files() const
    {
        std::map<std::string, std::string> all;
        for (const auto& each : fs::directory_iterator{folder_})
            if (each.is_regular_file())
                all[each.path().filename().string()] = bytes_of(each.path());
        return all;
    }

private:
    fs::path folder_;
};

} // namespace cotter::tests
