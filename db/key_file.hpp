#pragma once

#include "signing.hpp"

#include <filesystem>
#include <optional>

namespace cotter::db {

// The device's key stands beside the store, readable by its owner only.
std::filesystem::path key_path(const std::filesystem::path& store);

void write_key(const std::filesystem::path& store, const records::DeviceKey& key); // StoreError if it cannot
std::optional<records::DeviceKey> read_key(const std::filesystem::path& store);    // nothing: no key here

// Makes sure that the disk holds a file or the names in a folder.
void sync_path(const std::filesystem::path& path);

} // namespace cotter::db
