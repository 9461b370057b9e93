#pragma once

// The board's rows of a whole fleet, worked out a few at a time: what is on the glass first, the rest between frames.
// Once all are known they stand by date.

#include "in_steps.hpp"
#include "outside.hpp"

#include "board.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class FleetRows {
public:
    explicit FleetRows(const Outside& outside) : outside_{outside} {}

    void look();                    // begins anew where the book or the day has changed
    void work(double milliseconds); // goes on for about so long
    // For a page that wants all of them; false while some are missing and the reading was not stopped.
    bool all_are_read();
    InSteps& steps() { return steps_; }
    const InSteps& steps() const { return steps_; }
    std::string since() const; // the clock when the reading began; "": it is of this minute

    const desk::BoardRow& row(std::size_t i); // worked out now if it is not yet
    std::vector<desk::BoardRow> known_rows() const;

private:
    void make(std::size_t i);
    void step(std::size_t i);

    const Outside& outside_;
    std::string looked_of_;
    std::vector<std::string> units_;
    std::vector<std::optional<desk::BoardRow>> rows_;
    InSteps steps_;
    rules::Instant as_of_{0};
};

} // namespace cotter::ui
