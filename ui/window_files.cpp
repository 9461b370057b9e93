#include "window_files.hpp"

#include <GLFW/glfw3.h>

#include <cstdio>
#include <fstream>

namespace cotter::ui {

void write_layout(const std::string& file, const std::vector<Seen>& seen)
{
    std::ofstream out{file + ".new"};
    for (const Seen& each : seen)
        out << (each.target ? "target\t" : "text\t") << each.x << '\t' << each.y << '\t' << each.w << '\t' << each.h
            << '\t' << each.text << '\t' << each.clipped << '\n';
    out.close();
    std::rename((file + ".new").c_str(), file.c_str());
}

void write_picture(GLFWwindow* window, const std::string& file)
{
    int w = 0, h = 0;
    glfwGetFramebufferSize(window, &w, &h);
    std::vector<unsigned char> pixels(static_cast<std::size_t>(w) * static_cast<std::size_t>(h) * 3);
    glPixelStorei(GL_PACK_ALIGNMENT, 1);
    glReadPixels(0, 0, w, h, GL_RGB, GL_UNSIGNED_BYTE, pixels.data());
    std::ofstream out{file, std::ios::binary};
    out << "P6\n" << w << ' ' << h << "\n255\n";
    for (int y = h - 1; y >= 0; --y)
        out.write(reinterpret_cast<const char*>(pixels.data()) + static_cast<std::ptrdiff_t>(y) * w * 3,
                  static_cast<std::streamsize>(w) * 3);
}

} // namespace cotter::ui
