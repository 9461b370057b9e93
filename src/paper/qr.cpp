#include "document.hpp"

#include <qrencode.h>

#include <stdexcept>

namespace cotter::paper {

namespace {

constexpr int quiet = 4; // modules around the code, by the standard

using Code = std::unique_ptr<QRcode, decltype(&QRcode_free)>;

} // namespace

void Document::qr(const std::string& text, double side)
{
    const Code code{QRcode_encodeString8bit(text.c_str(), 0, QR_ECLEVEL_H), QRcode_free};
    if (!code)
        throw std::runtime_error{"the text is too long for a QR code"};
    need(side);
    const double module = side / (code->width + 2 * quiet);
    canvas_.colour({0, 0, 0});
    for (int y = 0; y < code->width; ++y)
        for (int x = 0; x < code->width; ++x)
            if ((code->data[y * code->width + x] & 1U) != 0)
                canvas_.fill(text_left + module * (x + quiet), y_ + module * (y + quiet), module, module);
    canvas_.colour(ink);
    y_ += side + 2;
}

} // namespace cotter::paper
