#pragma once

// Pictures of plates, pages and cards: files in a folder beside the book, each named by its SHA-256.

#include "watch.hpp"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace cotter::db {

class Files {
public:
    static constexpr std::uintmax_t largest = 40'000'000; // bytes

    // Of a file of up to that size; nothing if it cannot be read.
    static std::optional<std::string> bytes_of(const std::filesystem::path& path);

    explicit Files(const std::filesystem::path& book) : folder_{book.string() + ".files"} {}

    // Copies a JPEG or PNG picture in and gives its name; StoreError if it is neither, too large or cannot be read.
    // A picture that is there already is not written again.
    std::string keep(const std::filesystem::path& picture) const;
    std::string keep_bytes(const std::string& picture) const;

    // The bytes, if they are there and are those that the name says.
    std::optional<std::string> read(const std::string& name) const;

    // Names that are not there, and names whose bytes are others.
    struct Wrong {
        std::vector<std::string> missing, changed;
    };
    Wrong look_at(const std::vector<std::string>& names) const;

    // Copies every file to the folder of another book. StoppedError if the watch says so; whole files stay there.
    void copy_to(const std::filesystem::path& other_book, const records::Watch& watch = {}) const;

private:
    void write(const std::string& name, const std::string& bytes) const;

    std::filesystem::path folder_;
};

} // namespace cotter::db
