#include "qr.hpp"

#include <qrencode.h>

#include <algorithm>
#include <memory>

namespace cotter::ui {

namespace {

constexpr int quiet = 4; // modules around the code, by the standard

using QrCode = std::unique_ptr<QRcode, decltype(&QRcode_free)>;

bool is_dark(const QRcode& code, int x, int y) { return (code.data[y * code.width + x] & 1U) != 0; }

} // namespace

void draw_qr(Sheet& sheet, const std::string& text, const Box& box)
{
    const QrCode code{QRcode_encodeString8bit(text.c_str(), 0, QR_ECLEVEL_M), QRcode_free};
    if (!code)
        return;
    const double module = std::min(box.w, box.h) / (code->width + 2 * quiet);
    const double side = module * (code->width + 2 * quiet);
    sheet.fill({box.x, box.y, side, side}, IM_COL32_WHITE);
    for (int y = 0; y < code->width; ++y)
        for (int x = 0; x < code->width; ++x)
            if (is_dark(*code, x, y))
                sheet.fill({box.x + module * (x + quiet), box.y + module * (y + quiet), module, module},
                           IM_COL32_BLACK);
}

} // namespace cotter::ui
