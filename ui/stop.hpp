#pragma once

// A stop, called by anybody: without PIN, from the first screen, a locked one, or before anybody has signed in.

#include "choice.hpp"
#include "outside.hpp"
#include "unit_choice.hpp"

#include <string>

namespace cotter::ui {

class CallStop {
public:
    explicit CallStop(const Outside& outside) : outside_{outside}, units_{outside} {}
    bool draw(Sheet& sheet); // false once it is called or left

private:
    enum class Page { unit, why, who, writer, how, called };

    bool unit(Sheet& sheet);
    void why(Sheet& sheet);
    void who(Sheet& sheet);
    void writer(Sheet& sheet);
    void how(Sheet& sheet);
    bool called(Sheet& sheet);
    void go(Page page);
    std::optional<std::size_t> ask(Sheet& sheet, const Choice& choice);

    const Outside& outside_;
    Page page_ = Page::unit;
    std::size_t turned_ = 0;
    std::string unit_, why_, who_, writer_;
    UnitChoice units_;
};

} // namespace cotter::ui
