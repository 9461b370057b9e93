#pragma once

#include "sheet.hpp"

#include <string>

namespace cotter::ui {

// A text as a QR code (ISO/IEC 18004), black on white with its quiet zone, as large as the box takes.
void draw_qr(Sheet& sheet, const std::string& text, const Box& box);

} // namespace cotter::ui
