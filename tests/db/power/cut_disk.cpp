#include "cut_disk.hpp"

#include <algorithm>
#include <fstream>

namespace cotter::tests {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t piece = 512; // what a disk writes whole

void apply(std::optional<std::string>& content, const Io& io)
{
    if (io.what == Io::What::remove) {
        content.reset();
        return;
    }
    std::string& bytes = content ? *content : content.emplace();
    if (io.what == Io::What::truncate)
        bytes.resize(static_cast<std::size_t>(io.offset));
    if (io.what != Io::What::write)
        return;
    const auto at = static_cast<std::size_t>(io.offset);
    bytes.resize(std::max(bytes.size(), at + io.bytes.size()));
    bytes.replace(at, io.bytes.size(), io.bytes);
}

// Of a write some pieces get through, of anything else all or nothing.
void apply_torn(std::optional<std::string>& content, const Io& io, std::mt19937_64& random)
{
    const auto by_chance = [&] { return (random() & 1U) != 0; };
    if (io.what != Io::What::write) {
        if (by_chance())
            apply(content, io);
        return;
    }
    for (std::size_t at = 0; at < io.bytes.size(); at += piece)
        if (by_chance())
            apply(content,
                  {Io::What::write, io.path, io.offset + static_cast<std::int64_t>(at), io.bytes.substr(at, piece)});
}

} // namespace

void CutDisk::add(const Io& io)
{
    if (io.what == Io::What::acknowledged) {
        acknowledged_ = io.offset;
        return;
    }
    if (io.what == Io::What::rename) { // the program syncs the folder after it
        files_[io.bytes] = std::move(files_[io.path]);
        files_.erase(io.path);
        return;
    }
    File& file = files_[io.path];
    if (io.what != Io::What::sync) {
        file.since.push_back(io);
        return;
    }
    for (const Io& each : file.since)
        apply(file.synced, each);
    file.since.clear();
}

std::optional<std::string> CutDisk::content(const File& file, Unsynced unsynced, std::mt19937_64& random)
{
    std::optional<std::string> content = file.synced;
    for (const Io& each : file.since) {
        if (unsynced == Unsynced::kept)
            apply(content, each);
        if (unsynced == Unsynced::torn)
            apply_torn(content, each, random);
    }
    return content;
}

void CutDisk::write_to(const fs::path& folder, Unsynced unsynced, std::mt19937_64& random) const
{
    for (const auto& [path, file] : files_)
        if (const auto bytes = content(file, unsynced, random))
            std::ofstream{folder / fs::path{path}.filename(), std::ios::binary} << *bytes;
}

} // namespace cotter::tests
