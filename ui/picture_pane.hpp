#pragma once

// A picture in a frame: whole, or larger and moved by the finger. Page of a paper, photo of a defect.

#include "outside.hpp"
#include "picture.hpp"
#include "sheet.hpp"

#include <optional>
#include <string>

namespace cotter::ui {

class PicturePane {
public:
    // The picture as it stands in a file; false where it cannot be read.
    bool show(const Outside& outside, const std::string& bytes);
    void clear();
    bool has_picture() const { return picture_.has_value(); }

    void draw(Sheet& sheet, const Box& box);
    bool is_largest() const { return zoom_ >= largest; }
    bool is_larger() const { return zoom_ > 1; }
    void larger();  // and from the largest back to the whole
    void further(); // to its next part, without a finger

private:
    static constexpr double largest = 4;
    std::optional<Picture> picture_;
    ImTextureID texture_ = nullptr;
    double zoom_ = 1;
    ImVec2 moved_{0, 0}, seen_{0, 0}, whole_{0, 0}; // px
};

} // namespace cotter::ui
