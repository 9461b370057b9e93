#pragma once

// What a plan was worked out to: a line a figure, with its limit drawn, its formula and its source.

#include "book.hpp"
#include "scroll.hpp"

#include "language.hpp"

#include <string>
#include <vector>

namespace cotter::ui {

class PlanNumbers {
public:
    struct Line {
        std::string words, value, how;
        std::optional<double> measured, limit;
        bool is_refusal = false;
    };
    static Line line_of(const records::Book& book, const records::Json& result); // as a person reads it

    // Results as a lift_plan's record has them; `why_not` stands over them.
    void show(const records::Book& book, const records::Json& results, const std::vector<std::string>& why_not);
    void draw(Sheet& sheet, const Box& area);
    TouchScroll& scroll() { return scroll_; }

private:
    static double height_of(const Sheet& sheet, const Line& line, double width);
    static void draw_line(Sheet& sheet, const Line& line, const Box& box);

    void read(); // into lines, in the language of the moment

    const records::Book* book_ = nullptr;
    records::Json results_;
    std::vector<std::string> why_not_;
    words::Language read_in_ = words::Language::english;
    std::vector<Line> lines_;
    TouchScroll scroll_;
};

} // namespace cotter::ui
