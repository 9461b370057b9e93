#pragma once

// Papers written to a disk or stick: under another name first, synced, then renamed, so that a file or folder that is
// there is whole.

#include "bundle_form.hpp"

#include <filesystem>
#include <string>

namespace cotter::cli {

// BadInput if it is there already, its folder is not, or there is no room for it.
void write_file(const std::filesystem::path& path, const std::string& bytes, const std::string& option);
void write_folder(const std::filesystem::path& path, const records::Files& files, const std::string& option);

// Every file in a folder by its name within it; what is no file stands there without bytes.
records::Files read_folder(const std::filesystem::path& path, const std::string& option);

} // namespace cotter::cli
