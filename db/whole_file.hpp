#pragma once

#include <filesystem>
#include <string>

namespace cotter::db {

// A file that is there is whole: written as NAME.new, synced, read back, then renamed. StoreError if it cannot; then
// nothing of it is left.
void write_whole_file(const std::filesystem::path& path, const std::string& bytes);

} // namespace cotter::db
