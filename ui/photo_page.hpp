#pragma once

// One photo for a record: dropped on the window or found in the watched folder, looked at, then kept beside the book.

#include "choice.hpp"
#include "outside.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class PhotoPage {
public:
    PhotoPage(const Outside& outside, std::string question);

    enum class Left { nothing, without, kept };
    Left draw(Sheet& sheet, const std::string& person);
    const std::string& name() const { return name_; } // its SHA-256, once kept

private:
    Left choose(Sheet& sheet, const std::string& person);
    Left look(Sheet& sheet, const std::string& person);
    void find();
    void open(const std::string& path);
    void draw_picture(Sheet& sheet, const Box& box) const;

    const Outside& outside_;
    std::string question_, said_, bytes_, name_;
    std::vector<std::string> found_;
    std::size_t turned_ = 0;
    double found_at_ = -1e9;
    std::optional<Picture> picture_;
    ImTextureID texture_ = nullptr;
};

} // namespace cotter::ui
