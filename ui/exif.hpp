#pragma once

// How a camera held a picture. Source: Exif 2.3 (CIPA DC-008), 4.6.4 A, tag 274 "Orientation".

#include "picture.hpp"

#include <string>

namespace cotter::ui {

// 1 to 8 as a JPEG file says; 1, upright, where it says nothing that can be read.
int orientation_of(const std::string& jpeg);

Picture turned_upright(const Picture& picture, int orientation);

} // namespace cotter::ui
