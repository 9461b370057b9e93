#pragma once

// This site, this day: for whoever comes in at the gate. It reads only, and nobody says who he is.

#include "choice.hpp"
#include "outside.hpp"
#include "read_page.hpp"
#include "site_day.hpp"
#include "title_block.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cotter::ui {

class Today {
public:
    explicit Today(const Outside& outside) : outside_{outside} {}
    bool draw(Sheet& sheet); // false when the person goes back

private:
    void look();
    void add_plan_and_people(const desk::SiteDay& it);
    void add_stops(const desk::SiteDay& it);
    void add_units(const desk::SiteDay& it);
    void add_trenches(const desk::SiteDay& it);
    void heading(const std::string& words) { lines_.push_back({true, std::nullopt, words, "", ""}); }
    std::string name(const std::string& id) const;
    std::string clock(rules::Instant at) const;
    bool written(Sheet& sheet);

    const Outside& outside_;
    ReadPage reading_;
    std::vector<ReadLine> lines_;
    std::string lines_of_, site_, written_;
    std::size_t turned_ = 0;
};

} // namespace cotter::ui
