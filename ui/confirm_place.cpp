#include "confirm_place.hpp"

#include "title_block.hpp"

#include "written.hpp"

#include <array>
#include <utility>

namespace cotter::ui {

namespace {

constexpr std::array<const char*, 4> questions{
    "Is it level, within the chart's tolerance?", "Ground and edge: will they carry the machine with the load?",
    "Services: overhead lines and buried services dealt with?", "Is the zone closed, nobody inside?"};

} // namespace

void ConfirmPlace::write()
{
    const std::vector<bool> said = std::exchange(said_, {}); // where it is refused, it is asked anew
    desk::write(outside_.book, {confirm_place(outside_.hand(supervisor_), desk::current_site(outside_.book), place_,
                                              said[0], said[1], said[2], said[3])});
    done_ = true;
}

bool ConfirmPlace::draw(Sheet& sheet)
{
    const Choice choice{questions.at(said_.size()),
                        say("Mark {} \u00b7 {} of {}", place_, said_.size() + 1, questions.size()),
                        {{"Yes", "", figures::Sign::in_order}, {"No", "", figures::Sign::stop}},
                        true,
                        "Leave it"};
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "SUPERVISOR", supervisor_));
    if (!pressed)
        return true;
    if (*pressed == 2)
        return false;
    said_.push_back(*pressed == 0);
    if (said_.size() == questions.size())
        write();
    return !done_;
}

} // namespace cotter::ui
