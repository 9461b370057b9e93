#include "picture.hpp"

#include "exif.hpp"

#include <cairo.h>
#include <turbojpeg.h>

#include <algorithm>
#include <cmath>
#include <cstring>
#include <memory>
#include <stdexcept>

namespace cotter::ui {

namespace {

constexpr int side = 2048, largest = 20'000;

bool is_size(int width, int height) { return width > 0 && height > 0 && width <= largest && height <= largest; }

// The largest of the decoder's own steps at which the picture fits.
tjscalingfactor fitting(int width, int height)
{
    int count = 0;
    const tjscalingfactor* factors = tjGetScalingFactors(&count);
    tjscalingfactor best{1, 8};
    for (int i = 0; i < count; ++i) {
        const tjscalingfactor each = factors[i];
        if (each.num <= each.denom && std::max(TJSCALED(width, each), TJSCALED(height, each)) <= side &&
            each.num * best.denom > best.num * each.denom)
            best = each;
    }
    return best;
}

// A byte too many harms nothing; what ends too soon is no evidence.
bool is_harmless(tjhandle reader)
{
    return tjGetErrorCode(reader) == TJERR_WARNING &&
           std::string{tjGetErrorStr2(reader)}.find("Premature end") == std::string::npos;
}

std::optional<Picture> decode_jpeg(const std::string& bytes)
{
    const std::unique_ptr<void, int (*)(tjhandle)> reader{tjInitDecompress(), tjDestroy};
    const auto* data = reinterpret_cast<const unsigned char*>(bytes.data());
    int width = 0, height = 0, sampling = 0, space = 0;
    if (tjDecompressHeader3(reader.get(), data, bytes.size(), &width, &height, &sampling, &space) != 0 ||
        !is_size(width, height))
        return std::nullopt;
    const tjscalingfactor factor = fitting(width, height);
    Picture picture{TJSCALED(width, factor), TJSCALED(height, factor), {}};
    picture.rgba.resize(static_cast<std::size_t>(picture.width) * static_cast<std::size_t>(picture.height) * 4);
    const bool read = tjDecompress2(reader.get(), data, bytes.size(), picture.rgba.data(), picture.width, 0,
                                    picture.height, TJPF_RGBA, 0) == 0;
    if (!read && !is_harmless(reader.get()))
        return std::nullopt;
    return turned_upright(picture, orientation_of(bytes));
}

using Surface = std::unique_ptr<cairo_surface_t, void (*)(cairo_surface_t*)>;

struct Rest {
    const char* at;
    std::size_t left;
};

cairo_status_t read_some(void* of, unsigned char* to, unsigned int length)
{
    auto& rest = *static_cast<Rest*>(of);
    if (rest.left < length)
        return CAIRO_STATUS_READ_ERROR;
    std::memcpy(to, rest.at, length);
    rest.at += length;
    rest.left -= length;
    return CAIRO_STATUS_SUCCESS;
}

// Width and height as the header says them, before anything is decoded. Source: ISO/IEC 15948, 11.2.2 (IHDR).
bool is_png_of_a_size(const std::string& bytes)
{
    if (bytes.size() < 24 || !bytes.starts_with("\x89PNG\r\n\x1A\n"))
        return false;
    const auto number = [&](std::size_t at) {
        std::uint32_t value = 0;
        for (std::size_t i = 0; i < 4; ++i)
            value = value << 8U | static_cast<unsigned char>(bytes[at + i]);
        return value > largest ? -1 : static_cast<int>(value);
    };
    return is_size(number(16), number(20));
}

Surface scaled(Surface whole)
{
    const int width = cairo_image_surface_get_width(whole.get()), height = cairo_image_surface_get_height(whole.get());
    const double factor = std::min(1.0, static_cast<double>(side) / std::max(width, height));
    Surface small{cairo_image_surface_create(CAIRO_FORMAT_RGB24, std::max(1, static_cast<int>(width * factor)),
                                             std::max(1, static_cast<int>(height * factor))),
                  cairo_surface_destroy};
    const std::unique_ptr<cairo_t, void (*)(cairo_t*)> pen{cairo_create(small.get()), cairo_destroy};
    cairo_set_source_rgb(pen.get(), 1, 1, 1); // what is transparent is paper
    cairo_paint(pen.get());
    cairo_scale(pen.get(), factor, factor);
    cairo_set_source_surface(pen.get(), whole.get(), 0, 0);
    cairo_paint(pen.get());
    cairo_surface_flush(small.get());
    return small;
}

std::optional<Picture> decode_png(const std::string& bytes)
{
    Rest rest{bytes.data(), bytes.size()};
    Surface whole{cairo_image_surface_create_from_png_stream(read_some, &rest), cairo_surface_destroy};
    if (cairo_surface_status(whole.get()) != CAIRO_STATUS_SUCCESS)
        return std::nullopt;
    const Surface small = scaled(std::move(whole));
    if (cairo_surface_status(small.get()) != CAIRO_STATUS_SUCCESS)
        return std::nullopt;
    Picture picture{cairo_image_surface_get_width(small.get()), cairo_image_surface_get_height(small.get()), {}};
    const unsigned char* row = cairo_image_surface_get_data(small.get());
    for (int y = 0; y < picture.height; ++y, row += cairo_image_surface_get_stride(small.get()))
        for (int x = 0; x < picture.width; ++x) {
            std::uint32_t pixel = 0;
            std::memcpy(&pixel, row + static_cast<std::ptrdiff_t>(x) * 4, 4);
            for (const unsigned shift : {16U, 8U, 0U})
                picture.rgba.push_back(static_cast<std::uint8_t>(pixel >> shift));
            picture.rgba.push_back(255);
        }
    return picture;
}

} // namespace

std::optional<Picture> decode(const std::string& bytes)
{
    return is_png_of_a_size(bytes) ? decode_png(bytes) : decode_jpeg(bytes);
}

std::string to_jpeg(const Picture& picture)
{
    constexpr int quality = 88; // small letters of a report stay sharp
    const std::unique_ptr<void, int (*)(tjhandle)> writer{tjInitCompress(), tjDestroy};
    unsigned char* data = nullptr;
    unsigned long size = 0;
    const int failed = tjCompress2(writer.get(), picture.rgba.data(), picture.width, 0, picture.height, TJPF_RGBA,
                                   &data, &size, TJSAMP_444, quality, 0);
    const std::unique_ptr<unsigned char, void (*)(unsigned char*)> held{data, tjFree};
    if (failed != 0)
        throw std::runtime_error{"The picture could not be made smaller; another one is accepted"};
    return {reinterpret_cast<const char*>(data), size};
}

std::optional<std::string> to_keep(const std::string& bytes)
{
    const auto picture = decode(bytes);
    if (!picture)
        return std::nullopt;
    const std::unique_ptr<void, int (*)(tjhandle)> reader{tjInitDecompress(), tjDestroy};
    int width = 0, height = 0, sampling = 0, space = 0;
    const auto* data = reinterpret_cast<const unsigned char*>(bytes.data());
    const bool is_jpeg = !is_png_of_a_size(bytes) &&
                         tjDecompressHeader3(reader.get(), data, bytes.size(), &width, &height, &sampling, &space) == 0;
    return is_jpeg && std::max(width, height) <= side ? bytes : to_jpeg(*picture);
}

} // namespace cotter::ui
