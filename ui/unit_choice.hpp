#pragma once

// One of many things chosen by touch: a list where they are few; the digits of the tag first where they are many.

#include "choice.hpp"
#include "number_pad.hpp"
#include "outside.hpp"
#include "title_block.hpp"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class UnitChoice {
public:
    using Ids = std::vector<std::string>;

    explicit UnitChoice(const Outside& outside) : outside_{outside} {}

    struct Asked {
        std::string question, hint;
        std::function<Ids()> ids;
        std::function<std::string(const std::string& id)> more; // under its name
        std::string back = "Back";
    };
    // The id that was chosen, "" for back.
    std::optional<std::string> draw(Sheet& sheet, const Asked& asked, const TitleBlock& block);

private:
    void look(const Asked& asked);
    std::optional<std::string> type(Sheet& sheet, const Asked& asked, const TitleBlock& block);

    const Outside& outside_;
    std::string looked_of_, digits_;
    Ids all_, shown_;
    std::vector<Choice::Option> options_; // of those shown
    bool types_ = false;
    NumberPad pad_;
    std::size_t turned_ = 0;
};

std::string role_of(const records::Book& book, const std::string& unit); // in words

// Has the text these digits, one after the other, other characters left out? "" is in each.
bool has_digits(const std::string& text, const std::string& digits);

} // namespace cotter::ui
