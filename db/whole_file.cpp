#include "whole_file.hpp"

#include "key_file.hpp"
#include "store_error.hpp"

#include <fstream>
#include <iterator>

namespace cotter::db {

namespace fs = std::filesystem;

namespace {

void write_and_read_back(const fs::path& path, const std::string& bytes)
{
    {
        std::ofstream out{path, std::ios::binary | std::ios::trunc};
        out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
        out.close();
        if (!out)
            throw StoreError{path.string() +
                             ": cannot be written; a folder that you may write, with room, is accepted"};
    }
    sync_path(path);
    std::ifstream in{path, std::ios::binary};
    if (std::string{std::istreambuf_iterator<char>{in}, {}} != bytes)
        throw StoreError{path.string() + ": does not read back as it was written; another disk is accepted"};
}

} // namespace

void write_whole_file(const fs::path& path, const std::string& bytes)
try {
    write_and_read_back(path.string() + ".new", bytes);
    fs::rename(path.string() + ".new", path);
    sync_path(fs::absolute(path).parent_path());
} catch (...) {
    std::error_code ignored;
    fs::remove(path.string() + ".new", ignored);
    throw;
}

} // namespace cotter::db
