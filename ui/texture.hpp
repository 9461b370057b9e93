#pragma once

#include "compat.hpp"
#include "picture.hpp"

namespace cotter::ui {

// The one picture that stands on the glass, as an OpenGL texture of the current context.
class Texture {
public:
    Texture() = default;
    Texture(const Texture&) = delete;
    Texture& operator=(const Texture&) = delete;
    ~Texture();

    ImTextureID show(const Picture& picture); // in place of the last

private:
    unsigned name_ = 0;
};

} // namespace cotter::ui
