#pragma once

// The board's rows of a whole fleet, worked out a few at a time: what is on the glass first, the rest between frames.
// Once all are known they stand by date.

#include "outside.hpp"

#include "board.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class FleetRows {
public:
    explicit FleetRows(const Outside& outside) : outside_{outside} {}

    void look();                     // begins anew where the book or the day has changed
    void work(double milliseconds);  // goes on for about so long
    void stop() { stopped_ = true; } // leaves the rest as it is
    void go_on() { stopped_ = false; }
    bool is_stopped() const { return stopped_ && known_ < units_.size(); }
    rules::Instant as_of() const { return as_of_; } // when the reading began
    std::size_t count() const { return units_.size(); }
    std::size_t known() const { return known_; }
    bool is_working() const { return !stopped_ && known_ < units_.size(); }

    const desk::BoardRow& row(std::size_t i); // worked out now if it is not yet
    std::vector<desk::BoardRow> known_rows() const;

    // For a page that wants all of them: a moment's work at once, then a little each frame. False while some are
    // missing and the reading was not stopped.
    bool all_are_read();

private:
    std::string looked_of() const;
    void make(std::size_t i);
    void sort();

    const Outside& outside_;
    std::string looked_of_;
    std::vector<std::string> units_;
    std::vector<std::optional<desk::BoardRow>> rows_;
    std::size_t known_ = 0, next_ = 0;
    bool stopped_ = false;
    rules::Instant as_of_{0};
};

} // namespace cotter::ui
