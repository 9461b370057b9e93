#include "papers_out.hpp"

#include "command.hpp"
#include "key_file.hpp"
#include "whole_file.hpp"

#include <fstream>

namespace cotter::cli {

namespace fs = std::filesystem;

namespace {

constexpr std::uintmax_t spare_bytes = 1 << 20; // for the disk's own books

fs::path unfinished(const fs::path& path) { return path.string() + ".new"; }

fs::path new_path(const fs::path& given, const std::string& option, std::uintmax_t bytes)
{
    fs::path path = fs::absolute(given).lexically_normal();
    if (path.filename().empty())
        path = path.parent_path(); // "folder/"
    if (fs::exists(path) || fs::is_symlink(path))
        throw BadInput{option + ": \"" + given.string() + "\" is there already; a new name is accepted"};
    if (!fs::is_directory(path.parent_path()))
        throw BadInput{option + ": \"" + path.parent_path().string() +
                       "\" is not a folder; a new name in a folder that is there is accepted"};
    std::error_code unknown;
    const auto space = fs::space(path.parent_path(), unknown);
    if (!unknown && space.available < bytes + spare_bytes)
        throw BadInput{option + ": " + path.parent_path().string() + " has room for " +
                       std::to_string(space.available >> 10) + " KiB; " + std::to_string((bytes + spare_bytes) >> 10) +
                       " KiB are needed"};
    return path;
}

// Whatever goes wrong leaves nothing half written.
class ClearsUp {
public:
    explicit ClearsUp(fs::path path) : path_{std::move(path)} { clear(); }
    ClearsUp(const ClearsUp&) = delete;
    ClearsUp& operator=(const ClearsUp&) = delete;
    ~ClearsUp() { clear(); }

private:
    void clear()
    {
        std::error_code ignored;
        fs::remove_all(path_, ignored);
    }
    fs::path path_;
};

} // namespace

void write_file(const fs::path& given, const std::string& bytes, const std::string& option)
{
    db::write_whole_file(new_path(given, option, bytes.size()), bytes);
}

void write_folder(const fs::path& given, const records::Files& files, const std::string& option)
try {
    std::uintmax_t bytes = 0;
    for (const auto& [name, text] : files)
        bytes += text.size() + 4096;
    const fs::path path = new_path(given, option, bytes);
    const ClearsUp clears_up{unfinished(path)};
    fs::create_directory(unfinished(path));
    for (const auto& [name, text] : files) {
        fs::create_directories((unfinished(path) / name).parent_path());
        db::write_whole_file(unfinished(path) / name, text);
    }
    db::sync_path(unfinished(path));
    fs::rename(unfinished(path), path);
    db::sync_path(path.parent_path());
} catch (const fs::filesystem_error& e) {
    throw BadInput{option + ": " + e.what() + "; a folder that you may write is accepted"};
}

records::Files read_folder(const fs::path& path, const std::string& option)
try {
    if (!fs::is_directory(path))
        throw BadInput{option + ": \"" + path.string() + "\" is not a folder; a bundle's folder is accepted"};
    records::Files files;
    for (const auto& each : fs::recursive_directory_iterator{path}) {
        const std::string name = each.path().lexically_relative(path).generic_string();
        if (each.is_directory() && !each.is_symlink())
            continue;
        std::string& bytes = files[name];
        if (!each.is_regular_file() || each.is_symlink())
            continue;
        std::ifstream in{each.path(), std::ios::binary};
        bytes.assign(std::istreambuf_iterator<char>{in}, {});
    }
    return files;
} catch (const fs::filesystem_error& e) {
    throw BadInput{option + ": " + e.what() + "; a folder that you may read is accepted"};
}

} // namespace cotter::cli
