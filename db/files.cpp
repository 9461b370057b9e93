#include "files.hpp"

#include "signing.hpp"
#include "telling.hpp"
#include "whole_file.hpp"

#include <fstream>
#include <iterator>

namespace cotter::db {

namespace fs = std::filesystem;

namespace {

// Source: ISO/IEC 10918-1, B.1 (SOI marker); ISO/IEC 15948, 5.2 (PNG signature).
bool is_picture(const std::string& bytes)
{
    return bytes.starts_with("\xFF\xD8\xFF") || bytes.starts_with("\x89PNG\r\n\x1A\n");
}

bool is_name(const std::string& name)
{
    return name.size() == 64 && name.find_first_not_of("0123456789abcdef") == std::string::npos;
}

} // namespace

std::optional<std::string> Files::bytes_of(const fs::path& path)
{
    std::error_code failed;
    if (!fs::is_regular_file(path, failed) || fs::file_size(path, failed) > Files::largest || failed)
        return std::nullopt;
    std::ifstream in{path, std::ios::binary};
    std::string bytes{std::istreambuf_iterator<char>{in}, {}};
    return in.bad() ? std::nullopt : std::optional{std::move(bytes)};
}

void Files::write(const std::string& name, const std::string& bytes) const
{
    std::error_code failed; // then the file cannot be written, and says so
    fs::create_directories(folder_, failed);
    write_whole_file(folder_ / name, bytes);
}

std::string Files::keep(const fs::path& picture) const
{
    const auto bytes = bytes_of(picture);
    if (!bytes || !is_picture(*bytes))
        throw StoreError{picture.string() + ": not a picture; a JPEG or PNG file of up to 40 MB is accepted"};
    return keep_bytes(*bytes);
}

std::string Files::keep_bytes(const std::string& picture) const
{
    if (!is_picture(picture) || picture.size() > largest)
        throw StoreError{"This is not a picture; a JPEG or PNG file of up to 40 MB is accepted"};
    const std::string name = records::sha256(picture);
    if (!read(name))
        write(name, picture);
    return name;
}

std::optional<std::string> Files::read(const std::string& name) const
{
    auto bytes = is_name(name) ? bytes_of(folder_ / name) : std::nullopt;
    return bytes && records::sha256(*bytes) == name ? bytes : std::nullopt;
}

Files::Wrong Files::look_at(const std::vector<std::string>& names) const
{
    Wrong wrong;
    for (const std::string& name : names)
        if (!is_name(name) || !fs::exists(folder_ / name))
            wrong.missing.push_back(name);
        else if (!read(name))
            wrong.changed.push_back(name);
    return wrong;
}

void Files::copy_to(const fs::path& other_book, const records::Watch& watch) const
{
    const Files other{other_book};
    std::error_code none;
    std::int64_t done = 0;
    const std::int64_t all = std::distance(fs::directory_iterator{folder_, none}, fs::directory_iterator{});
    for (const auto& each : fs::directory_iterator{folder_, none}) {
        tell(watch, done++, all);
        if (const std::string name = each.path().filename().string(); is_name(name) && !other.read(name))
            if (const auto bytes = read(name))
                other.write(name, *bytes);
    }
}

} // namespace cotter::db
