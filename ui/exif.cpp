#include "exif.hpp"

#include <cstdint>
#include <cstring>
#include <utility>

namespace cotter::ui {

namespace {

// Bytes of a file in either order; what lies outside reads as 0.
class Bytes {
public:
    Bytes(const std::string& all, std::size_t from, bool little) : all_{all}, from_{from}, little_{little} {}

    std::uint32_t number(std::size_t at, std::size_t size) const
    {
        std::uint32_t value = 0;
        for (std::size_t i = 0; i < size; ++i)
            value = value << 8U | byte(at + (little_ ? size - 1 - i : i));
        return value;
    }

private:
    std::uint32_t byte(std::size_t at) const
    {
        return from_ + at < all_.size() ? static_cast<unsigned char>(all_[from_ + at]) : 0;
    }

    const std::string& all_;
    std::size_t from_;
    bool little_;
};

// Where the TIFF header of the Exif segment begins; npos where there is none.
std::size_t tiff_in(const std::string& jpeg)
{
    const Bytes bytes{jpeg, 0, false};
    for (std::size_t at = 2; bytes.number(at, 1) == 0xFF && at + 4 < jpeg.size(); at += 2 + bytes.number(at + 2, 2)) {
        if (bytes.number(at, 2) == 0xFFDA) // the picture itself begins
            break;
        if (bytes.number(at, 2) == 0xFFE1 && jpeg.compare(at + 4, 6, std::string("Exif\0\0", 6)) == 0)
            return at + 10;
    }
    return std::string::npos;
}

} // namespace

int orientation_of(const std::string& jpeg)
{
    constexpr std::uint32_t orientation = 274;
    const std::size_t tiff = tiff_in(jpeg);
    if (tiff == std::string::npos)
        return 1;
    const Bytes bytes{jpeg, tiff, jpeg.compare(tiff, 2, "II") == 0};
    const std::size_t directory = bytes.number(4, 4);
    for (std::uint32_t i = 0; i < bytes.number(directory, 2); ++i) {
        const std::size_t entry = directory + 2 + std::size_t{i} * 12;
        if (tiff + entry + 12 > jpeg.size())
            break;
        if (bytes.number(entry, 2) != orientation)
            continue;
        const std::uint32_t value = bytes.number(entry + 8, 2);
        return 1 <= value && value <= 8 ? static_cast<int>(value) : 1;
    }
    return 1;
}

// The stored picture's first row is the top, right, bottom or left side of what was seen, mirrored or not.
Picture turned_upright(const Picture& picture, int orientation)
{
    if (orientation <= 1 || orientation > 8)
        return picture;
    const int w = picture.width, h = picture.height;
    Picture upright{orientation >= 5 ? h : w, orientation >= 5 ? w : h, {}};
    upright.rgba.resize(picture.rgba.size());
    const auto from = [&](int x, int y) -> std::pair<int, int> {
        switch (orientation) {
        case 2: return {w - 1 - x, y};
        case 3: return {w - 1 - x, h - 1 - y};
        case 4: return {x, h - 1 - y};
        case 5: return {y, x};
        case 6: return {y, h - 1 - x};
        case 7: return {w - 1 - y, h - 1 - x};
        default: return {w - 1 - y, x};
        }
    };
    for (int y = 0; y < upright.height; ++y)
        for (int x = 0; x < upright.width; ++x) {
            const auto [of_x, of_y] = from(x, y);
            const auto pixel = [](int at_x, int at_y, int width) {
                return (static_cast<std::size_t>(at_y) * static_cast<std::size_t>(width) +
                        static_cast<std::size_t>(at_x)) *
                       4;
            };
            std::memcpy(&upright.rgba[pixel(x, y, upright.width)], &picture.rgba[pixel(of_x, of_y, w)], 4);
        }
    return upright;
}

} // namespace cotter::ui
