#pragma once

// Site's due board: what falls due when, as a section through time, a list or a calendar; of every unit, or of one
// unit, kind, owner or place.

#include "choice.hpp"
#include "fleet_rows.hpp"
#include "outside.hpp"
#include "read_page.hpp"

#include "board.hpp"
#include "due_section.hpp"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class DuePage {
public:
    DuePage(const Outside& outside, FleetRows& fleet) : outside_{outside}, fleet_{fleet} {}

    bool has_the_glass() const { return asks_.has_value(); } // while it is chosen how it is shown
    void ask(Sheet& sheet);

    void draw(Sheet& sheet, double bottom); // fills what is above `bottom`
    bool head(Sheet& sheet);                // its heading and buttons, then; true when the way ahead is asked for
    TouchScroll* scroll();                  // of a list; none of a drawing

private:
    enum class View { section, list, calendar };
    enum class By { everything, unit, kind, owner, place };
    enum class Asks { view, value };

    void look(bool narrow);
    void draw_reading(Sheet& sheet, const Box& paper);
    std::string part_of(const desk::BoardRow& row, By by) const;
    std::string in_words(const std::string& part, By by) const;
    std::vector<std::string> values() const; // that may be shown alone
    void ask_view(Sheet& sheet);
    void ask_value(Sheet& sheet);
    void draw_view(Sheet& sheet, const Box& paper);
    void step(int by); // nearer or further

    const Outside& outside_;
    FleetRows& fleet_;
    std::string looked_of_, only_;
    View view_ = View::section;
    By by_ = By::everything, asked_by_ = By::everything;
    std::optional<Asks> asks_;
    std::size_t turned_ = 0, zoom_ = 2;
    int weeks_on_ = 0; // of the calendar, from this one
    std::vector<desk::BoardRow> rows_;
    std::vector<figures::DueMark> marks_;
    std::vector<ReadLine> lines_;
    ReadPage reading_;
    std::size_t stops_ = 0, out_of_date_ = 0, undated_ = 0;
};

} // namespace cotter::ui
