#pragma once

// Site: a pipe that no plate or note tells of, read with a tape: round the barrel and the socket, bore, wall, lengths;
// by a second person once more.

#include "choice.hpp"
#include "number_pad.hpp"
#include "outside.hpp"

#include "quantity.hpp"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class TapePage {
public:
    explicit TapePage(const Outside& outside) : outside_{outside} {}
    bool draw(Sheet& sheet); // false when it is left or done

private:
    enum class Page { who, name, reading, sum, second, differ, done, gone };
    static constexpr std::size_t readings = 6;
    using Readings = std::array<std::optional<std::int64_t>, readings>; // mm; nothing: not there

    void who(Sheet& sheet);
    void name(Sheet& sheet);
    void reading(Sheet& sheet);
    void next();
    void step_back();
    void sum(Sheet& sheet);
    void second(Sheet& sheet);
    void compare_readings();
    void differ(Sheet& sheet);
    void done(Sheet& sheet);
    void write();
    void go(Page page);
    records::Json body() const;
    std::string why_not() const; // what in the readings cannot be; "": nothing
    std::optional<std::size_t> ask(Sheet& sheet, const Choice& choice);

    const Outside& outside_;
    Page page_ = Page::who;
    std::size_t turned_ = 0, at_ = 0;
    std::string person_, second_, name_, pipe_, differs_;
    bool refused_ = false; // what was typed is out of its range
    bool is_second_ = false;
    NumberPad pad_;
    Readings first_, again_;
};

} // namespace cotter::ui
