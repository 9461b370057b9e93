#pragma once

// Quick phrases for what would else be typed; at a desk other words may be typed.

#include "choice.hpp"
#include "outside.hpp"

#include <string>
#include <vector>

namespace cotter::ui {

class Phrases {
public:
    Phrases(const Outside& outside, std::string question, std::vector<const char*> phrases, bool may_type);

    enum class Left { nothing, back, said };
    Left draw(Sheet& sheet, const std::string& person);
    const std::string& said() const { return said_; }

private:
    Left type(Sheet& sheet, const std::string& person);

    const Outside& outside_;
    std::string question_, said_;
    std::vector<const char*> phrases_;
    bool may_type_, types_ = false;
    std::size_t turned_ = 0;
};

} // namespace cotter::ui
