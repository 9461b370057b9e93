#pragma once

// What the window writes for whoever drives it from outside: what stands where, and its picture.

#include "sheet.hpp"

#include <string>
#include <vector>

struct GLFWwindow;

namespace cotter::ui {

// A line for each text and target: what it is, its place and size in pixels, its words, whether they are cut.
void write_layout(const std::string& file, const std::vector<Seen>& seen);

void write_picture(GLFWwindow* window, const std::string& file); // PPM, of the frame that was drawn last

} // namespace cotter::ui
