#pragma once

// A site calls the yard: for a swap, a breakdown, or to have a unit collected.

#include "choice.hpp"
#include "outside.hpp"
#include "phrases.hpp"
#include "unit_choice.hpp"

#include <optional>
#include <string>

namespace cotter::ui {

class CallPage {
public:
    // May words be typed? Not in the Cab. What is known already, unit or person, is not asked.
    CallPage(const Outside& outside, bool may_type, std::string unit = "", std::string person = "");
    bool draw(Sheet& sheet); // false when it is left or done

private:
    enum class Page { unit, kind, why, who, done, gone };

    void unit(Sheet& sheet);
    void kind(Sheet& sheet);
    void why(Sheet& sheet);
    void who(Sheet& sheet);
    void write(const std::string& person);
    void go(Page page);
    std::optional<std::size_t> ask(Sheet& sheet, const Choice& choice);

    const Outside& outside_;
    Page page_;
    std::size_t turned_ = 0;
    std::string unit_, kind_, person_;
    bool was_given_unit_;
    UnitChoice units_;
    bool may_type_;
    std::optional<Phrases> why_;
};

} // namespace cotter::ui
