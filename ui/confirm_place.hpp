#pragma once

// A standing place is confirmed on the ground by the supervisor of the day: four questions.

#include "choice.hpp"
#include "outside.hpp"

#include <string>
#include <vector>

namespace cotter::ui {

class ConfirmPlace {
public:
    ConfirmPlace(const Outside& outside, std::string place, std::string supervisor)
        : outside_{outside}, place_{std::move(place)}, supervisor_{std::move(supervisor)}
    {
    }
    bool draw(Sheet& sheet); // false when it is left or written
    bool is_done() const { return done_; }

private:
    void write();

    const Outside& outside_;
    std::string place_, supervisor_;
    std::vector<bool> said_;
    std::size_t turned_ = 0;
    bool done_ = false;
};

} // namespace cotter::ui
