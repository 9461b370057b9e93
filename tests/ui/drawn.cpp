#include "drawn.hpp"

#include <imgui.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <stdexcept>
#include <vector>

#include <cairo.h>

namespace cotter::tests {

namespace {

struct Letters {
    unsigned char* alpha = nullptr;
    int width = 0, height = 0;

    float at(float u, float v) const // the nearest is near enough: letters stand on whole pixels
    {
        const int x = std::clamp(static_cast<int>(u * static_cast<float>(width)), 0, width - 1);
        const int y = std::clamp(static_cast<int>(v * static_cast<float>(height)), 0, height - 1);
        return static_cast<float>(alpha[y * width + x]) / 255;
    }
};

struct Canvas {
    int width, height;
    std::vector<unsigned> pixels; // as cairo's RGB24

    void blend(int x, int y, const std::array<float, 4>& colour)
    {
        unsigned& pixel = pixels[static_cast<std::size_t>(y * width + x)];
        unsigned mixed = 0;
        for (unsigned i = 0; i < 3; ++i) {
            const unsigned shift = 16 - 8 * i;
            const float before = static_cast<float>(pixel >> shift & 0xFFU);
            mixed |= static_cast<unsigned>(std::lround(before + (255 * colour[i] - before) * colour[3])) << shift;
        }
        pixel = mixed;
    }
};

std::array<float, 4> channels(ImU32 colour)
{
    const ImVec4 each = ImGui::ColorConvertU32ToFloat4(colour);
    return {each.x, each.y, each.z, each.w};
}

float side(const ImVec2& a, const ImVec2& b, float x, float y)
{
    return (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x);
}

using Corners = std::array<ImDrawVert, 3>;

std::array<float, 4> mixed(const Corners& corners, const std::array<float, 3>& share, const Letters& letters)
{
    std::array<float, 4> colour{};
    float u = 0, v = 0;
    for (std::size_t i = 0; i < 3; ++i) {
        const auto own = channels(corners[i].col);
        for (std::size_t c = 0; c < 4; ++c)
            colour[c] += own[c] * share[i];
        u += corners[i].uv.x * share[i];
        v += corners[i].uv.y * share[i];
    }
    colour[3] *= letters.at(u, v);
    return colour;
}

struct Span {
    int from, to;
};

Span span(float a, float b, float c, float least, float most, int size)
{
    return {std::max(0, static_cast<int>(std::max(least, std::min({a, b, c})))),
            std::min(size - 1, static_cast<int>(std::min(most, std::max({a, b, c}) + 1)))};
}

void triangle(Canvas& canvas, const Letters& letters, const Corners& corners, const ImVec4& clip)
{
    const auto& [a, b, c] = corners;
    const float area = side(a.pos, b.pos, c.pos.x, c.pos.y);
    if (area == 0.0F)
        return;
    const Span across = span(a.pos.x, b.pos.x, c.pos.x, clip.x, clip.z - 1, canvas.width);
    const Span down = span(a.pos.y, b.pos.y, c.pos.y, clip.y, clip.w - 1, canvas.height);
    for (int y = down.from; y <= down.to; ++y)
        for (int x = across.from; x <= across.to; ++x) {
            const float px = static_cast<float>(x) + 0.5F, py = static_cast<float>(y) + 0.5F;
            const std::array<float, 3> share{side(b.pos, c.pos, px, py) / area, side(c.pos, a.pos, px, py) / area,
                                             side(a.pos, b.pos, px, py) / area};
            if (share[0] >= 0 && share[1] >= 0 && share[2] >= 0)
                canvas.blend(x, y, mixed(corners, share, letters));
        }
}

void command(Canvas& canvas, const Letters& letters, const ImDrawList& list, const ImDrawCmd& command)
{
    for (unsigned i = 0; i + 2 < command.ElemCount; i += 3) {
        Corners corners;
        for (unsigned k = 0; k < 3; ++k) {
            const auto index = list.IdxBuffer[static_cast<int>(command.IdxOffset + i + k)];
            corners[k] = list.VtxBuffer[static_cast<int>(command.VtxOffset + index)];
        }
        triangle(canvas, letters, corners, command.ClipRect);
    }
}

} // namespace

void keep_as_picture(const std::string& path)
{
    const ImDrawData* drawn = ImGui::GetDrawData();
    if (!drawn)
        throw std::runtime_error{"nothing was drawn for " + path};
    Canvas canvas{static_cast<int>(drawn->DisplaySize.x), static_cast<int>(drawn->DisplaySize.y), {}};
    canvas.pixels.assign(static_cast<std::size_t>(canvas.width * canvas.height), 0);
    Letters letters;
    ImGui::GetIO().Fonts->GetTexDataAsAlpha8(&letters.alpha, &letters.width, &letters.height);
    for (int i = 0; i < drawn->CmdListsCount; ++i)
        for (const ImDrawCmd& each : drawn->CmdLists[i]->CmdBuffer)
            command(canvas, letters, *drawn->CmdLists[i], each);
    cairo_surface_t* surface = cairo_image_surface_create_for_data(
        reinterpret_cast<unsigned char*>(canvas.pixels.data()), CAIRO_FORMAT_RGB24, canvas.width, canvas.height,
        cairo_format_stride_for_width(CAIRO_FORMAT_RGB24, canvas.width));
    const cairo_status_t status = cairo_surface_write_to_png(surface, path.c_str());
    cairo_surface_destroy(surface);
    if (status != CAIRO_STATUS_SUCCESS)
        throw std::runtime_error{path + ": " + cairo_status_to_string(status)};
}

} // namespace cotter::tests
