#pragma once

// A picture of a page, from a JPEG or PNG file.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

struct Picture {
    int width = 0, height = 0;
    std::vector<std::uint8_t> rgba;
};

// At most 2,048 pixels a side, scaled down where the file has more. Nothing if it is no picture or larger than 20,000 a
// side: files come from outside.
std::optional<Picture> decode(const std::string& bytes);

// As a JPEG file, for what was too large or no JPEG. std::runtime_error if that cannot be done.
std::string to_jpeg(const Picture& picture);

// What is kept of a file: itself if it is a JPEG of no more than that size, else scaled down. Nothing if it is no
// picture.
std::optional<std::string> to_keep(const std::string& bytes);

} // namespace cotter::ui
