#pragma once

// One photo for a record: dropped on the window or found in the watched folder, looked at, then kept beside the book.

#include "choice.hpp"
#include "outside.hpp"
#include "picture_pane.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class PhotoPage {
public:
    // May it be left out?
    PhotoPage(const Outside& outside, std::string question, bool may_be_without = true);

    enum class Left { nothing, back, without, kept };
    Left draw(Sheet& sheet, const std::string& person);
    const std::string& name() const { return name_; }   // its SHA-256, once kept
    const std::string& bytes() const { return bytes_; } // as they are kept

private:
    Left choose(Sheet& sheet, const std::string& person);
    Left look(Sheet& sheet, const std::string& person);
    void find();
    void open(const std::string& path);

    const Outside& outside_;
    std::string question_, said_, bytes_, name_;
    bool may_be_without_;
    std::vector<std::string> found_;
    std::size_t turned_ = 0;
    PicturePane pane_;
};

} // namespace cotter::ui
