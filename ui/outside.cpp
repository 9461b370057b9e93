#include "outside.hpp"

#include "theme.hpp"

namespace cotter::ui {

std::string looked_at(const Outside& outside)
{
    return std::to_string(outside.book.state().head.seq) + " " + std::to_string(outside.now().count() / 60);
}

void turn_sheet(const Outside& outside)
{
    set_night(!is_night());
    if (outside.keep_night)
        outside.keep_night(is_night());
}

std::string sheet_to_turn_to() { return is_night() ? "Day sheet" : "Night sheet"; }

} // namespace cotter::ui
