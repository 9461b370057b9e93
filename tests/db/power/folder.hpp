#pragma once

#include <cstdlib>
#include <filesystem>
#include <string>

namespace cotter::tests {

// A folder in memory where there is one, gone at its end.
class Folder {
public:
    explicit Folder(const std::string& name)
    {
        namespace fs = std::filesystem;
        const fs::path in = fs::exists("/dev/shm") ? fs::path{"/dev/shm"} : fs::temp_directory_path();
        std::string made = (in / ("cotter-" + name + "-XXXXXX")).string();
        if (!mkdtemp(made.data()))
            std::exit(2);
        path_ = made;
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() { std::filesystem::remove_all(path_); }

    void clear() const
    {
        for (const auto& each : std::filesystem::directory_iterator{path_})
            std::filesystem::remove(each.path());
    }
    std::filesystem::path book() const { return path_ / "book.db"; }
    const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

} // namespace cotter::tests
