#pragma once

// This glass: day or night sheet, size of text, language, gloves at a desk.

#include "choice.hpp"
#include "outside.hpp"

namespace cotter::ui {

class LooksPage {
public:
    explicit LooksPage(const Outside& outside) : outside_{outside} {}
    bool draw(Sheet& sheet); // false when it is left

private:
    const Outside& outside_;
    std::size_t turned_ = 0;
    std::string said_;
};

} // namespace cotter::ui
