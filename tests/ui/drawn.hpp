#pragma once

// The glass as a picture, without a display: what Dear ImGui has drawn is filled triangle by triangle.

#include <string>

namespace cotter::tests {

// Writes the last frame of the current context as a PNG file. Throws std::runtime_error where it cannot be written.
void keep_as_picture(const std::string& path);

} // namespace cotter::tests
