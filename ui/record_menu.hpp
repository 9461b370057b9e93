#pragma once

// What there is to write down: groups of kinds, and the pages of their own that stand among them.

#include "call_page.hpp"
#include "choice.hpp"
#include "correct_page.hpp"
#include "outside.hpp"
#include "receive_page.hpp"
#include "tape_page.hpp"

#include <optional>
#include <string>

namespace cotter::ui {

class RecordMenu {
public:
    explicit RecordMenu(const Outside& outside) : outside_{outside} {}

    // A kind of record once one is chosen; "": it is left.
    std::optional<std::string> draw(Sheet& sheet);

private:
    std::optional<std::string> choose_group(Sheet& sheet);
    std::optional<std::string> choose_kind(Sheet& sheet);
    bool draw_own_page(Sheet& sheet); // false where none is open

    const Outside& outside_;
    std::optional<std::size_t> group_;
    std::size_t turned_ = 0;
    std::optional<ReceivePage> receive_;
    std::optional<CallPage> call_;
    std::optional<TapePage> tape_;
    std::optional<CorrectPage> correct_;
};

} // namespace cotter::ui
