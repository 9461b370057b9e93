#include "texture.hpp"

#include <GLFW/glfw3.h>

#include <cstdint>

namespace cotter::ui {

Texture::~Texture()
{
    if (name_ != 0)
        glDeleteTextures(1, &name_);
}

ImTextureID Texture::show(const Picture& picture)
{
    if (name_ == 0)
        glGenTextures(1, &name_);
    glBindTexture(GL_TEXTURE_2D, name_);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_LINEAR);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_LINEAR);
    glPixelStorei(GL_UNPACK_ALIGNMENT, 1);
    glTexImage2D(GL_TEXTURE_2D, 0, GL_RGBA, picture.width, picture.height, 0, GL_RGBA, GL_UNSIGNED_BYTE,
                 picture.rgba.data());
    return reinterpret_cast<ImTextureID>(static_cast<std::intptr_t>(name_));
}

} // namespace cotter::ui
