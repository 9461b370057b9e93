#pragma once

// What a plan was worked out to: a line a figure, with its limit drawn, its formula and its source.

#include "book.hpp"
#include "scroll.hpp"

#include <string>
#include <vector>

namespace cotter::ui {

class PlanNumbers {
public:
    // Results as a lift_plan's record has them; `why_not` stands over them.
    void show(const records::Book& book, const records::Json& results, const std::vector<std::string>& why_not);
    void draw(Sheet& sheet, const Box& area);

private:
    struct Line {
        std::string words, value, how;
        std::optional<double> measured, limit;
        bool is_refusal = false;
    };
    static Line line_of(const records::Book& book, const records::Json& result);
    static double height_of(const Sheet& sheet, const Line& line, double width);
    static void draw_line(Sheet& sheet, const Line& line, const Box& box);

    std::vector<Line> lines_;
    TouchScroll scroll_;
};

} // namespace cotter::ui
