// A photo stands as it was seen, however the camera was held.
// Source: Exif 2.3 (CIPA DC-008), 4.6.4 A, tag 274; each turning is compared with ImageMagick's -auto-orient.

#include "exif.hpp"
#include "rig.hpp"

#include <doctest/doctest.h>

#include <array>
#include <cstdlib>
#include <fstream>
#include <sstream>

using namespace cotter;

namespace {

// Six blocks of their own shade, 48 x 32.
ui::Picture patches()
{
    ui::Picture picture{48, 32, {}};
    for (int y = 0; y < picture.height; ++y)
        for (int x = 0; x < picture.width; ++x) {
            const int shade = 20 + 45 * (x / 16 + 3 * (y / 16));
            for (int i = 0; i < 3; ++i)
                picture.rgba.push_back(static_cast<std::uint8_t>(shade));
            picture.rgba.push_back(255);
        }
    return picture;
}

// The Exif segment behind the file's first two bytes, in either order of bytes.
std::string with_orientation(const std::string& jpeg, char orientation, bool little)
{
    const std::string tiff = little ? std::string("II\x2A\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0", 18) +
                                          orientation + std::string(7, '\0')
                                    : std::string("MM\0\x2A\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0", 19) +
                                          orientation + std::string(6, '\0');
    const std::string segment = std::string("Exif\0\0", 6) + tiff;
    const auto length = static_cast<char>(segment.size() + 2);
    return jpeg.substr(0, 2) + "\xFF\xE1" + std::string(1, '\0') + length + segment + jpeg.substr(2);
}

// Shades at the middle of each 16 x 16 block, row after row.
std::vector<int> blocks_of(int width, int height, const std::function<int(int, int)>& at)
{
    std::vector<int> all{width, height};
    for (int y = 8; y < height; y += 16)
        for (int x = 8; x < width; x += 16)
            all.push_back((at(x, y) - 20 + 22) / 45);
    return all;
}

std::vector<int> by_imagemagick(const std::filesystem::path& folder, const std::string& jpeg)
{
    std::ofstream{folder / "in.jpg", std::ios::binary} << jpeg;
    const std::string command = "convert " + (folder / "in.jpg").string() + " -auto-orient -colorspace Gray -depth 8 " +
                                (folder / "out.pgm").string();
    REQUIRE(std::system(command.c_str()) == 0);
    std::ifstream file{folder / "out.pgm", std::ios::binary};
    std::string magic;
    int width = 0, height = 0, most = 0;
    file >> magic >> width >> height >> most;
    file.get();
    std::string grey(static_cast<std::size_t>(width * height), '\0');
    file.read(grey.data(), static_cast<std::streamsize>(grey.size()));
    return blocks_of(width, height, [&](int x, int y) {
        return static_cast<unsigned char>(grey[static_cast<std::size_t>(y * width + x)]);
    });
}

std::vector<int> by_cotter(const std::string& jpeg)
{
    const auto picture = ui::decode(jpeg);
    REQUIRE(picture);
    return blocks_of(picture->width, picture->height,
                     [&](int x, int y) { return picture->rgba[static_cast<std::size_t>(y * picture->width + x) * 4]; });
}

} // namespace

TEST_CASE("all eight ways to hold a camera are turned upright, as ImageMagick turns them")
{
    const tests::Folder folder;
    const std::string jpeg = ui::to_jpeg(patches());
    for (char orientation = 1; orientation <= 8; ++orientation)
        for (const bool little : {true, false}) {
            CAPTURE(static_cast<int>(orientation));
            const std::string file = with_orientation(jpeg, orientation, little);
            CHECK(ui::orientation_of(file) == orientation);
            CHECK(by_cotter(file) == by_imagemagick(folder.path(), file));
        }
}

TEST_CASE("a file that says nothing, or nonsense, of its orientation stands as it is")
{
    const std::string jpeg = ui::to_jpeg(patches());
    CHECK(ui::orientation_of(jpeg) == 1);
    CHECK(ui::orientation_of(with_orientation(jpeg, 9, true)) == 1);
    CHECK(ui::orientation_of(with_orientation(jpeg, 6, true).substr(0, 24)) == 1);
    CHECK(ui::orientation_of("") == 1);
}
